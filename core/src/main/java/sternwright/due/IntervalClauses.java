package sternwright.due;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sternwright.due.hours.HoursForecast;
import sternwright.history.RunningHours;
import sternwright.history.ServiceEntry;

/** The clauses that count from the last time: months, engine hours, life. */
final class IntervalClauses {
    private final BoatFacts facts;

    IntervalClauses(BoatFacts facts) {
        this.facts = facts;
    }

    void add(List<Clause> clauses, Asked asked, EffectiveInterval interval) {
        LocalDate base = asked.base();
        Integer months = interval.months();
        Double hours = interval.hours();
        Integer life = interval.lifeMonths();
        String why = interval.why();
        boolean unknown = (months != null || hours != null) && base == null;
        if (months != null && base != null) {
            clauses.add(Clause.certain(ClauseKind.MONTHS, base.plusMonths(months), months, why));
        }
        if (hours != null && base != null) {
            clauses.add(hoursClause(asked, base, hours, why));
        }
        LocalDate born = asked.born();
        if (life != null && born != null) {
            clauses.add(Clause.certain(ClauseKind.LIFE, born.plusMonths(life), life, why));
        }
        if (unknown || (life != null && born == null)) {
            clauses.add(Clause.certain(ClauseKind.UNKNOWN, facts.today, 0, ""));
        }
    }

    private Clause hoursClause(Asked asked, LocalDate base, double interval, String why) {
        BoatFacts.Engine engine = facts.engine(asked.engine());
        RunningHours running = engine.running();
        HoursForecast forecast = engine.forecast();
        Optional<RunningHours.Point> latest = running.latest();
        OptionalDouble then = hoursAt(asked, base, running);
        if (latest.isEmpty() || then.isEmpty()) {
            return forecastFrom(forecast, base, interval, interval, why);
        }
        double target = then.getAsDouble() + interval;
        double rest = target - latest.get().hours();
        if (rest > 0) {
            return forecastFrom(forecast, latest.get().date(), rest, interval, why);
        }
        LocalDate passed =
                running.passed(target, facts.months).orElse(latest.get().date());
        return Clause.certain(ClauseKind.HOURS, passed, interval, why);
    }

    private static Clause forecastFrom(
            HoursForecast forecast, LocalDate from, double rest, double interval, String why) {
        HoursForecast.Range range = forecast.reach(from, rest);
        return new Clause(ClauseKind.HOURS, range.median(), range.early80(), range.late80(), interval, why);
    }

    /** Engine hours when the interval began: written down with the work, or read off the meter's course. */
    private OptionalDouble hoursAt(Asked asked, LocalDate base, RunningHours running) {
        ServiceEntry last = asked.last();
        if (last != null && last.date().equals(base) && last.hours() != null) {
            return OptionalDouble.of(last.hours());
        }
        Double fitting = asked.part().hoursAtFitting();
        if (fitting != null && base.equals(asked.part().fittedOn())) {
            return OptionalDouble.of(fitting);
        }
        return running.on(base, facts.months);
    }
}
