package sternwright.service;

import org.jspecify.annotations.Nullable;

/**
 * A finding that makes a work due at once, whatever the date.
 *
 * @param reading name of the reading
 * @param atMost due if the last reading is at or below this, null for no such limit
 * @param atLeast due if the last reading is at or above this, null for no such limit
 * @param why in words an owner understands
 */
public record Trigger(
        String reading, @Nullable Double atMost, @Nullable Double atLeast, String why) {
    /**
     * Whether a value pulls the trigger.
     *
     * @param value the last reading
     * @return true if the work is due
     */
    public boolean pulledBy(double value) {
        return (atMost != null && value <= atMost) || (atLeast != null && value >= atLeast);
    }
}
