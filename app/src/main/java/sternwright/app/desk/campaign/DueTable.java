package sternwright.app.desk.campaign;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sternwright.app.files.YardFiles;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartKind;
import sternwright.due.Due;

/** The due list of a yard, ready to be narrowed and counted. */
public final class DueTable {
    private static final Facet[] FACETS = Facet.values();

    private final List<DueRow> rows;

    /**
     * One choice of a facet.
     *
     * @param value as it stands in an address
     * @param words as people read it
     * @param works how many works it has, all other facets kept
     * @param boats how many boats these are on
     * @param chosen whether it is in the filter
     */
    public record Choice(String value, String words, int works, int boats, boolean chosen) {}

    /**
     * A narrowed list.
     *
     * @param rows the works, in the order of the due list
     * @param boats on how many boats
     * @param choices the choices of each facet, most works first; a facet's counts leave its own choice out of account
     */
    public record Narrowed(List<DueRow> rows, int boats, Map<Facet, List<Choice>> choices) {
        /** Copies. */
        public Narrowed {
            rows = List.copyOf(rows);
            choices = Map.copyOf(choices);
        }

        /**
         * The choices of a facet.
         *
         * @param facet the facet
         * @return choices, most works first
         */
        public List<Choice> of(Facet facet) {
            return Optional.ofNullable(choices.get(facet)).orElse(List.of());
        }
    }

    private DueTable(List<DueRow> rows) {
        this.rows = rows;
    }

    /**
     * Makes the table.
     *
     * @param files the yard's files
     * @param dues its due list
     * @return the table; works on parts that are no longer registered are left out
     */
    public static DueTable of(YardFiles files, List<Due> dues) {
        Map<String, PartKind> kinds =
                files.catalogue().kinds().stream().collect(Collectors.toMap(PartKind::id, k -> k, (a, b) -> b));
        List<DueRow> rows = new ArrayList<>(dues.size());
        for (Due due : dues) {
            row(files, kinds, due).ifPresent(rows::add);
        }
        return new DueTable(rows);
    }

    private static Optional<DueRow> row(YardFiles files, Map<String, PartKind> kinds, Due due) {
        Boat boat = files.boats().get(due.boatId());
        if (boat == null) {
            return Optional.empty();
        }
        Optional<Installation> installation = boat.installation(due.part().installationId());
        Optional<Part> part = installation.flatMap(i -> i.part(due.part().partId()));
        if (installation.isEmpty() || part.isEmpty()) {
            return Optional.empty();
        }
        Berth berth = files.berths().get(boat.berthId());
        PartKind kind = kinds.get(part.get().kind());
        return Optional.of(new DueRow(
                due,
                boat,
                berth == null ? boat.berthId() : berth.name(),
                installation.get(),
                part.get(),
                kind == null ? part.get().kind() : kind.name()));
    }

    /**
     * Every work.
     *
     * @return rows in the order of the due list
     */
    public List<DueRow> rows() {
        return List.copyOf(rows);
    }

    /** Works and boats counted for one value. */
    private static final class Tally {
        private final String words;
        private int works;
        private final Set<String> boats = new java.util.HashSet<>();

        Tally(String words) {
            this.words = words;
        }
    }

    /**
     * Narrows the list.
     *
     * @param filter what is asked
     * @return its rows and the counts beside every choice
     */
    public Narrowed narrowed(DueFilter filter) {
        List<DueRow> kept = new ArrayList<>();
        Map<Facet, Map<String, Tally>> tallies = new EnumMap<>(Facet.class);
        for (Facet facet : FACETS) {
            tallies.put(facet, new HashMap<>());
        }
        for (DueRow row : rows) {
            if (!filter.open(row)) {
                continue;
            }
            List<Facet> against = against(filter, row);
            if (against.isEmpty()) {
                kept.add(row);
                tallies.forEach((facet, counts) -> count(facet, counts, row));
            } else if (against.size() == 1) {
                Facet only = against.get(0);
                count(only, tallies.computeIfAbsent(only, f -> new HashMap<>()), row);
            }
        }
        Map<Facet, List<Choice>> choices = new LinkedHashMap<>();
        tallies.forEach((facet, counts) -> choices.put(facet, choices(counts, filter.values(facet))));
        int boats = (int) kept.stream().map(r -> r.boat().id()).distinct().count();
        return new Narrowed(kept, boats, choices);
    }

    private static List<Facet> against(DueFilter filter, DueRow row) {
        List<Facet> against = new ArrayList<>(2);
        filter.wanted().forEach((facet, values) -> {
            if (!values.contains(facet.value(row))) {
                against.add(facet);
            }
        });
        return against;
    }

    private static void count(Facet facet, Map<String, Tally> counts, DueRow row) {
        Tally tally = counts.computeIfAbsent(facet.value(row), v -> new Tally(facet.words(row)));
        tally.works++;
        tally.boats.add(row.boat().id());
    }

    private static List<Choice> choices(Map<String, Tally> counts, Set<String> chosen) {
        List<Choice> choices = new ArrayList<>();
        counts.forEach(
                (value, t) -> choices.add(new Choice(value, t.words, t.works, t.boats.size(), chosen.contains(value))));
        chosen.stream().filter(v -> !counts.containsKey(v)).forEach(v -> choices.add(new Choice(v, v, 0, 0, true)));
        choices.sort(Comparator.comparingInt(Choice::works).reversed().thenComparing(Choice::words));
        return choices;
    }
}
