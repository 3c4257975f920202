package sternwright.job;

import org.jspecify.annotations.Nullable;
import sternwright.boat.Installation;
import sternwright.history.MeterReading;

/**
 * One installation as the card names it, with a box for the hour meter.
 *
 * @param installation the installation
 * @param lastMeter what its hour meter said last, null if not known
 */
public record CardEngine(
        Installation installation, @Nullable MeterReading lastMeter) {}
