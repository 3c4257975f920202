package sternwright.app.desk.boats;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.YardFiles;
import sternwright.app.paper.Words;
import sternwright.app.paper.drawing.InstallationPicture;
import sternwright.app.paper.drawing.PartMark;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartKind;
import sternwright.boat.PartRef;
import sternwright.boat.Side;
import sternwright.due.Due;
import sternwright.due.DueState;
import sternwright.history.RunningHours;

/**
 * A boat at one glance.
 *
 * @param boat the boat
 * @param berth her berth; null if it is not registered
 * @param installations in the order of the register
 */
public record BoatOverview(Boat boat, @Nullable Berth berth, List<InstallationView> installations) {
    /** Copies the list. */
    public BoatOverview {
        installations = List.copyOf(installations);
    }

    /** The order in which states ask for attention. */
    private static final List<DueState> WORST_FIRST = List.of(
            DueState.OVERDUE, DueState.DUE, DueState.UNKNOWN, DueState.REFUSED, DueState.COMING, DueState.EVERY_VISIT);

    /**
     * One installation.
     *
     * @param installation as registered
     * @param hours engine hours as last read, counted over meter changes; null if never read
     * @param hoursOn the day of that reading; null if never read
     * @param picture the side elevation, wide and narrow
     * @param parts its parts in the order of the register
     */
    public record InstallationView(
            Installation installation,
            @Nullable Double hours,
            @Nullable LocalDate hoursOn,
            InstallationPicture picture,
            List<PartRow> parts) {
        /** Copies the list. */
        public InstallationView {
            parts = List.copyOf(parts);
        }
    }

    /**
     * Makes the overview.
     *
     * @param files the yard's files
     * @param boat the boat
     * @param dues her due list; works on other boats are passed over
     * @param today the day called today
     * @return pictures and rows
     */
    public static BoatOverview of(YardFiles files, Boat boat, List<Due> dues, LocalDate today) {
        Map<PartRef, List<Due>> byPart =
                dues.stream().filter(d -> d.boatId().equals(boat.id())).collect(Collectors.groupingBy(Due::part));
        Map<String, PartKind> kinds =
                files.catalogue().kinds().stream().collect(Collectors.toMap(PartKind::id, k -> k, (a, b) -> b));
        List<InstallationView> views = boat.installations().stream()
                .map(i -> view(files, boat, i, byPart, kinds, today))
                .toList();
        return new BoatOverview(boat, files.berths().get(boat.berthId()), views);
    }

    private static InstallationView view(
            YardFiles files,
            Boat boat,
            Installation installation,
            Map<PartRef, List<Due>> byPart,
            Map<String, PartKind> kinds,
            LocalDate today) {
        Optional<RunningHours.Point> meter = RunningHours.of(files.history(boat.id()).meter().stream()
                        .filter(r -> r.installationId().equals(installation.id())
                                && !r.date().isAfter(today))
                        .toList())
                .latest();
        Double hours = meter.map(RunningHours.Point::hours).orElse(null);
        Map<String, String> keys = keys(installation, byPart);
        List<PartRow> rows = new ArrayList<>();
        for (Part part : installation.parts()) {
            PartRef ref = new PartRef(installation.id(), part.id());
            PartKind kind = kinds.get(part.kind());
            rows.add(row(
                    ref,
                    part,
                    kind == null ? part.kind() : kind.name(),
                    Objects.requireNonNullElse(keys.get(part.id()), ""),
                    sorted(byPart.getOrDefault(ref, List.of())),
                    new Meter(hours, today)));
        }
        List<PartMark> marks = rows.stream()
                .filter(r -> !r.key().isEmpty())
                .map(BoatOverview::mark)
                .toList();
        return new InstallationView(
                installation,
                hours,
                meter.map(RunningHours.Point::date).orElse(null),
                InstallationPicture.of(installation, marks, label(installation, marks)),
                rows);
    }

    private record Meter(@Nullable Double hours, LocalDate today) {}

