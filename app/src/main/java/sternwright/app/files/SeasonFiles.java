package sternwright.app.files;

import java.util.List;
import sternwright.app.files.sheet.Sheet;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.Published;
import sternwright.season.dated.SeasonRequest.HoistDown;
import sternwright.yard.resource.Resources;
import sternwright.yard.resource.TideTable;

/**
 * What a yard's folder says of its season.
 *
 * @param resources {@code resources.yaml}
 * @param tides {@code tides.csv}, empty if there is none
 * @param dates {@code dates.csv} with lines, empty if there is none
 * @param promises {@code promises.csv} with lines, empty if there is none
 * @param hoistsDown days on which hoists do not work, from {@code away.csv}
 * @param published {@code season.csv}, empty if no plan was published
 */
public record SeasonFiles(
        Resources resources,
        TideTable tides,
        List<Sheet.Row<OwnerDate>> dates,
        List<Sheet.Row<PromisedDate>> promises,
        List<HoistDown> hoistsDown,
        List<Published> published) {
    /** Copies the lists. */
    public SeasonFiles {
        dates = List.copyOf(dates);
        promises = List.copyOf(promises);
        hoistsDown = List.copyOf(hoistsDown);
        published = List.copyOf(published);
    }
}
