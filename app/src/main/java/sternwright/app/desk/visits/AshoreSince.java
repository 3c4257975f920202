package sternwright.app.desk.visits;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sternwright.app.files.SeasonFiles;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.sheet.Sheet;
import sternwright.app.files.shelf.Shelf;
import sternwright.season.dated.OwnerDate;

/** Which boats are written down as standing ashore, so that visits and season presume the same. */
public final class AshoreSince {
    private AshoreSince() {}

    /**
     * Reads it out of the dates of the season.
     *
     * @param files what is said of the season
     * @return the day since which each such boat stands ashore, by boat
     */
    public static Map<String, LocalDate> of(SeasonFiles files) {
        return of(files.dates().stream().map(Sheet.Row::value).toList());
    }

    /**
     * The same, of a yard of which nothing else of the season is asked.
     *
     * @param shelf where the yard's texts are kept
     * @return the day since which each such boat stands ashore, by boat
     */
    public static Map<String, LocalDate> of(Shelf shelf) {
        return of(SeasonFolder.dates(shelf));
    }

    /**
     * Reads it out of dates.
     *
     * @param dates owners' and suppliers' dates
     * @return the day since which each such boat stands ashore, by boat
     */
    public static Map<String, LocalDate> of(List<OwnerDate> dates) {
        return dates.stream()
                .filter(d -> d.kind() == OwnerDate.Kind.ASHORE_SINCE)
                .collect(Collectors.toMap(OwnerDate::boatId, OwnerDate::date, (a, b) -> b));
    }
}
