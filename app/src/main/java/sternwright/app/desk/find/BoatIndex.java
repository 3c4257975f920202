package sternwright.app.desk.find;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sternwright.app.files.YardFiles;
import sternwright.boat.Arrangement;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.due.Due;
import sternwright.due.DueState;

/** All boats of a yard, ready to be found. Made once for a due list; a search then looks at one short text a boat. */
public final class BoatIndex {
    private static final DueState[] STATES = DueState.values();
    private static final List<DueState> WORST_FIRST =
            List.of(DueState.OVERDUE, DueState.DUE, DueState.UNKNOWN, DueState.COMING, DueState.EVERY_VISIT);

    /** One boat: its row, its words and by number of the rule a bit for each state. */
    private record Entry(BoatRow row, String name, String words, byte[] states) {}

    private final List<Entry> entries;
    private final Map<String, Integer> rules;

    private BoatIndex(List<Entry> entries, Map<String, Integer> rules) {
        this.entries = entries;
        this.rules = rules;
    }

    /**
     * Makes the index.
     *
     * @param files the yard's files
     * @param dues what is due on its boats
     * @return the index, its boats in order of their names
     */
    public static BoatIndex of(YardFiles files, List<Due> dues) {
        Map<String, Integer> rules = new HashMap<>();
        Map<String, List<Due>> byBoat = new HashMap<>();
        for (Due due : dues) {
            rules.computeIfAbsent(due.rule().id(), r -> rules.size());
            byBoat.computeIfAbsent(due.boatId(), b -> new ArrayList<>()).add(due);
        }
        List<Entry> entries = files.boats().values().stream()
                .map(b -> entry(files, b, byBoat.getOrDefault(b.id(), List.of()), rules))
                .sorted(Comparator.comparing(Entry::name).thenComparing(e -> e.row.boatId()))
                .toList();
        return new BoatIndex(entries, rules);
    }

    private static Entry entry(YardFiles files, Boat boat, List<Due> dues, Map<String, Integer> rules) {
        byte[] states = new byte[rules.size()];
        int[] counts = new int[STATES.length];
        for (Due due : dues) {
            states[Objects.requireNonNull(rules.get(due.rule().id()))] |= bit(due.state());
            counts[due.state().ordinal()]++;
        }
        Berth berth = files.berths().get(boat.berthId());
        BoatRow row = new BoatRow(
                boat.id(),
                boat.name(),
                boat.owner().name(),
                boat.berthId(),
                berth == null ? boat.berthId() : berth.name(),
                boat.installations().stream()
                        .map(i -> i.arrangement())
                        .distinct()
                        .toList(),
                boat.hull().lengthM(),
                WORST_FIRST.stream()
                        .filter(s -> s != DueState.EVERY_VISIT && counts[s.ordinal()] > 0)
                        .findFirst()
                        .orElse(DueState.COMING),
                counts[DueState.OVERDUE.ordinal()],
                counts[DueState.DUE.ordinal()],
                counts[DueState.UNKNOWN.ordinal()],
                next(dues));
        return new Entry(row, Folded.of(row.name()), words(boat, row), states);
    }

    private static BoatRow.@org.jspecify.annotations.Nullable Next next(List<Due> dues) {
        return dues.stream()
                .filter(d -> d.state() != DueState.REFUSED && d.state() != DueState.EVERY_VISIT)
                .min(Comparator.comparing(Due::dueOn)
                        .thenComparing(d -> !d.rule().safety()))
                .map(d -> new BoatRow.Next(
                        d.rule().id(),
                        d.rule().work(),
                        d.part(),
                        d.dueOn(),
                        d.state(),
                        d.rule().place(),
                        d.rule().safety()))
                .orElse(null);
    }

    private static String words(Boat boat, BoatRow row) {
        String all = Stream.concat(
                        Stream.of(row.name(), row.boatId(), row.owner(), row.berth(), row.berthId()),
                        boat.installations().stream()
                                .flatMap(i -> Stream.of(
                                        i.arrangement().name().toLowerCase(Locale.ROOT),
                                        Objects.requireNonNullElse(i.engineModel(), ""))))
                .distinct()
                .collect(Collectors.joining(" "));
        String folded = Folded.of(all);
        String out = Folded.writtenOut(all);
        return folded.equals(out) ? folded : folded + " " + out;
    }

    private static byte bit(DueState state) {
        return (byte) (1 << state.ordinal());
    }

    /**
     * Finds boats.
     *
     * @param query what is asked
     * @return their rows: those whose name or id begins with the first word first, then in order of their names
     */
    public List<BoatRow> find(BoatQuery query) {
        String[] words = Arrays.stream(Folded.of(query.words()).split(" "))
                .filter(w -> !w.isEmpty())
                .toArray(String[]::new);
        List<BoatRow> first = new ArrayList<>();
        List<BoatRow> rest = new ArrayList<>();
        for (Entry e : entries) {
            if (fits(e, words, query)) {
                (words.length > 0 && named(e, words[0]) ? first : rest).add(e.row);
            }
        }
        first.addAll(rest);
        return List.copyOf(first);
    }

    private static boolean named(Entry e, String word) {
        return e.name.startsWith(word) || e.row.boatId().startsWith(word);
    }

    private boolean fits(Entry e, String[] words, BoatQuery query) {
        for (String word : words) {
            if (!e.words.contains(word)) {
                return false;
            }
        }
        BoatRow row = e.row;
        return (query.berths().isEmpty() || query.berths().contains(row.berthId()))
                && (query.arrangements().isEmpty()
                        || row.arrangements().stream().anyMatch(query.arrangements()::contains))
                && stands(e, query.rules(), query.states());
    }

    private boolean stands(Entry e, Set<String> asked, Set<DueState> states) {
        if (asked.isEmpty()) {
            return states.isEmpty() || states.contains(e.row.state());
        }
        byte wanted = 0;
        for (DueState state : states.isEmpty() ? Set.of(STATES) : states) {
            wanted |= bit(state);
        }
        for (String rule : asked) {
            Integer number = rules.get(rule);
            if (number != null && (e.states[number] & wanted) != 0) {
                return true;
            }
        }
        return false;
    }

    /**
     * The row of a boat.
     *
     * @param boatId the boat
     * @return its row; empty if there is no such boat
     */
    public java.util.Optional<BoatRow> row(String boatId) {
        return entries.stream()
                .map(Entry::row)
                .filter(r -> r.boatId().equals(boatId))
                .findFirst();
    }

    /**
     * How many boats have each arrangement, for the choices of a list.
     *
     * @return boats by arrangement, in the order of the arrangements
     */
    public Map<Arrangement, Integer> arrangements() {
        Map<Arrangement, Integer> counts = new LinkedHashMap<>();
        for (Arrangement a : Arrangement.values()) {
            int boats = (int) entries.stream()
                    .filter(e -> e.row.arrangements().contains(a))
                    .count();
            if (boats > 0) {
                counts.put(a, boats);
            }
        }
        return counts;
    }

    /**
     * How many boats there are.
     *
     * @return boats
     */
    public int size() {
        return entries.size();
    }
}
