package sternwright.visit;

import java.text.MessageFormat;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.TreeSet;
import java.util.stream.Collectors;
import sternwright.due.Clause;
import sternwright.due.ClauseKind;
import sternwright.due.Due;
import sternwright.due.DueState;
import sternwright.measure.Money;
import sternwright.service.Half;
import sternwright.service.Rule;
import sternwright.service.RuleInForce;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;
import sternwright.visit.planned.PriceLine;
import sternwright.visit.planned.SupplyLine;
import sternwright.visit.problem.Doing;
import sternwright.visit.problem.MonthVisit;
import sternwright.visit.problem.MonthWork;
import sternwright.visit.problem.Place;
import sternwright.visit.problem.VisitPlan;
import sternwright.yard.SeasonDates.Window;

/** Writes a lean plan out as visits: dates, works with reasons, minutes, supplies, price. */
final class VisitWriter {
    private static final ResourceBundle WORDS = ResourceBundle.getBundle("sternwright.visit.words", Locale.ENGLISH);

    private static final int DAYS_OF_A_YEAR = 366;

    private final BoatQuestion question;
    private final BoatProblem boat;
    private final VisitPlan plan;
    private final Prices prices;
    private final BoatCalendar calendar;
    private final StayPrices stays;

    VisitWriter(BoatQuestion question, BoatProblem boat, VisitPlan plan) {
        this.question = question;
        this.boat = boat;
        this.plan = plan;
        prices = new Prices(question.yard());
        calendar = new BoatCalendar(question);
        stays = new StayPrices(boat.problem(), plan);
    }

    /** The visits in order of time. */
    List<PlannedVisit> visits() {
        return plan.visits().stream().map(this::visit).toList();
    }

    static String words(String key, Object... values) {
        return new MessageFormat(WORDS.getString(key), Locale.ENGLISH).format(values);
    }

    private PlannedVisit visit(MonthVisit v) {
        List<PlannedWork> works = works(v);
        int points = points(v);
        List<PriceLine> lines = lines(v, works, points);
        double minutes = works.stream().mapToDouble(PlannedWork::minutes).sum()
                + points * question.yard().setUpMinutes();
        List<SupplyLine> supplies = Prices.addedUp(
                works.stream().flatMap(w -> w.supplies().stream()).toList());
        Money net = prices.money(0L);
        for (PlannedWork w : works) {
            net = net.plus(w.price());
        }
        for (PriceLine line : lines) {
            net = net.plus(line.amount());
        }
        Window dates = longEnough(dates(v), minutes);
        return new PlannedVisit(
                question.boat().id(),
                dates.from(),
                dates.to(),
                sternwright.service.Place.valueOf(v.place().name()),
                stays.lift(v),
                works,
                minutes,
                supplies,
                lines,
                net,
                saved(v, lines));
    }

    private List<PlannedWork> works(MonthVisit v) {
        List<PlannedWork> works = new ArrayList<>();
        for (MonthWork w : v.works()) {
            works.add(work(w, v));
        }
        for (BoatWork w : boat.everyVisit()) {
            sternwright.service.Place place = w.phases().get(0).rule().place();
            if (place == sternwright.service.Place.EITHER
                    || place.name().equals(v.place().name())) {
                works.add(always(w, v));
            }
        }
        return works;
    }

    private int points(MonthVisit v) {
        TreeSet<Integer> points = new TreeSet<>();
        for (MonthWork w : v.works()) {
            points.add(boat.problem().works().get(w.work()).servicePoint());
        }
        points.remove(-1);
        return points.size();
    }

    private PlannedWork work(MonthWork w, MonthVisit v) {
        BoatWork on = boat.works().get(w.work());
        Doing doing = plan.doings().stream()
                .filter(d -> d.work() == w.work() && d.to() == v.month())
                .findFirst()
                .orElseThrow();
        Due due = on.due();
        boolean first = doing.from() < 0;
        boolean inTime = due != null && !due.earliest().isAfter(calendar.lastDay(v.month()));
        if (due != null && first && (inTime || ledBy(w.work(), v).isEmpty())) {
            return planned(on, w.phase(), due.dueOn(), due.first().kind(), reason(due, v));
        }
        LocalDate again = dueAgain(on, w.work(), doing, v.month());
        String led = ledBy(w.work(), v);
        if (due == null || !led.isEmpty()) {
            String after = led.isEmpty() ? on.after() : led;
            return planned(on, w.phase(), calendar.lastDay(v.month()), ClauseKind.AFTER, words("after", after));
        }
        if (on.windows().isEmpty()) {
            String reason = words("again", boat.problem().monthName(doing.from()), month(again));
            return planned(on, w.phase(), again, ClauseKind.MONTHS, reason);
        }
        return planned(on, w.phase(), again, ClauseKind.OCCASION, occasion(due, again));
    }

