package sternwright.app.desk.season;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.sheet.Sheet;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.PromisedDate;
import sternwright.season.dated.Published;

/** The dates owners know: what was promised, and the days of lifts, launches and visits afloat of the published plan. */
final class KnownDates {
    private KnownDates() {}

    static List<PromisedDate> of(
            List<Published> published,
            List<Sheet.Row<PromisedDate>> promised,
            List<PromisedDate> fixed,
            LocalDate today) {
        Map<OperationName, PromisedDate> promises = new HashMap<>();
        published.stream()
                .filter(p -> !p.date().isBefore(today) && ownersKnow(p.name()))
                .forEach(p -> promises.put(p.name(), p.kept()));
        promised.stream()
                .map(Sheet.Row::value)
                .filter(p -> !p.date().isBefore(today))
                .forEach(p -> promises.put(p.name(), withQuarter(p, promises.get(p.name()))));
        fixed.forEach(p -> promises.put(p.name(), p));
        return promises.values().stream()
                .sorted(Comparator.comparing(PromisedDate::name))
                .toList();
    }

    private static PromisedDate withQuarter(PromisedDate promise, @Nullable PromisedDate planned) {
        return planned != null && planned.date().equals(promise.date())
                ? new PromisedDate(
                        promise.name(),
                        promise.date(),
                        planned.quarter(),
                        promise.promisedOn(),
                        promise.firm(),
                        promise.movedPrice())
                : promise;
    }

    private static boolean ownersKnow(OperationName name) {
        return name.operation().equals("lift")
                || name.operation().equals("launch")
                || name.visit().contains("afloat");
    }
}
