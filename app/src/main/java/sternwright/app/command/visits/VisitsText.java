package sternwright.app.command.visits;

import java.io.PrintWriter;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.stream.Collectors;
import sternwright.app.command.text.PeopleDates;
import sternwright.app.command.text.TextTable;
import sternwright.app.paper.Figures;
import sternwright.measure.Money;
import sternwright.visit.BoatAnswer;
import sternwright.visit.BoatPlan;
import sternwright.visit.LeftAnswer;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;
import sternwright.visit.planned.PriceLine;
import sternwright.visit.planned.SupplyLine;
import sternwright.visit.problem.Proof;

/** Planned visits for people: what, when, for how much, and how good the plan is known to be. */
public final class VisitsText {
    private final PrintWriter out;
    private final DateTimeFormatter dates;
    private final NumberFormat numbers;
    private final Locale locale;
    private final Figures figures;

    VisitsText(PrintWriter out, Figures figures) {
        this.out = out;
        this.figures = figures;
        this.locale = figures.locale();
        this.dates = PeopleDates.of(locale);
        this.numbers = NumberFormat.getNumberInstance(locale);
        numbers.setMaximumFractionDigits(2);
    }

    /** How good a plan is known to be, in one sentence. */
    String proof(BoatPlan plan) {
        String time = numbers.format(plan.proof().millis() / 1000.0) + " s";
        String gap = numbers.format(100 * plan.gap()) + " %";
        if (plan.proof().status() == Proof.Status.OPTIMAL) {
            return "Proven in " + time + ": no plan is cheaper than " + money(plan.planningCost()) + ".";
        }
        return "After " + time + " the plan costs " + money(plan.planningCost()) + "; no plan can cost less than "
                + money(plan.bound()) + " (gap " + gap + ").";
    }

    void plan(BoatPlan plan) {
        int number = 1;
        for (PlannedVisit v : plan.visits()) {
            out.println();
            visit(number++, v);
        }
        out.println();
        out.println("What the plan weighs (without tax; the owner pays " + money(plan.net()) + " of it)");
        TextTable table = new TextTable("", "");
        plan.split().stream()
                .filter(l -> l.amount().amount().signum() != 0)
                .forEach(l -> table.row("  " + l.what(), money(l.amount())));
        table.row("  together", money(plan.planningCost()));
        table.printRows(out);
        plan.refused()
                .forEach(d -> out.println("Refused by the owner, on record, in no visit: "
                        + d.rule().work() + " (" + d.part() + ")."));
        plan.notes().forEach(n -> out.println("Note: " + n));
    }

    private void visit(int number, PlannedVisit v) {
        out.println("Visit " + number + ": " + days(v) + ", "
                + v.place().words() + (v.lifts() ? ", lifted for it" : "") + "; " + time(v.minutes()) + "; "
                + money(v.net()) + " without tax; bundling saves " + money(v.savedByBundling()));
        TextTable table = new TextTable("", "", "", "");
        for (PlannedWork w : v.works()) {
            table.row(
                    "  " + w.words() + (w.inForce().rule().safety() ? "  [safety item]" : ""),
                    time(w.minutes()),
                    money(w.price()),
                    w.reason());
        }
        for (PriceLine p : v.prices()) {
            table.row(
                    "  " + p.what(),
                    p.unit().isEmpty() ? "" : figures.quantity(p.quantity(), p.unit()),
                    money(p.amount()),
                    "");
        }
        table.printRows(out);
        if (!v.supplies().isEmpty()) {
            out.println("  from the stores: "
                    + v.supplies().stream().map(this::supply).collect(Collectors.joining(", ")));
        }
    }

    private String days(PlannedVisit v) {
        String days = v.from().equals(v.to()) ? date(v.from()) : date(v.from()) + " to " + date(v.to());
        return v.atOnce() ? "at once, " + days : days;
    }

    private String supply(SupplyLine s) {
        String note = s.note().isEmpty() ? "" : " (" + s.note() + ")";
        String price = s.price() == null ? " (no price in the stores)" : "";
        return figures.supply(s.quantity(), s.unit()) + " " + s.name() + price + note;
    }

    /** One visit fewer or more, in one line. */
    void alternative(String name, BoatPlan plan, BoatAnswer other) {
        if (other instanceof BoatPlan p) {
            Money more = p.planningCost().minus(plan.planningCost());
            out.println(name + ": " + signed(more) + "; visits "
                    + p.visits().stream().map(this::shortVisit).collect(Collectors.joining(", ")) + ".");
        } else if (other instanceof BoatAnswer.NoPlan n) {
            out.println(name + ": not possible. " + clash(n));
        }
    }

    private String shortVisit(PlannedVisit v) {
        return dates.format(v.from()) + " " + v.place().words() + (v.lifts() ? " (lift)" : "");
    }

    void left(LeftAnswer left) {
        String head = "If \"" + left.work() + "\" is left until " + date(left.until()) + ": ";
        if (left.answer() instanceof BoatAnswer.NoPlan n) {
            out.println(head + "not possible. " + clash(n));
        } else {
            out.println(head + money(left) + "; " + risk(left) + ".");
        }
        if (left.safetyPastLife()) {
            out.println(
                    "  It is a safety item and would be past its life: only with the owner's signed refusal on record.");
        }
        if (!left.ifLeft().isEmpty()) {
            out.println("  What may happen: " + left.ifLeft());
        }
    }

    private String money(LeftAnswer left) {
        Money more = left.moreMoney();
        return switch (more.amount().signum()) {
            case 1 -> "the visits and what they use up come to " + money(more) + " more";
            case -1 -> "the visits and what they use up come to " + money(more.times(-1)) + " less";
            default -> "the visits cost the same";
        };
    }

    private String risk(LeftAnswer left) {
        Money more = left.moreRisk();
        return more.amount().signum() > 0
                ? "the trouble to expect from being late grows by " + money(more)
                : "being late adds no risk";
    }

    String clash(BoatAnswer.NoPlan none) {
        if (none.clash().isEmpty()) {
            return "The search ended before it knew which demands clash; give it more --seconds.";
        }
        return (none.minimal()
                        ? "These cannot all hold; it could be planned without any one of them: "
                        : "Among these lies a clash: ")
                + String.join("; ", none.clash()) + ".";
    }

    /** A share as a percentage with two decimals, the sign left to the table's head. */
    String percent(double share) {
        return String.format(locale, "%.2f", 100 * share);
    }

    String date(LocalDate date) {
        return dates.format(date);
    }

    String money(Money money) {
        return figures.money(money);
    }

    private String signed(Money more) {
        return switch (more.amount().signum()) {
            case 1 -> money(more) + " dearer";
            case -1 -> money(more.times(-1)) + " cheaper";
            default -> "costs the same";
        };
    }

    String time(double minutes) {
        return figures.time(minutes);
    }
}
