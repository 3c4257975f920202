package sternwright.protection.judgement;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import sternwright.finding.Severity;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.protection.metal.Criterion;
import sternwright.protection.metal.Metal;

/** Judges the potential of a metal. */
public final class PotentialJudge {
    /** Shift from the free potential that counts as protection in fresh water, V. */
    public static final double FRESH_WATER_SHIFT_V = 0.2;

    /** In reach of the limit, but not there. */
    private static final double NEAR_V = 0.05;

    /** Above its free potential by more than this, a noble metal is driven. */
    private static final double DRIVEN_V = 0.03;

    private static final Source SHIFT = new Source(
            "small-craft practice: at least 200 mV more negative than the part's own free potential",
            "fresh water has no agreed absolute figures",
            Standing.COMMON_PRACTICE);

    private PotentialJudge() {}

    /**
     * Judges a potential against the published criterion of the metal.
     *
     * @param metal the metal
     * @param potentialV potential close to the part, V against silver/silver chloride in seawater
     * @param fresh whether the water is fresh
     */
    public static MetalJudgement judge(Metal metal, double potentialV, boolean fresh) {
        Criterion criterion = metal.criterion();
        if (criterion == null) {
            String why = metal.alloy() != null ? "an anode is meant to waste" : "this metal needs no protection";
            return new MetalJudgement(Protection.NOT_JUDGED, Severity.FINE, potentialV, null, null, why, null);
        }
        Double notBelow = criterion.notBelowV();
        if (notBelow != null && potentialV < notBelow) {
            return new MetalJudgement(
                    Protection.OVER,
                    potentialV < notBelow - 0.1 ? Severity.ACT : Severity.WATCH,
                    potentialV,
                    limit(metal, criterion, fresh),
                    notBelow,
                    words(metal, potentialV, "below", notBelow) + ": " + criterion.overHarm(),
                    criterion.overSource());
        }
        double limit = limit(metal, criterion, fresh);
        Source source = fresh ? SHIFT : criterion.source();
        boolean reached = potentialV <= limit;
        return new MetalJudgement(
                reached ? Protection.PROTECTED : Protection.UNDER,
                severity(metal, potentialV, limit, fresh),
                potentialV,
                limit,
                notBelow,
                words(metal, potentialV, reached ? "at or below" : "above", limit)
                        + remark(metal, potentialV, fresh, reached),
                source);
    }

    /** Limit at or below which the metal is protected, V. */
    private static double limit(Metal metal, Criterion criterion, boolean fresh) {
        return fresh ? metal.freePotentialV(true) - FRESH_WATER_SHIFT_V : criterion.protectedAtV();
    }

    /** Iron and aluminium waste without protection; noble metals last by themselves unless something drives them. */
    private static Severity severity(Metal metal, double potentialV, double limit, boolean fresh) {
        if (potentialV <= limit) {
            return Severity.FINE;
        }
        if (base(metal)) {
            return potentialV <= limit + NEAR_V ? Severity.WATCH : Severity.ACT;
        }
        return potentialV > metal.freePotentialV(fresh) + DRIVEN_V ? Severity.ACT : Severity.FINE;
    }

    private static boolean base(Metal metal) {
        return metal.family() == Metal.Family.ALUMINIUM || metal.family() == Metal.Family.IRON;
    }

    /** What a noble metal above its limit means. */
    private static String remark(Metal metal, double potentialV, boolean fresh, boolean reached) {
        if (reached || base(metal)) {
            return "";
        }
        return potentialV > metal.freePotentialV(fresh) + DRIVEN_V
                ? "; it lies above the potential it takes by itself, so something drives it to waste"
                : "; by itself it wastes slowly and lasts without";
    }

    private static String words(Metal metal, double potentialV, String side, double limit) {
        return String.format(
                Locale.ROOT,
                "%s at %.0f mV is %s its limit of %.0f mV (Ag/AgCl/sw)",
                metal.name(),
                potentialV * 1000,
                side,
                limit * 1000);
    }

    /** The limit of protection of a metal in a water, V, where it has one. */
    public static @Nullable Double protectedAtV(Metal metal, boolean fresh) {
        Criterion criterion = metal.criterion();
        return criterion == null ? null : (Double) limit(metal, criterion, fresh);
    }
}
