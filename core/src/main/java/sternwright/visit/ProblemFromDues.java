package sternwright.visit;

import java.time.Month;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Installation;
import sternwright.boat.Winter;
import sternwright.due.ClauseKind;
import sternwright.due.Due;
import sternwright.due.DueState;
import sternwright.due.hours.GammaForecast;
import sternwright.history.MeterReading;
import sternwright.history.RunningHours;
import sternwright.service.Half;
import sternwright.service.Rule;
import sternwright.service.RuleInForce;
import sternwright.visit.problem.FollowOn;
import sternwright.visit.problem.Life;
import sternwright.visit.problem.MonthSpan;
import sternwright.visit.problem.Place;
import sternwright.visit.problem.ServicePoint;
import sternwright.visit.problem.UseProfile;
import sternwright.visit.problem.VisitDemands;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.problem.VisitTariff;
import sternwright.visit.problem.Work;
import sternwright.visit.problem.WorkPhase;
import sternwright.visit.problem.WorkRules;

/** Makes the lean problem of one boat from its due list and the yard's rates. */
final class ProblemFromDues {
    /** A work that is overdue or of unknown history waits at most so long for the first visit. Common practice, no source. */
    private static final int LONGEST_WAIT_MONTHS = 12;

    /** A work that is overdue already waits at most so long, if it can be done at all by then. Common practice, no source. */
    private static final int OVERDUE_WAIT_MONTHS = 3;

    /** A work that is no safety item may be late by this share of its interval, one month at least. As in the due list. */
    private static final double LATE_SHARE = 0.10;

    /** A work is not repeated before this share of its life. Common practice, no source. */
    private static final double EARLIEST_SHARE = 0.35;

    private final BoatQuestion question;
    private final BoatCalendar calendar;
    private final Prices prices;
    private final WorkLife lives;
    private final List<String> notes = new ArrayList<>();
    private final Map<String, Integer> points = new HashMap<>();
    private final List<ServicePoint> servicePoints = new ArrayList<>();

    private ProblemFromDues(BoatQuestion question) {
        this.question = question;
        calendar = new BoatCalendar(question);
        prices = new Prices(question.yard());
        lives = new WorkLife(question, calendar);
    }

    static BoatProblem of(BoatQuestion question) {
        return new ProblemFromDues(question).make();
    }

    private BoatProblem make() {
        WorksOfBoat works = new WorksOfBoat(question, calendar);
        List<FollowOn> follow = followOns(works.planned);
        Map<String, Double> annual = annualHours();
        List<Work> lean = new ArrayList<>();
        for (int j = 0; j < works.planned.size(); j++) {
            int index = j;
            boolean follower = follow.stream().anyMatch(f -> f.follower() == index);
            double hours = annual.getOrDefault(works.planned.get(j).ref().installationId(), 0.0);
            lean.add(work(works.planned.get(j), hours, follower));
        }
        OptionalDouble lift =
                question.yard().tariff().lift(question.boat().hull().lengthM());
        note(lift);
        VisitProblem problem = FirstLimits.eased(new VisitProblem(
                calendar.firstMonth,
                calendar.boatMonths(lift, prices),
                false,
                tariff(works.everyVisit, lift),
                servicePoints,
                lean,
                follow,
                VisitDemands.NONE));
        return new BoatProblem(problem, works.planned, works.everyVisit, works.refused, notes);
    }

    private void note(OptionalDouble lift) {
        if (lift.isEmpty()) {
            notes.add("The yard's tariff has no lift for a boat of "
                    + question.boat().hull().lengthM()
                    + " m: work ashore is planned only while the boat stands ashore anyway. Add a band to the tariff.");
        }
        if (question.boat().winter() == Winter.ASHORE) {
            notes.add(
                    "Hauled every winter: the stay ashore from the middle of lay-up to the middle of recommission is taken as"
                            + " agreed and paid; lift and launch months allow work in either place.");
        }
        notes.add("A lift for work is priced with " + (int) BoatCalendar.WEEKS_ASHORE + " weeks on hard standing.");
    }

