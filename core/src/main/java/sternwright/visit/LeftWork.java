package sternwright.visit;

import java.util.ArrayList;
import java.util.List;
import sternwright.visit.problem.MonthSpan;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.problem.Work;
import sternwright.visit.problem.WorkRules;

/** Lets one work wait past its limits, so that leaving it can be answered in money and risk instead of being forbidden. */
final class LeftWork {
    private LeftWork() {}

    /** The problem in which a work may be done as late as the question wants it, and what must have been before need not be. */
    static VisitProblem mayWait(VisitProblem problem, int work, int month) {
        List<Work> works = new ArrayList<>(problem.works());
        Work w = works.get(work);
        WorkRules r = w.rules();
        List<MonthSpan> spans = new ArrayList<>();
        for (MonthSpan span : r.mustFallIn()) {
            if (span.last() >= month) {
                spans.add(new MonthSpan(Math.max(span.first(), month), span.last()));
            }
        }
        works.set(
                work,
                w.with(new WorkRules(
                        r.maxLateMonths(),
                        r.maxLateFirstMonths() + month + problem.horizon(),
                        r.earliestFraction(),
                        r.once(),
                        r.dueAtFirstVisit(),
                        spans)));
        return problem.withWorks(works, problem.followOns());
    }
}
