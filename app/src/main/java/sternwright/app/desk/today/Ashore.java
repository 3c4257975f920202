package sternwright.app.desk.today;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.today.DayAtYard.StandingLoad;
import sternwright.app.desk.today.DayAtYard.StandsAshore;
import sternwright.app.files.SeasonFiles;
import sternwright.app.files.YardFiles;
import sternwright.app.files.sheet.Sheet;
import sternwright.boat.Boat;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.Published;
import sternwright.yard.resource.Resources;

/**
 * Who stands on hard standing on a day: lifted by the published plan and not launched, or written down as standing ashore.
 *
 * @param boats the longest there first
 */
record Ashore(List<StandsAshore> boats) {
    Ashore {
        boats = List.copyOf(boats);
    }

    static Ashore on(YardFiles yard, SeasonFiles season, LocalDate day) {
        Map<String, List<Published>> moves = new HashMap<>();
        season.published().stream()
                .filter(p -> isLift(p) || isLaunch(p))
                .forEach(p -> moves.computeIfAbsent(p.name().boatId(), b -> new ArrayList<>())
                        .add(p));
        List<StandsAshore> ashore = new ArrayList<>();
        Map<String, LocalDate> written = written(season, day);
        for (Boat boat : yard.boats().values()) {
            of(boat, moves.getOrDefault(boat.id(), List.of()), written.get(boat.id()), season, day)
                    .ifPresent(ashore::add);
        }
        ashore.sort(
                Comparator.comparing(StandsAshore::since, Comparator.nullsFirst(Comparator.<LocalDate>naturalOrder()))
                        .thenComparing(StandsAshore::boat));
        return new Ashore(ashore);
    }

    /** Since when boats are written down to stand ashore, the latest day of each. */
    private static Map<String, LocalDate> written(SeasonFiles season, LocalDate day) {
        Map<String, LocalDate> written = new HashMap<>();
        for (Sheet.Row<OwnerDate> row : season.dates()) {
            OwnerDate d = row.value();
            if (d.kind() == OwnerDate.Kind.ASHORE_SINCE && !d.date().isAfter(day)) {
                written.merge(d.boatId(), d.date(), (a, b) -> a.isAfter(b) ? a : b);
            }
        }
        return written;
    }

    private static boolean isLift(Published p) {
        return p.name().operation().startsWith("lift");
    }

    private static boolean isLaunch(Published p) {
        return p.name().operation().startsWith("launch");
    }

    private static Optional<StandsAshore> of(
            Boat boat, List<Published> moves, @Nullable LocalDate written, SeasonFiles season, LocalDate day) {
        LocalDate lifted = latest(moves.stream().filter(Ashore::isLift).toList(), day);
        LocalDate since = lifted == null || written != null && written.isAfter(lifted) ? written : lifted;
        LocalDate launched = latest(moves.stream().filter(Ashore::isLaunch).toList(), day.minusDays(1));
        if (since == null || launched != null && !launched.isBefore(since)) {
            return Optional.empty();
        }
        LocalDate launch = moves.stream()
                .filter(p -> isLaunch(p) && !p.date().isBefore(day))
                .map(Published::date)
                .min(Comparator.naturalOrder())
                .orElse(null);
        String place = season.resources()
                .classFor(boat.hull().lengthM())
                .map(c -> season.resources().standing().get(c).name())
                .orElse("");
        return Optional.of(new StandsAshore(boat.id(), boat.name(), since, launch, place));
    }

    @Nullable
    private static LocalDate latest(List<Published> moves, LocalDate day) {
        return moves.stream()
                .map(Published::date)
                .filter(d -> !d.isAfter(day))
                .max(Comparator.naturalOrder())
                .orElse(null);
    }

    List<StandingLoad> loads(Resources resources) {
        return resources.standing().stream()
                .map(s -> new StandingLoad(
                        s.name(),
                        (int) boats.stream()
                                .filter(b -> b.place().equals(s.name()))
                                .count(),
                        s.places()))
                .toList();
    }
}