    /** The due list's sentence, and why a work of unknown history is not in the first visit. */
    private String reason(Due due, MonthVisit v) {
        String sentence = question.reasons().sentence(due);
        if (due.state() != DueState.UNKNOWN || v.equals(plan.visits().get(0))) {
            return sentence;
        }
        Rule rule = due.rule();
        boolean elsewhere = rule.place() != sternwright.service.Place.EITHER
                && !rule.place().name().equals(plan.visits().get(0).place().name());
        String wait = elsewhere
                ? words("unknown." + rule.place().name().toLowerCase(Locale.ROOT))
                : rule.half() == Half.RECOMMISSION ? words("unknown.recommission") : "";
        return wait.isEmpty() ? sentence : sentence + " " + wait;
    }

    /** The due list's own sentence for a later lay-up or recommission. */
    private String occasion(Due due, LocalDate end) {
        var occasion = due.rule().interval().occasion();
        Clause clause = Clause.certain(ClauseKind.OCCASION, end, 0, occasion == null ? "" : occasion.name());
        return question.reasons()
                .sentence(new Due(
                        due.boatId(),
                        due.part(),
                        due.inForce(),
                        DueState.COMING,
                        List.of(clause),
                        end,
                        end,
                        end,
                        due.lastDone(),
                        null,
                        0,
                        0));
    }

    /** The works of the visit that ask for the work to be done after them, in words; empty if none does. */
    private String ledBy(int work, MonthVisit v) {
        return boat.problem().followOns().stream()
                .filter(f -> f.follower() == work)
                .flatMap(f -> v.works().stream().filter(w -> w.work() == f.trigger() && f.calledBy(w.phase())))
                .map(w -> boat.works()
                        .get(w.work())
                        .phases()
                        .get(w.phase())
                        .rule()
                        .work())
                .distinct()
                .limit(2)
                .collect(Collectors.joining(", "));
    }

    private static String month(LocalDate day) {
        return day.getMonth().getDisplayName(java.time.format.TextStyle.FULL, Locale.ENGLISH) + " " + day.getYear();
    }

    /** The last day of the month in which it falls due again, or of its occasion. */
    private LocalDate dueAgain(BoatWork on, int work, Doing doing, int month) {
        for (Window window : on.windows()) {
            if (!window.to().isBefore(calendar.firstDay(month))) {
                return window.to();
            }
        }
        int due = month;
        var life = boat.problem().works().get(work).life();
        for (int m = doing.from(); m < boat.problem().horizon() && life.bounded(); m++) {
            double months = life.months() > 0 ? (m - doing.from()) / life.months() : 0;
            double hours = life.hours() > 0 ? life.use().between(doing.from(), m) / life.hours() : 0;
            if (Math.max(months, hours) <= 1) {
                due = m;
            }
        }
        return calendar.lastDay(due);
    }

    private PlannedWork always(BoatWork w, MonthVisit v) {
        Due due = w.due();
        String reason = due == null ? "" : question.reasons().sentence(due);
        return planned(w, 0, calendar.firstDay(v.month()), ClauseKind.OCCASION, reason);
    }

    private PlannedWork planned(BoatWork on, int phase, LocalDate dueOn, ClauseKind kind, String reason) {
        RuleInForce inForce = on.phases().get(phase);
        Rule rule = inForce.rule();
        double minutes = prices.minutes(rule, on.part());
        return new PlannedWork(
                on.ref(),
                on.partName(),
                inForce,
                dueOn,
                kind,
                reason,
                on.servicePoint(),
                minutes,
                prices.money(prices.labour(minutes)),
                prices.supplies(rule, on.part()),
                prices.money(prices.price(rule, on.part())));
    }