    private static PartRow row(PartRef ref, Part part, String kindName, String key, List<Due> dues, Meter meter) {
        Due renewal = dues.stream()
                .filter(d -> d.rule().renews() && d.lastDone() != null)
                .max(Comparator.comparing(d -> Objects.requireNonNull(d.lastDone())))
                .orElse(null);
        LocalDate renewed = renewal == null ? null : renewal.lastDone();
        LocalDate fitted = part.fittedOn();
        boolean byWork = renewed != null && (fitted == null || !renewed.isBefore(fitted));
        LocalDate since = byWork ? renewed : fitted;
        Double then = byWork && renewal != null ? renewal.hoursAtLastDone() : part.hoursAtFitting();
        Double now = meter.hours();
        return new PartRow(
                ref,
                key,
                part,
                kindName,
                since,
                since == null ? null : (int) java.time.temporal.ChronoUnit.MONTHS.between(since, meter.today()),
                now == null || then == null || since == null ? null : Math.max(0, now - then),
                dues.isEmpty() ? null : dues.get(0).state(),
                dues);
    }

    private static List<Due> sorted(List<Due> dues) {
        return dues.stream()
                .sorted(Comparator.comparingInt((Due d) -> WORST_FIRST.indexOf(d.state()))
                        .thenComparing(Due::dueOn))
                .toList();
    }

    /** Letters for the parts about which something is to say: A for the first overdue, and so on down the register. */
    private static Map<String, String> keys(Installation installation, Map<PartRef, List<Due>> byPart) {
        Map<String, DueState> states = new java.util.LinkedHashMap<>();
        for (Part part : installation.parts()) {
            sorted(byPart.getOrDefault(new PartRef(installation.id(), part.id()), List.of())).stream()
                    .findFirst()
                    .filter(d -> sign(d.state()) != null)
                    .ifPresent(d -> states.put(part.id(), d.state()));
        }
        List<String> order = states.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.comparingInt(WORST_FIRST::indexOf)))
                .map(Map.Entry::getKey)
                .toList();
        Map<String, String> keys = new HashMap<>();
        for (int i = 0; i < order.size(); i++) {
            keys.put(order.get(i), letter(i));
        }
        return keys;
    }

    /** A to Z, then AA, AB and so on. */
    static String letter(int number) {
        String last = String.valueOf((char) ('A' + number % 26));
        return number < 26 ? last : letter(number / 26 - 1) + last;
    }

    private static PartMark.@Nullable Sign sign(@Nullable DueState state) {
        return state == null
                ? null
                : switch (state) {
                    case OVERDUE -> PartMark.Sign.OVERDUE;
                    case DUE -> PartMark.Sign.DUE;
                    case UNKNOWN -> PartMark.Sign.UNKNOWN;
                    case REFUSED -> PartMark.Sign.REFUSED;
                    case COMING, EVERY_VISIT -> null;
                };
    }

    private static PartMark mark(PartRow row) {
        String works = row.dues().stream()
                .filter(d -> d.state() == row.state())
                .map(d -> d.rule().work())
                .collect(Collectors.joining("; "));
        DueState state = Objects.requireNonNull(row.state());
        return new PartMark(
                row.part().id(),
                row.key(),
                Objects.requireNonNull(sign(state)),
                row.kindName() + ": " + state.words() + ": " + works,
                "#" + row.anchor());
    }

    private static String label(Installation installation, List<PartMark> marks) {
        String side = installation.side() == Side.CENTRELINE ? "" : Words.side(installation.side()) + " ";
        String found = marks.isEmpty()
                ? "Nothing is due."
                : String.format(
                        Locale.ROOT,
                        "%d %s something due, overdue, unknown or refused, each marked with a letter.",
                        marks.size(),
                        marks.size() == 1 ? "part has" : "parts have");
        return "Side elevation of the " + side + Words.arrangement(installation.arrangement())
                + " installation, bow to the right. " + found;
    }
}
