package sternwright.app.paper;

import java.util.ArrayList;
import java.util.List;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.job.estimate.Estimate;
import sternwright.job.estimate.EstimateLine;
import sternwright.job.estimate.OwnerAnswer;
import sternwright.measure.Money;
import sternwright.service.Place;
import sternwright.visit.planned.PriceLine;
import sternwright.visit.planned.SupplyLine;

/** What the estimate says to an owner. */
public final class OwnerWords {
    private OwnerWords() {}

    /** The paragraph at the head: what, when, how much, until when. */
    public static String opening(Estimate e, Figures f) {
        int n = e.lines().size();
        String works = n == 1 ? "one work" : n + " works";
        String where = e.lifts()
                ? "The boat is lifted out for it and launched again."
                : e.place() == Place.AFLOAT ? "The boat stays in the water." : "It is done while the boat is ashore.";
        String more = e.complete() ? "" : " Not every price is known yet; what is missing comes on top.";
        String when = e.from().equals(e.to())
                ? " on " + f.date(e.from())
                : " between " + f.dates(e.from(), e.to()).replace(" to ", " and ");
        return "We suggest " + works + when + ". " + where
                + " It comes to " + f.money(e.gross()) + " with " + e.taxName() + "." + more
                + " Prices on the lines are without " + e.taxName() + ".";
    }

    /** The works that are not declined, added up. */
    public static Money works(Estimate e) {
        Money sum = Money.zero(e.plannedNet().currency());
        for (EstimateLine l : e.lines()) {
            sum = l.counts() ? sum.plus(l.price()) : sum;
        }
        return sum;
    }

    /** The boxes of a line, or what was ticked. */
    public static String answer(EstimateLine l) {
        return switch (l.answer()) {
            case OPEN -> "\u2610\u00a0yes \u2610\u00a0no";
            case ACCEPTED -> "\u2611\u00a0yes";
            case DECLINED -> "\u2611\u00a0no, declined";
        };
    }

    /** The style of a line. */
    public static String lineClass(EstimateLine l) {
        return l.answer() == OwnerAnswer.DECLINED ? "declined" : "open";
    }

    /** What the price of a line pays for. */
    public static String contents(EstimateLine l, Figures f) {
        List<String> parts = new ArrayList<>();
        parts.add(f.time(l.planned().minutes()) + " of work");
        for (SupplyLine s : l.planned().supplies()) {
            if (s.price() != null) {
                parts.add(f.supply(s.quantity(), s.unit()) + " " + s.name());
            }
        }
        return String.join(", ", parts) + ".";
    }

    /** On whose word the interval rests, which the sentence before it has said; common practice needs no title. */
    public static String standing(EstimateLine l) {
        Source source = l.planned().inForce().source();
        boolean named = source.standing() == Standing.PUBLISHED || source.standing() == Standing.MAKER;
        return "Interval: " + (named ? source.line() : source.standing().words()) + ".";
    }

    /** The quantity of a line of the visit as a whole. */
    public static String amount(PriceLine line, Figures f) {
        if (line.unit().equals("min")) {
            return f.time(line.quantity());
        }
        return line.unit().isEmpty() ? "" : f.quantity(line.quantity(), line.unit());
    }
}
