package sternwright.visit.solver;

/** How the priced links are numbered: visits by work, month and place; then set-ups, stays ashore and follow-ons. */
final class LinkNumbers {
    /** Number of the first set-up. */
    final int setUps;

    /** Number of the first stay. */
    final int stays;

    /** Number of the first follow-on. */
    final int follows;

    /** Number after the last of them. */
    final int end;

    private final int horizon;

    LinkNumbers(PathModel model) {
        horizon = model.horizon;
        setUps = model.works * horizon * 2;
        stays = setUps + model.works * horizon;
        follows = stays + model.works * horizon;
        end = follows + model.followOns.length * horizon;
    }

    /** A visit afloat asked for by a work in a month; the visit ashore has the next number. */
    int place(int work, int month) {
        return (work * horizon + month) * 2;
    }

    int setUp(int work, int month) {
        return setUps + work * horizon + month;
    }

    /** A stay that begins in a month, asked for by a work. */
    int stay(int work, int month) {
        return stays + work * horizon + month;
    }

    int follow(int followOn, int month) {
        return follows + followOn * horizon + month;
    }
}
