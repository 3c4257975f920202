package sternwright.visit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import sternwright.visit.problem.MonthVisit;
import sternwright.visit.problem.Place;
import sternwright.visit.problem.VisitPlan;
import sternwright.visit.problem.VisitProblem;

/** Which visit pays for which lift and which months on hard standing: the first visit of a stay pays the lift. */
final class StayPrices {
    private final VisitProblem problem;
    private final Set<Integer> hauled;
    private final List<Integer> ashoreVisits;

    StayPrices(VisitProblem problem, VisitPlan plan) {
        this.problem = problem;
        hauled = new HashSet<>(plan.hauledMonths());
        ashoreVisits = plan.visits().stream()
                .filter(v -> v.place() == Place.ASHORE)
                .map(MonthVisit::month)
                .toList();
    }

    /** Whether the boat is lifted for the visit, and the lift not paid already. */
    boolean lift(MonthVisit v) {
        if (v.place() != Place.ASHORE || !hauled.contains(v.month())) {
            return false;
        }
        int first = begin(v.month());
        boolean paidBefore = first == 0
                ? problem.ashoreAtStart()
                : problem.months().get(first - 1).ashorePaid();
        int end = v.month();
        while (hauled.contains(end + 1)) {
            end++;
        }
        boolean paidAfter =
                end + 1 < problem.horizon() && problem.months().get(end + 1).ashorePaid();
        boolean firstVisit = ashoreVisits.stream().noneMatch(m -> m >= first && m < v.month());
        return firstVisit && !paidBefore && !paidAfter;
    }

    private int begin(int month) {
        int first = month;
        while (hauled.contains(first - 1)) {
            first--;
        }
        return first;
    }

    /** Months on hard standing that the visit pays: its own and those after it until the next visit of the stay. */
    int hauledMonths(MonthVisit v) {
        return (int) months(v).count();
    }

    /** What they cost. */
    long standingCents(MonthVisit v) {
        return months(v).mapToLong(t -> problem.months().get(t).standingCents()).sum();
    }

    private java.util.stream.Stream<Integer> months(MonthVisit v) {
        if (v.place() != Place.ASHORE || !hauled.contains(v.month())) {
            return java.util.stream.Stream.empty();
        }
        int first = begin(v.month());
        boolean firstVisit = ashoreVisits.stream().noneMatch(m -> m >= first && m < v.month());
        int next = ashoreVisits.stream()
                .filter(m -> m > v.month())
                .mapToInt(m -> m)
                .min()
                .orElse(problem.horizon());
        return hauled.stream().filter(t -> t >= (firstVisit ? first : v.month()) && t < next && begin(t) == first);
    }
}
