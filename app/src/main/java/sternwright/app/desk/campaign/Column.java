package sternwright.app.desk.campaign;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sternwright.app.desk.campaign.DueTable.Choice;

/** The values of one facet, a number for each row, so that a list of many works is narrowed without looking at words. */
final class Column {
    private final Facet facet;
    private final int[] codes;
    private final List<String> values;
    private final List<String> words;

    private Column(Facet facet, int[] codes, List<String> values, List<String> words) {
        this.facet = facet;
        this.codes = codes;
        this.values = values;
        this.words = words;
    }

    static Column of(Facet facet, List<DueRow> rows) {
        Map<String, Integer> numbers = new HashMap<>();
        List<String> values = new ArrayList<>();
        List<String> words = new ArrayList<>();
        int[] codes = new int[rows.size()];
        for (int i = 0; i < codes.length; i++) {
            DueRow row = rows.get(i);
            String value = facet.value(row);
            Integer number = numbers.putIfAbsent(value, values.size());
            if (number == null) {
                number = values.size();
                values.add(value);
                words.add(facet.words(row));
            }
            codes[i] = number;
        }
        return new Column(facet, codes, values, words);
    }

    /** The rows that have one of these values. */
    BitSet rows(Set<String> chosen) {
        BitSet wanted = new BitSet(values.size());
        for (int v = 0; v < values.size(); v++) {
            wanted.set(v, chosen.contains(values.get(v)));
        }
        BitSet rows = new BitSet(codes.length);
        for (int row = 0; row < codes.length; row++) {
            if (wanted.get(codes[row])) {
                rows.set(row);
            }
        }
        return rows;
    }

    /** Begins to count; an empty set wants every value. */
    Count count(Set<String> chosen) {
        return new Count(chosen);
    }

    /** Works and boats of each value, all other facets kept. */
    final class Count {
        private final Set<String> chosen;
        private final BitSet wanted = new BitSet();
        private final int[] works = new int[values.size()];
        private final BitSet[] boats = new BitSet[values.size()];

        private Count(Set<String> chosen) {
            this.chosen = chosen;
            for (int v = 0; v < values.size(); v++) {
                wanted.set(v, chosen.isEmpty() || chosen.contains(values.get(v)));
                boats[v] = new BitSet();
            }
        }

        Facet facet() {
            return facet;
        }

        boolean wants(int row) {
            return wanted.get(codes[row]);
        }

        void add(int row, int boat) {
            works[codes[row]]++;
            boats[codes[row]].set(boat);
        }

        /** Most works first; a chosen value without works stays, so that it can be taken back. */
        List<Choice> choices() {
            List<Choice> choices = new ArrayList<>();
            for (int v = 0; v < works.length; v++) {
                boolean isChosen = chosen.contains(values.get(v));
                if (works[v] > 0 || isChosen) {
                    choices.add(new Choice(values.get(v), words.get(v), works[v], boats[v].cardinality(), isChosen));
                }
            }
            chosen.stream().filter(c -> !values.contains(c)).forEach(c -> choices.add(new Choice(c, c, 0, 0, true)));
            choices.sort(Comparator.comparingInt(Choice::works).reversed().thenComparing(Choice::words));
            return choices;
        }
    }
}
