package sternwright.visit.solver;

import org.jspecify.annotations.Nullable;

/**
 * One branching decision and those before it.
 *
 * @param kind what is decided
 * @param index slot, set-up (point x horizon + month) or doing (work x horizon + month)
 * @param open held, opened or done; otherwise not
 * @param before the decision before this one
 */
record Decision(
        Kind kind, int index, boolean open, @Nullable Decision before) {
    enum Kind {
        VISIT,
        SET_UP,
        DONE
    }
}
