package sternwright.app.desk.season;

import java.util.List;
import java.util.function.Function;
import sternwright.app.files.SeasonFiles;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.sheet.Sheet;
import sternwright.season.dated.SeasonFault;

/** In which file and line a person mends a fault. */
final class FaultPlaces {
    private FaultPlaces() {}

    static Problem problem(SeasonFault fault, SeasonFiles files) {
        String boat = fault.subject();
        return switch (fault.what()) {
            case BOAT, VISIT -> at("boats/" + boat + ".yaml", 0, fault);
            case RESOURCES -> at(SeasonFolder.RESOURCES, 0, fault);
            case TIDES -> at(SeasonFolder.TIDES, 0, fault);
            case DATES ->
                at(SeasonFolder.DATES, line(files.dates(), d -> d.boatId().equals(boat)), fault);
            case PROMISES ->
                at(
                        SeasonFolder.PROMISES,
                        line(files.promises(), p -> p.name().boatId().equals(boat)),
                        fault);
        };
    }

    private static <R> int line(List<Sheet.Row<R>> rows, Function<R, Boolean> wanted) {
        return rows.stream()
                .filter(r -> wanted.apply(r.value()))
                .mapToInt(Sheet.Row::line)
                .findFirst()
                .orElse(0);
    }

    private static Problem at(String file, int line, SeasonFault fault) {
        return new Problem(file, line, "", fault.found(), "", fault.advice());
    }
}
