package sternwright.app.desk.season;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import sternwright.app.files.SeasonFiles;
import sternwright.app.files.YardFiles;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.Published;
import sternwright.season.dated.SeasonBoat;
import sternwright.season.dated.SeasonRequest;
import sternwright.yard.SeasonDates;

/**
 * What a yard's files ask of a season.
 *
 * @param ask what is asked
 * @param yard the yard
 * @param files what it says of the season
 * @param dates owners' and suppliers' dates
 * @param fixed operations fixed on days
 */
record RequestOfYard(
        SeasonAsk ask, YardFiles yard, SeasonFiles files, List<OwnerDate> dates, List<PromisedDate> fixed) {
    private static final int MONTHS_AFTER_RECOMMISSION = 2;

    /** The request for boats with their visits, going on from a plan if one is published. */
    SeasonRequest of(List<SeasonBoat> boats, List<Published> published) {
        LocalDate from = published.stream()
                .map(Published::date)
                .filter(d -> d.isBefore(ask.today()))
                .min(Comparator.naturalOrder())
                .orElse(ask.today());
        List<PromisedDate> begun = published.stream()
                .filter(p -> p.date().isBefore(ask.today()))
                .map(Published::kept)
                .toList();
        return new SeasonRequest(
                yard.yard(),
                files.resources(),
                files.tides(),
                boats,
                dates,
                KnownDates.of(published, files.promises(), fixed, ask.today()),
                begun,
                files.hoistsDown(),
                from,
                lastDay(from),
                ask.today());
    }

    /** The day to which the season runs; a date an owner wants is never beyond it. */
    private LocalDate lastDay(LocalDate from) {
        LocalDate given = ask.to();
        if (given != null) {
            return given;
        }
        SeasonDates.Window spring = yard.yard().season().recommissionEndingFrom(from);
        return Stream.concat(
                        dates.stream()
                                .filter(d -> d.kind() == OwnerDate.Kind.AFLOAT_BY)
                                .map(d -> d.date().plusWeeks(2)),
                        Stream.of(spring.to().plusMonths(MONTHS_AFTER_RECOMMISSION)))
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }
}
