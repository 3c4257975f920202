package sternwright.visit;

import java.util.List;
import sternwright.due.Due;
import sternwright.visit.problem.VisitProblem;

/**
 * The lean problem of a boat, with what its works are on the boat.
 *
 * @param problem what the solver decides
 * @param works what each work is, by index of the problem
 * @param everyVisit works done at every visit, outside the solver's choice
 * @param refused works the owner refused by signature; they are left out
 * @param notes what was assumed, in words
 */
record BoatProblem(
        VisitProblem problem, List<BoatWork> works, List<BoatWork> everyVisit, List<Due> refused, List<String> notes) {
    BoatProblem {
        works = List.copyOf(works);
        everyVisit = List.copyOf(everyVisit);
        refused = List.copyOf(refused);
        notes = List.copyOf(notes);
    }
}
