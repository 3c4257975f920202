package sternwright.app.desk.campaign;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import sternwright.app.files.YardFiles;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartKind;
import sternwright.boat.PartRef;
import sternwright.due.Due;

/** The due list of a yard, ready to be narrowed and counted. */
public final class DueTable {
    private static final Facet[] FACETS = Facet.values();

    private final List<DueRow> rows;
    private final int[] boats;
    private final Map<Facet, Column> columns = new EnumMap<>(Facet.class);

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
        this.rows = Collections.unmodifiableList(rows);
        Map<String, Integer> numbers = new HashMap<>();
        boats = rows.stream()
                .mapToInt(r -> numbers.computeIfAbsent(r.boat().id(), b -> numbers.size()))
                .toArray();
        for (Facet facet : FACETS) {
            columns.put(facet, Column.of(facet, rows));
        }
    }

    /**
     * Makes the table.
     *
     * @param files the yard's files
     * @param dues its due list
     * @return the table; works on parts that are no longer registered are left out
     */
    public static DueTable of(YardFiles files, List<Due> dues) {
        return new DueTable(rows(files, dues));
    }

    /** Works with all around them; those on parts that are no longer registered are left out. */
    static List<DueRow> rows(YardFiles files, List<Due> dues) {
        Map<String, PartKind> kinds =
                files.catalogue().kinds().stream().collect(Collectors.toMap(PartKind::id, k -> k, (a, b) -> b));
        Map<String, Map<PartRef, Optional<DueRow>>> parts = new HashMap<>();
        List<DueRow> rows = new ArrayList<>(dues.size());
        for (Due due : dues) {
            parts.computeIfAbsent(due.boatId(), b -> new HashMap<>())
                    .computeIfAbsent(due.part(), p -> row(files, kinds, due))
                    .ifPresent(r -> rows.add(r.with(due)));
        }
        return rows;
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
        return rows;
    }

    /**
     * The works that are asked for, without counts beside the choices.
     *
     * @param filter what is asked
     * @return rows in the order of the due list
     */
    public List<DueRow> rows(DueFilter filter) {
        if (filter.equals(DueFilter.ALL)) {
            return rows;
        }
        BitSet kept = new BitSet(boats.length);
        kept.set(0, boats.length);
        columns.forEach((facet, column) -> {
            if (!filter.values(facet).isEmpty()) {
                kept.and(column.rows(filter.values(facet)));
            }
        });
        return kept.stream().mapToObj(rows::get).filter(filter::open).toList();
    }

    /**
     * Narrows the list.
     *
     * @param filter what is asked
     * @return its rows and the counts beside every choice
     */
    public Narrowed narrowed(DueFilter filter) {
        List<Column.Count> counts = new ArrayList<>();
        columns.forEach((facet, column) -> counts.add(column.count(filter.values(facet))));
        List<DueRow> kept = new ArrayList<>();
        BitSet onBoats = new BitSet();
        for (int row = 0; row < boats.length; row++) {
            if (!filter.open(rows.get(row))) {
                continue;
            }
            Column.Count only = null;
            int against = 0;
            for (Column.Count count : counts) {
                if (!count.wants(row)) {
                    against++;
                    only = count;
                }
            }
            if (against == 0) {
                kept.add(rows.get(row));
                onBoats.set(boats[row]);
                for (Column.Count count : counts) {
                    count.add(row, boats[row]);
                }
            } else if (against == 1 && only != null) {
                only.add(row, boats[row]);
            }
        }
        Map<Facet, List<Choice>> choices = new EnumMap<>(Facet.class);
        counts.forEach(c -> choices.put(c.facet(), c.choices()));
        return new Narrowed(kept, onBoats.cardinality(), choices);
    }
}
