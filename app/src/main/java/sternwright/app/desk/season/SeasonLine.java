package sternwright.app.desk.season;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.answer.DatedVisit;

/**
 * One operation of a planned season on one line, for other programs and for sheets.
 *
 * @param boatId the boat
 * @param boat as painted on the stern
 * @param visit name of the visit
 * @param operation name of the operation
 * @param step what it is in the life of the visit
 * @param from day and hour it begins
 * @param until day and hour it ends
 * @param people who does it, with commas
 * @param hoist name of the hoist, empty if none is needed
 * @param place smallest class of places that takes her, empty if she stays afloat
 * @param state how it stands to its date
 * @param daysLate working days after its date
 * @param reason why on this date
 * @param works what is done, with semicolons
 */
public record SeasonLine(
        String boatId,
        String boat,
        String visit,
        String operation,
        String step,
        LocalDateTime from,
        LocalDateTime until,
        String people,
        String hoist,
        String place,
        String state,
        int daysLate,
        String reason,
        String works) {
    /** Every operation in order of time. */
    public static List<SeasonLine> all(DatedSeason season) {
        return season.visits().stream()
                .flatMap(v -> v.operations().stream().map(o -> of(v, o)))
                .sorted(java.util.Comparator.comparing(SeasonLine::from).thenComparing(SeasonLine::boat))
                .toList();
    }

    private static SeasonLine of(DatedVisit visit, DatedOperation o) {
        return new SeasonLine(
                visit.boatId(),
                visit.boatName(),
                visit.visit(),
                o.meaning().operation(),
                o.meaning().step().name().toLowerCase(Locale.ROOT),
                o.from(),
                o.until(),
                String.join(", ", o.people()),
                o.hoist(),
                visit.placeClass(),
                o.state().words(),
                o.daysLate(),
                o.reason(),
                String.join(
                        "; ",
                        o.meaning().works().stream()
                                .map(w -> w.inForce().rule().work() + " (" + w.partName() + ")")
                                .toList()));
    }
}