    private List<PriceLine> lines(MonthVisit v, List<PlannedWork> works, int points) {
        List<PriceLine> lines = new ArrayList<>();
        var tariff = question.yard().tariff();
        boolean afloat = v.place() == Place.AFLOAT;
        lines.add(new PriceLine(
                words(afloat ? "line.callOut" : "line.ashore"),
                1,
                "visit",
                prices.money(afloat ? tariff.callOutAfloat() : tariff.workVisitAshore())));
        if (stays.lift(v)) {
            lines.add(new PriceLine(
                    words("line.lift"),
                    1,
                    "lift",
                    prices.money(boat.problem().tariff().liftLaunchCents())));
        }
        int hauled = stays.hauledMonths(v);
        if (hauled > 0) {
            lines.add(new PriceLine(
                    words("line.standing"),
                    hauled * BoatCalendar.WEEKS_ASHORE,
                    "week",
                    prices.money(stays.standingCents(v))));
        }
        if (points > 0) {
            double minutes = points * question.yard().setUpMinutes();
            lines.add(
                    new PriceLine(words("line.setUp", points), minutes, "min", prices.money(points * prices.setUp())));
        }
        double diver = works.stream().mapToDouble(w -> diverMinutes(w, v)).sum();
        if (diver > 0) {
            double hours = diver / 60;
            lines.add(new PriceLine(words("line.diver"), hours, "h", prices.money(hours * tariff.diverHour())));
        }
        return lines;
    }

    private static double diverMinutes(PlannedWork w, MonthVisit v) {
        Rule rule = w.inForce().rule();
        boolean diver = v.place() == Place.AFLOAT && rule.place() == sternwright.service.Place.ASHORE && rule.diver();
        return diver ? w.minutes() : 0;
    }

    /** What a visit of its own for each work would cost more: going there, lifting, standing, opening up. */
    private Money saved(MonthVisit v, List<PriceLine> lines) {
        long alone = 0;
        var problem = boat.problem();
        var month = problem.months().get(v.month());
        for (MonthWork w : v.works()) {
            int point = problem.works().get(w.work()).servicePoint();
            long visit = v.place() == Place.AFLOAT
                    ? prices.cents(question.yard().tariff().callOutAfloat())
                    : prices.cents(question.yard().tariff().workVisitAshore())
                            + (month.ashorePaid() ? 0 : problem.tariff().liftLaunchCents() + month.standingCents());
            alone += visit + (point >= 0 ? problem.servicePoints().get(point).setUpCents() : 0);
        }
        Money together = prices.money(0L);
        for (PriceLine line : lines) {
            together = line.what().equals(words("line.diver")) ? together : together.plus(line.amount());
        }
        Money saved = prices.money(alone).minus(together);
        return saved.amount().signum() < 0 ? prices.money(0L) : saved;
    }

    /** The month, narrowed by the ends of safety items' lives and by lay-up, recommission and first frost. */
    private Window dates(MonthVisit v) {
        LocalDate from = calendar.firstDay(v.month());
        LocalDate to = calendar.lastDay(v.month());
        for (MonthWork w : v.works()) {
            BoatWork on = boat.works().get(w.work());
            Due due = on.due();
            for (Window window : on.windows()) {
                if (window.contains(from)
                        || window.contains(to)
                        || !window.from().isBefore(from) && !window.to().isAfter(to)) {
                    from = window.from().isAfter(from) ? window.from() : from;
                    to = window.to().isBefore(to) ? window.to() : to;
                }
            }
            boolean first =
                    plan.doings().stream().anyMatch(d -> d.work() == w.work() && d.from() < 0 && d.to() == v.month());
            if (due != null
                    && first
                    && due.rule().safety()
                    && !due.dueOn().isBefore(from)
                    && due.dueOn().isBefore(to)) {
                to = due.dueOn();
            }
        }
        return new Window(from, to.isBefore(from) ? from : to);
    }

    /** A window is never shorter than the working days that the works take, however late they are. */
    private Window longEnough(Window window, double minutes) {
        LocalDate end = window.from();
        int days = (int) Math.ceil(minutes / PlannedVisit.MINUTES_OF_A_DAY);
        for (int i = 0; i < DAYS_OF_A_YEAR; i++) {
            days -= question.yard().calendar().works(end) ? 1 : 0;
            if (days <= 0) {
                break;
            }
            end = end.plusDays(1);
        }
        return window.to().isBefore(end) ? new Window(window.from(), end) : window;
    }
}
