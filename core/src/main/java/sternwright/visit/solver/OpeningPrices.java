package sternwright.visit.solver;

import sternwright.visit.problem.BoatMonth;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.problem.VisitTariff;

/** What a visit costs that is held for one work alone, cents. */
final class OpeningPrices {
    private final double[] cents;
    private final int horizon;

    OpeningPrices(VisitProblem problem) {
        horizon = problem.horizon();
        cents = new double[2 * horizon];
        VisitTariff tariff = problem.tariff();
        for (int t = 0; t < horizon; t++) {
            BoatMonth month = problem.months().get(t);
            cents[t] = tariff.callOutAfloatCents();
            cents[horizon + t] = tariff.workVisitAshoreCents()
                    + (month.ashorePaid()
                            ? 0
                            : tariff.liftLaunchCents() + month.standingCents() + month.lossOfUseCents());
        }
    }

    /** The cheaper slot of a month among the places that fit (1 afloat, 2 ashore, 3 both). */
    int slot(int fit, int t) {
        if (fit == 3) {
            return cents[t] <= cents[horizon + t] ? t : horizon + t;
        }
        return fit == 1 ? t : horizon + t;
    }

    /** What that slot costs. */
    double cheapest(int fit, int t) {
        return cents[slot(fit, t)];
    }
}
