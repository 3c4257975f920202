package sternwright.app.files;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sternwright.app.files.problem.Problems;
import sternwright.app.files.sheet.Sheet;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.season.dated.OwnerDate;
import sternwright.season.dated.PromisedDate;
import sternwright.service.Programme;
import sternwright.service.Rule;
import sternwright.visit.planned.AgreedWork;

/** Whether the boats, parts and rules that the season's tables name are there. */
final class SeasonReferences {
    private final YardFiles yard;
    private final List<String> rules;
    private final Problems problems;

    SeasonReferences(YardFiles yard, Problems problems) {
        this.yard = yard;
        this.problems = problems;
        rules = Stream.concat(Stream.of(yard.generic()), yard.programmes().stream())
                .map(Programme::rules)
                .flatMap(List::stream)
                .map(Rule::id)
                .distinct()
                .toList();
    }

    void dates(List<Sheet.Row<OwnerDate>> dates) {
        for (Sheet.Row<OwnerDate> row : dates) {
            OwnerDate date = row.value();
            boat(SeasonFolder.DATES, row.line(), date.boatId());
            if (date.kind() == OwnerDate.Kind.PART_IN) {
                known(SeasonFolder.DATES, row.line(), "work", date.work(), "rule", rules);
            }
        }
    }

    void promises(List<Sheet.Row<PromisedDate>> promises) {
        promises.forEach(row ->
                boat(SeasonFolder.PROMISES, row.line(), row.value().name().boatId()));
    }

    void agreed(List<Sheet.Row<AgreedWork>> agreed) {
        for (Sheet.Row<AgreedWork> row : agreed) {
            AgreedWork work = row.value();
            known(SeasonFolder.AGREED, row.line(), "rule", work.ruleId(), "rule", rules);
            if (boat(SeasonFolder.AGREED, row.line(), work.boatId())) {
                part(row.line(), Objects.requireNonNull(yard.boats().get(work.boatId())), work);
            }
        }
    }

    private void part(int line, Boat boat, AgreedWork work) {
        List<Installation> installations = boat.installations();
        String id = work.part().installationId();
        List<String> ids = installations.stream().map(Installation::id).toList();
        String on = " on " + boat.id();
        if (known(SeasonFolder.AGREED, line, "installation", id, "installation" + on, ids)) {
            List<String> parts = installations.stream()
                    .filter(i -> i.id().equals(id))
                    .flatMap(i -> i.parts().stream())
                    .map(Part::id)
                    .collect(Collectors.toList());
            known(SeasonFolder.AGREED, line, "part", work.part().partId(), "part" + on, parts);
        }
    }

    private boolean boat(String file, int line, String id) {
        return known(file, line, "boat", id, "boat", yard.boats().keySet());
    }

    private boolean known(String file, int line, String field, String written, String what, Collection<String> known) {
        if (known.contains(written)) {
            return true;
        }
        problems.note(BoatCheck.unknown(file, line, field, written, what, known));
        return false;
    }
}
