package sternwright.app.desk.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sternwright.app.files.SeasonFiles;
import sternwright.app.files.sheet.Sheet;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.Published;

/**
 * Owners' and suppliers' dates of a season. One that is planned anew while another is under way also knows from that one which boats
 * stand ashore by now and which emergencies have been seen to; otherwise it would lift them again.
 */
final class DatesForSeason {
    private static final String WINTER = "winter";

    private final List<Published> begun;
    private final List<OwnerDate> written;

    private DatesForSeason(SeasonFiles files, LocalDate today) {
        written = files.dates().stream().map(Sheet.Row::value).toList();
        begun = files.published().stream().filter(p -> p.date().isBefore(today)).toList();
    }

    static List<OwnerDate> of(SeasonFiles files, LocalDate today, boolean fresh) {
        DatesForSeason dates = new DatesForSeason(files, today);
        return fresh ? dates.anew() : dates.written;
    }

    private List<OwnerDate> anew() {
        List<OwnerDate> dates =
                new ArrayList<>(written.stream().filter(d -> !seenTo(d)).toList());
        begun.stream()
                .filter(p ->
                        p.name().operation().equals("lift") && p.name().visit().startsWith(WINTER))
                .filter(p -> of(p).noneMatch(l -> l.name().operation().equals("launch")))
                .filter(p -> written.stream()
                        .noneMatch(d -> d.kind() == OwnerDate.Kind.ASHORE_SINCE
                                && d.boatId().equals(p.name().boatId())))
                .map(p -> new OwnerDate(p.name().boatId(), OwnerDate.Kind.ASHORE_SINCE, "", p.date(), ""))
                .forEach(dates::add);
        return dates;
    }

    /** What has begun of the visit of an operation. */
    private Stream<Published> of(Published operation) {
        return begun.stream()
                .filter(p -> p.name().boatId().equals(operation.name().boatId())
                        && p.name().visit().equals(operation.name().visit()));
    }

    private boolean seenTo(OwnerDate date) {
        return date.kind() == OwnerDate.Kind.EMERGENCY
                && begun.stream()
                        .anyMatch(p -> p.name().boatId().equals(date.boatId())
                                && p.name().operation().startsWith("emergency work")
                                && !p.date().isBefore(date.date()));
    }
}
