package sternwright.app.web.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BinaryOperator;
import sternwright.app.web.page.Page;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedVisit;

/**
 * Visits of a boat that stays afloat and is worked on in the same days: two in the plan, one for everybody on board.
 *
 * @param visits visits of one boat in order of time, at least one
 */
record SameDay(List<DatedVisit> visits) {
    SameDay {
        visits = List.copyOf(visits);
    }

    /** Puts together what falls on the same days; everything else stays by itself. */
    static List<SameDay> of(List<DatedVisit> all) {
        List<List<DatedVisit>> groups = new ArrayList<>();
        for (DatedVisit visit : all) {
            groups.stream()
                    .filter(g -> g.stream().anyMatch(v -> together(v, visit)))
                    .findFirst()
                    .orElseGet(() -> {
                        List<DatedVisit> group = new ArrayList<>();
                        groups.add(group);
                        return group;
                    })
                    .add(visit);
        }
        return groups.stream()
                .map(g -> new SameDay(g.stream()
                        .sorted(Comparator.comparing(DatedVisit::from))
                        .toList()))
                .toList();
    }

    private static boolean together(DatedVisit a, DatedVisit b) {
        return a.boatId().equals(b.boatId())
                && a.ashoreFrom() == null
                && b.ashoreFrom() == null
                && !a.from().toLocalDate().isAfter(b.until().toLocalDate())
                && !b.from().toLocalDate().isAfter(a.until().toLocalDate());
    }

    /** As one: the operations of all, the names of all. */
    DatedVisit asOne(Page page) {
        return asOne((a, b) -> page.say("season.visit.together", a, b));
    }

    DatedVisit asOne(BinaryOperator<String> names) {
        String name = visits.stream().map(DatedVisit::visit).reduce(names).orElseThrow();
        List<DatedOperation> operations =
                visits.stream().flatMap(v -> v.operations().stream()).toList();
        DatedVisit v = visits.get(0);
        return new DatedVisit(
                v.boatId(), v.boatName(), name, v.placeClass(), v.ashoreFrom(), v.ashoreUntil(), operations);
    }
}
