package sternwright.app.command.entry;

import picocli.CommandLine.Option;
import sternwright.app.files.problem.BadInput;
import sternwright.visit.solver.SolveLimits;

/** How far visits are planned and how long is searched: the same options of every command that plans visits. */
public final class PlanReach {
    private static final int MOST_MONTHS = 120;

    @Option(
            names = "--months",
            paramLabel = "MONTHS",
            defaultValue = "24",
            description = "How far to plan; left out: 24.")
    int months = 24;

    @Option(
            names = "--seconds",
            paramLabel = "SECONDS",
            defaultValue = "20",
            description = "Most time for one boat; left out: 20.")
    double seconds = 20;

    @Option(
            names = "--gap",
            paramLabel = "PERCENT",
            defaultValue = "0",
            description = "Stop when this near the cheapest; left out: 0.")
    double gapPercent;

    /**
     * Makes sure that visits can be planned so.
     *
     * @throws BadInput if they cannot
     */
    public void require() {
        if (months < 1 || months > MOST_MONTHS) {
            throw BadInput.of("--months", months + " months", "1 to " + MOST_MONTHS, "");
        }
        if (!(seconds > 0)) {
            throw BadInput.of("--seconds", seconds + " s", "more than 0", "");
        }
        if (!(gapPercent >= 0)) {
            throw BadInput.of("--gap", gapPercent + " %", "0 or more", "");
        }
    }

    /**
     * How far to plan.
     *
     * @return months, 1 to 120
     */
    public int months() {
        return months;
    }

    /**
     * How long to search for one boat, by the clock of the machine.
     *
     * @return time and gap
     */
    public SolveLimits limits() {
        return SolveLimits.ofSeconds(System::nanoTime, seconds).withGap(gapPercent / 100);
    }
}
