package sternwright.service.check;

import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.service.Interval;
import sternwright.service.Modifier;
import sternwright.service.Rule;

/** Whether the figures of one rule can be. */
record RuleFigures(Spot at, Rule rule, List<ProgrammeFault> faults) {

    void check() {
        if (rule.appliesTo().kinds().isEmpty() && rule.appliesTo().tags().isEmpty()) {
            fault("applies-to", "nothing", "name at least one kind or tag of part, else the rule is for none");
        }
        interval(rule.interval());
        atLeast("minutes", rule.minutes(), 1);
        share("material-share", rule.materialShare());
        if (!(rule.riskPerMonthLate() >= 0)) {
            fault("risk-per-month-late", "" + rule.riskPerMonthLate(), "at least 0, as a share of the work's price");
        }
        rule.modifiers().forEach(this::modifier);
        rule.triggers().stream()
                .filter(t -> t.atMost() == null && t.atLeast() == null)
                .forEach(t -> fault("triggers", t.reading(), "give at-most or at-least, else nothing pulls it"));
        rule.readings().forEach(r -> {
            if (r.low() != null && r.high() != null && r.low() > r.high()) {
                fault("readings." + r.name(), r.low() + " to " + r.high(), "low must not lie above high");
            }
        });
    }

    private void interval(Interval i) {
        if (i.months() == null
                && i.hours() == null
                && i.lifeMonths() == null
                && i.everyNth() == null
                && i.occasion() == null
                && i.after().isEmpty()
                && i.unlessLastsTo() == null
                && rule.triggers().isEmpty()) {
            fault("interval", "nothing", "give at least one of months, hours, life-months, every-nth, occasion, after");
        }
        atLeast("interval.months", i.months(), 1);
        atLeast("interval.life-months", i.lifeMonths(), 1);
        above("interval.hours", i.hours());
        if (i.everyNth() != null) {
            atLeast("interval.every-nth.n", i.everyNth().n(), 2);
        }
    }

    private void modifier(Modifier m) {
        boolean known = m.when().equals("hot-marina")
                || m.when().equals("heavy-use")
                || (m.when().startsWith("condition:") && m.when().length() > "condition:".length());
        if (!known) {
            fault("modifiers.when", m.when(), "write hot-marina, heavy-use or condition: and the name of a condition");
        }
        above("modifiers.factor", m.factor());
        atLeast("modifiers.months", m.months(), 1);
    }

    private void share(String field, double value) {
        if (!(value >= 0 && value <= 1)) {
            fault(field, "" + value, "a share lies between 0 and 1");
        }
    }

    private void above(String field, @Nullable Double value) {
        if (value != null && !(value > 0)) {
            fault(field, "" + value, "must be above 0");
        }
    }

    private void atLeast(String field, @Nullable Number value, int least) {
        if (value != null && !(value.doubleValue() >= least)) {
            fault(field, "" + value, "must be at least " + least);
        }
    }

    private void fault(String field, String written, String expected) {
        faults.add(new ProgrammeFault(at.at(field), written, expected, null));
    }
}