    private VisitTariff tariff(List<BoatWork> everyVisit, OptionalDouble lift) {
        double afloat = question.yard().tariff().callOutAfloat();
        double ashore = question.yard().tariff().workVisitAshore();
        for (BoatWork w : everyVisit) {
            Rule rule = w.phases().get(0).rule();
            double price = prices.price(rule, w.part());
            afloat += rule.place() == sternwright.service.Place.ASHORE ? 0 : price;
            ashore += rule.place() == sternwright.service.Place.AFLOAT ? 0 : price;
        }
        return new VisitTariff(prices.cents(afloat), prices.cents(ashore), prices.cents(lift.orElse(0)));
    }

    /** Expected hours a year, by installation. */
    private Map<String, Double> annualHours() {
        var share = question.berth().southern()
                ? question.use().months().shiftedHalfAYear()
                : question.use().months();
        Map<String, Double> annual = new HashMap<>();
        for (Installation i : question.boat().installations()) {
            List<MeterReading> meter = question.history().meter().stream()
                    .filter(r -> r.installationId().equals(i.id()) && !r.date().isAfter(question.today()))
                    .toList();
            annual.put(i.id(), new GammaForecast(question.use(), share, RunningHours.of(meter)).annualHours());
        }
        return annual;
    }

    private Work work(BoatWork w, double annualHours, boolean follower) {
        UseProfile use = calendar.use(annualHours);
        Due due = w.due();
        Rule rule = w.phases().get(0).rule();
        boolean occasional = !w.windows().isEmpty();
        boolean noOccasionLeft = rule.interval().occasion() != null && !occasional;
        Life life = due == null || occasional || noOccasionLeft ? lives.none(use) : lives.of(due, use, annualHours);
        List<MonthSpan> spans = w.windows().stream().map(calendar::span).toList();
        boolean unknown = due != null && !occasional && unknown(due);
        boolean overdue = due != null && !occasional && !rule.safety() && due.state() == DueState.OVERDUE;
        boolean waits = unknown || late(life) && !rule.safety();
        boolean asked = due != null && life.months() >= WorkLife.FAR_OFF_MONTHS;
        int later = rule.safety() ? 0 : lateness(life, annualHours);
        WorkRules rules = new WorkRules(
                later,
                overdue && !unknown ? OVERDUE_WAIT_MONTHS : waits ? LONGEST_WAIT_MONTHS : later,
                follower ? 0 : EARLIEST_SHARE,
                asked && !follower,
                unknown && life.bounded(),
                spans);
        double price = prices.price(rule, w.part());
        int phases = w.phases().size();
        return new Work(
                w.name(),
                point(w),
                life,
                w.phases().stream().map(r -> phase(w, r, due, annualHours)).toList(),
                phases == 1 || due == null ? 0 : Math.min(due.timesDone(), phases - 1),
                rule.materialShare(),
                prices.cents((rule.riskPerMonthLate() + 1 / interval(life, annualHours)) * price),
                rules);
    }

    private static boolean unknown(Due due) {
        return due.clauses().stream().anyMatch(c -> c.kind() == ClauseKind.UNKNOWN);
    }

    private static boolean late(Life life) {
        return life.months() > 0 && life.monthsUsed() > life.months()
                || life.hours() > 0 && life.hoursUsed() > life.hours();
    }

    private static int lateness(Life life, double annualHours) {
        return (int) Math.max(1, Math.round(LATE_SHARE * interval(life, annualHours)));
    }

    /**
     * Months from one doing to the next, by whichever clause comes first. A month late costs the life of a month beside its risk:
     * otherwise running late would save money.
     */
    private static double interval(Life life, double annualHours) {
        double byHours =
                life.hours() > 0 && annualHours > 0 ? 12 * life.hours() / annualHours : WorkLife.FAR_OFF_MONTHS;
        return Math.min(life.months() > 0 ? life.months() : WorkLife.FAR_OFF_MONTHS, byHours);
    }

    private int point(BoatWork w) {
        String key = w.ref().installationId() + "/" + w.servicePoint();
        return points.computeIfAbsent(key, k -> {
            servicePoints.add(new ServicePoint(k, prices.cents(prices.setUp())));
            return servicePoints.size() - 1;
        });
    }

