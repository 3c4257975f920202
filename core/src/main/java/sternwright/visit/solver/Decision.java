package sternwright.visit.solver;

import org.jspecify.annotations.Nullable;

/**
 * One branching decision and those before it.
 *
 * @param kind what is decided
 * @param index slot, set-up (point x horizon + month) doing (work x horizon + month) or call (follow-on x horizon + month)
 * @param open held, opened or done; otherwise not
 * @param before the decision before this one
 */
record Decision(
        Kind kind, int index, boolean open, @Nullable Decision before) {
    enum Kind {
        VISIT,
        SET_UP,
        DONE,
        /** The follower of a trigger that asks for it in some phases only; otherwise the trigger is not done in those phases. */
        CALLED
    }
}
