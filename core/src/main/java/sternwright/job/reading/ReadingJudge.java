package sternwright.job.reading;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sternwright.finding.Severity;
import sternwright.history.TakenReading;
import sternwright.job.reading.Judgement.Grounds;
import sternwright.service.ReadingAsked;
import sternwright.service.Rule;
import sternwright.service.Trigger;

/**
 * Judges a reading by the limits of the rule that asked for it.
 *
 * <ul>
 *   <li>Outside its limits: act; unsafe if the rule is a safety item.
 *   <li>A value that pulls one of the rule's triggers: act at least, for the work falls due at once.
 *   <li>Inside, but it would be outside next time if it changed as much again as since the last time: watch.
 *   <li>Inside, but within a tenth of the band from a limit (of the limit itself where there is only one): watch. The tenth
 *       is common practice, no source.
 *   <li>Otherwise, or where no limit is given: fine.
 * </ul>
 */
public final class ReadingJudge {
    /** Share of the band, or of a lone limit, inside which a good value is watched. Common practice, no source. */
    public static final double GUARD_SHARE = 0.1;

    private ReadingJudge() {}

    /**
     * Judges one reading.
     *
     * @param asked the reading as asked
     * @param taken as measured, in the unit asked
     * @param before the one before it, null if there is none; left aside if it is in another unit
     * @param rule the rule that asks for it
     * @return the verdict
     * @throws IllegalArgumentException if name or unit differ from what was asked, or the value is no number
     */
    public static Judgement judge(ReadingAsked asked, TakenReading taken, @Nullable TakenReading before, Rule rule) {
        check(asked, taken);
        double value = taken.value();
        String is = Limits.quantity(value, asked);
        String limit = Limits.words(asked);
        if (outside(asked, value)) {
            String danger = rule.safety() ? " This is a safety item: not to be used before it is put right." : "";
            return of(
                    asked,
                    taken,
                    rule.safety() ? Severity.UNSAFE : Severity.ACT,
                    Grounds.OUTSIDE,
                    is + ", should be " + limit + "." + danger);
        }
        Optional<Trigger> pulled = rule.triggers().stream()
                .filter(t -> t.reading().equals(asked.name()) && t.pulledBy(value))
                .findFirst();
        if (pulled.isPresent()) {
            return of(
                    asked,
                    taken,
                    Severity.ACT,
                    Grounds.TRIGGER,
                    is + ": " + pulled.get().why());
        }
        return inside(asked, taken, before);
    }

    private static Judgement inside(ReadingAsked asked, TakenReading taken, @Nullable TakenReading before) {
        double value = taken.value();
        String is = Limits.quantity(value, asked);
        String limit = Limits.words(asked);
        if (asked.low() == null && asked.high() == null) {
            return of(asked, taken, Severity.FINE, Grounds.NO_LIMIT, is + "; no limit is given, so it is only noted.");
        }
        if (before != null && drifting(asked, value, before)) {
            String was = Limits.quantity(before.value(), asked);
            return of(
                    asked,
                    taken,
                    Severity.WATCH,
                    Grounds.DRIFTING,
                    is + " after " + was + ": as much change again and it is no longer " + limit + ".");
        }
        if (near(asked, value)) {
            return of(asked, taken, Severity.WATCH, Grounds.NEAR_LIMIT, is + " is close to the limit, " + limit + ".");
        }
        return of(asked, taken, Severity.FINE, Grounds.INSIDE, is + " is within " + limit + ".");
    }

    private static Judgement of(
            ReadingAsked asked, TakenReading taken, Severity severity, Grounds grounds, String why) {
        return new Judgement(asked, taken, severity, grounds, why, asked.source());
    }

    private static void check(ReadingAsked asked, TakenReading taken) {
        if (!asked.name().equals(taken.name())) {
            throw new IllegalArgumentException(
                    "reading \"" + taken.name() + "\" was not asked; expected \"" + asked.name() + "\"");
        }
        if (!asked.unit().equals(taken.unit())) {
            throw new IllegalArgumentException("reading \"" + taken.name() + "\" is in " + taken.unit()
                    + ", but its limit is in " + asked.unit() + ": convert it first");
        }
        if (!Double.isFinite(taken.value())) {
            throw new IllegalArgumentException("reading \"" + taken.name() + "\" is not a number: measure again");
        }
        if (Limits.yesOrNo(asked) && taken.value() != 0 && taken.value() != 1) {
            throw new IllegalArgumentException("reading \"" + taken.name()
                    + "\" is answered with 1 for yes or 0 for no, not with " + taken.value());
        }
    }

    private static boolean outside(ReadingAsked asked, double value) {
        Double low = asked.low();
        Double high = asked.high();
        return (low != null && value < low) || (high != null && value > high);
    }

    private static boolean drifting(ReadingAsked asked, double value, TakenReading before) {
        return !Limits.yesOrNo(asked)
                && before.unit().equals(asked.unit())
                && before.name().equals(asked.name())
                && Double.isFinite(before.value())
                && outside(asked, value + (value - before.value()));
    }

    private static boolean near(ReadingAsked asked, double value) {
        Double low = asked.low();
        Double high = asked.high();
        if (Limits.yesOrNo(asked) || (low != null && low.equals(high))) {
            return false;
        }
        if (low != null && high != null) {
            double guard = GUARD_SHARE * (high - low);
            return value < low + guard || value > high - guard;
        }
        return (low != null && value < low + GUARD_SHARE * Math.abs(low))
                || (high != null && value > high - GUARD_SHARE * Math.abs(high));
    }
}
