package sternwright.visit.solver;

import sternwright.visit.problem.FollowOn;

/**
 * Numbering of the links that are priced: a work done in a month asks for a visit (afloat or ashore) and, where it has a
 * service point, for its set-up; a trigger asks for its follower.
 */
final class LinkPrices {
    final int size;
    private final int horizon;
    private final int setUpBase;
    private final int followBase;
    private final PathModel model;

    LinkPrices(PathModel model) {
        this.model = model;
        horizon = model.horizon;
        setUpBase = model.works * horizon * 2;
        followBase = setUpBase + model.works * horizon;
        size = followBase + model.followOns.length * horizon;
    }

    int afloat(int work, int month) {
        return (work * horizon + month) * 2;
    }

    int ashore(int work, int month) {
        return (work * horizon + month) * 2 + 1;
    }

    int setUp(int work, int month) {
        return setUpBase + work * horizon + month;
    }

    int follow(int followOn, int month) {
        return followBase + followOn * horizon + month;
    }

    /** Adds the prices of the follow-on links to the price of doing each work in each month. */
    void addFollowOns(double[] price, double[][] perMonth) {
        for (int i = 0; i < model.followOns.length; i++) {
            FollowOn f = model.followOns[i];
            for (int t = 0; t < horizon && model.asks(f, t); t++) {
                double p = price[follow(i, t)];
                if (p > 0) {
                    perMonth[f.trigger()][t] += p;
                    for (int u = t + f.minLagMonths(); u <= t + f.maxLagMonths(); u++) {
                        perMonth[f.follower()][u] -= p;
                    }
                }
            }
        }
    }
}