    private WorkPhase phase(BoatWork w, RuleInForce inForce, @Nullable Due due, double annualHours) {
        Rule rule = inForce.rule();
        Set<Place> places = switch (rule.place()) {
            case AFLOAT -> EnumSet.of(Place.AFLOAT);
            case ASHORE -> rule.diver() ? EnumSet.allOf(Place.class) : EnumSet.of(Place.ASHORE);
            case EITHER -> EnumSet.allOf(Place.class);
        };
        boolean diver = rule.diver() && rule.place() == sternwright.service.Place.ASHORE;
        return new WorkPhase(
                places,
                season(rule, due, w, annualHours),
                prices.cents(prices.price(rule, w.part())),
                diver ? prices.cents(prices.diver(rule, w.part())) : 0);
    }

    /**
     * The half of the year, where waiting for it keeps within the rules: a safety item or one asked for by a finding does not wait,
     * one that comes round by hours within the year cannot, and an occasion has windows of its own. One that is overdue already
     * may also be done in the two months that come next: its half must not make it later still. One of unknown history goes into
     * the first visit.
     */
    private Set<Month> season(Rule rule, @Nullable Due due, BoatWork w, double annualHours) {
        Double hours = w.phases().get(0).rule().interval().hours();
        boolean often = hours != null && annualHours > hours;
        boolean called = due != null && due.first().kind() == ClauseKind.CONDITION;
        boolean free = often || rule.safety() || called || !w.windows().isEmpty();
        if (free) {
            return EnumSet.allOf(Month.class);
        }
        if (due != null && unknown(due) && rule.half() != Half.ANY) {
            return calendar.monthsOfFirstVisit(rule.half());
        }
        Set<Month> months = EnumSet.copyOf(calendar.months(rule.half()));
        if (due != null && due.state() == DueState.OVERDUE) {
            months.add(calendar.firstMonth.getMonth());
            months.add(calendar.firstMonth.plusMonths(1).getMonth());
        }
        return months;
    }

    /** Works that lead to others on the same installation; those possible in either place are done in the same month. */
    private List<FollowOn> followOns(List<BoatWork> works) {
        List<FollowOn> list = new ArrayList<>();
        for (int i = 0; i < works.size(); i++) {
            for (int j = 0; j < works.size(); j++) {
                Set<Integer> phases = i == j ? Set.of() : leading(works.get(i), works.get(j));
                if (!phases.isEmpty()) {
                    boolean anywhere = works.get(j).phases().get(0).rule().place() == sternwright.service.Place.EITHER;
                    boolean always = phases.size() == works.get(i).phases().size();
                    list.add(new FollowOn(i, j, 0, anywhere ? 0 : 1, always ? Set.of() : phases));
                }
            }
        }
        return withoutRings(list, works.size());
    }

    /** The phases of a work that lead to another; none if it never does. */
    private static Set<Integer> leading(BoatWork first, BoatWork then) {
        Set<Integer> phases = new TreeSet<>();
        if (first.ref().installationId().equals(then.ref().installationId())) {
            Rule follower = then.phases().get(0).rule();
            for (int k = 0; k < first.phases().size(); k++) {
                Rule rule = first.phases().get(k).rule();
                if (WorksOfBoat.leads(rule, follower) || opens(rule, then)) {
                    phases.add(k);
                }
            }
        }
        return phases;
    }

    /** A part that would not last to the next time is renewed with the work that opens the way. */
    private static boolean opens(Rule opener, BoatWork then) {
        Due due = then.due();
        return due != null
                && opener.id().equals(due.rule().interval().unlessLastsTo())
                && due.clauses().stream().anyMatch(c -> c.kind() == ClauseKind.OPPORTUNITY);
    }

    private static List<FollowOn> withoutRings(List<FollowOn> all, int works) {
        List<FollowOn> kept = new ArrayList<>();
        for (FollowOn f : all) {
            if (!reaches(kept, f.follower(), f.trigger(), works)) {
                kept.add(f);
            }
        }
        return kept;
    }

    private static boolean reaches(List<FollowOn> links, int from, int to, int steps) {
        if (from == to) {
            return true;
        }
        return steps > 0
                && links.stream().anyMatch(l -> l.trigger() == from && reaches(links, l.follower(), to, steps - 1));
    }
}
