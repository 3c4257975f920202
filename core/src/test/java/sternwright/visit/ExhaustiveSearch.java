package sternwright.visit;

import java.util.ArrayList;
import java.util.List;
import sternwright.visit.problem.BoatMonth;
import sternwright.visit.problem.FollowOn;
import sternwright.visit.problem.LeftUntil;
import sternwright.visit.problem.MonthSpan;
import sternwright.visit.problem.Place;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.problem.VisitSlot;
import sternwright.visit.problem.Work;

/**
 * The cheapest plan by trying everything: every set of months for every work, every place, every way to stand ashore. For a few
 * works over a few months only. Months are bits.
 */
final class ExhaustiveSearch {
    private final VisitProblem p;
    private final int horizon;
    private final List<List<Sequence>> legal = new ArrayList<>();
    private final long[] haul;
    private long best = Long.MAX_VALUE;

    /** One legal set of months of a work, its cost, and where each may be done. */
    private record Sequence(int months, long cost, int afloat, int ashore) {}

    private ExhaustiveSearch(VisitProblem problem) {
        p = problem;
        horizon = problem.horizon();
        haul = new long[1 << horizon];
        for (int a = 0; a < haul.length; a++) {
            haul[a] = Long.MAX_VALUE / 4;
            for (int out = 0; out < haul.length; out++) {
                if ((a & ~out & ~paid()) == 0 && (out & paid()) == 0) {
                    haul[a] = Math.min(haul[a], haulCost(out));
                }
            }
        }
        for (Work w : p.works()) {
            legal.add(sequences(w));
        }
    }

    /** Cost of the cheapest plan; {@link Long#MAX_VALUE} if there is none. */
    static long cheapest(VisitProblem problem) {
        ExhaustiveSearch search = new ExhaustiveSearch(problem);
        search.choose(new ArrayList<>());
        return search.best;
    }

    private int paid() {
        int mask = 0;
        for (int t = 0; t < horizon; t++) {
            mask |= p.months().get(t).ashorePaid() ? 1 << t : 0;
        }
        return mask;
    }

    private long haulCost(int out) {
        long cost = 0;
        for (int t = 0; t < horizon; t++) {
            if ((out >> t & 1) == 1) {
                BoatMonth m = p.months().get(t);
                cost += m.standingCents() + m.lossOfUseCents();
                boolean startsRun = t == 0 ? !p.ashoreAtStart() : (out >> (t - 1) & 1) == 0 && !paid(t - 1);
                if (startsRun) {
                    int end = t;
                    while (end + 1 < horizon && (out >> (end + 1) & 1) == 1) {
                        end++;
                    }
                    cost += end + 1 < horizon && paid(end + 1) ? 0 : p.tariff().liftLaunchCents();
                }
            }
        }
        return cost;
    }

    private boolean paid(int t) {
        return p.months().get(t).ashorePaid();
    }

    private List<Sequence> sequences(Work w) {
        List<Sequence> list = new ArrayList<>();
        for (int months = 0; months < 1 << horizon; months++) {
            Sequence s = sequence(w, months);
            if (s != null) {
                list.add(s);
            }
        }
        return list;
    }

    @org.jspecify.annotations.Nullable
    private Sequence sequence(Work w, int months) {
        long cost = 0;
        int afloat = 0;
        int ashore = 0;
        int from = -1;
        int phase = w.nextPhase();
        for (int t = 0; t < horizon; t++) {
            if ((months >> t & 1) == 0) {
                continue;
            }
            if (!mayStep(w, from, t, phase)) {
                return null;
            }
            cost += stepCost(w, from, t, phase);
            afloat |= possible(w, phase, t, Place.AFLOAT) ? 1 << t : 0;
            ashore |= possible(w, phase, t, Place.ASHORE) ? 1 << t : 0;
            if (((afloat | ashore) >> t & 1) == 0) {
                return null;
            }
            from = t;
            phase = (phase + 1) % w.phases().size();
        }
        if (!spansMet(w, months) || !mayRest(w, from)) {
            return null;
        }
        return new Sequence(months, cost + restCost(w, from, phase), afloat, ashore);
    }

    private boolean spansMet(Work w, int months) {
        for (MonthSpan s : w.rules().mustFallIn()) {
            boolean met = s.first() >= horizon;
            for (int t = s.first(); t <= Math.min(s.last(), horizon - 1); t++) {
                met |= (months >> t & 1) == 1;
            }
            if (!met) {
                return false;
            }
        }
        return !w.rules().once() || Integer.bitCount(months) <= 1;
    }

    private boolean possible(Work w, int phase, int t, Place place) {
        BoatMonth m = p.months().get(t);
        return w.phases().get(phase).places().contains(place)
                && w.phases()
                        .get(phase)
                        .season()
                        .contains(p.firstMonth().plusMonths(t).getMonth())
                && (place == Place.AFLOAT ? m.afloatPossible() : m.ashorePossible());
    }

    private double used(Work w, int from, int to) {
        if (from < 0 && w.rules().dueAtFirstVisit()) {
            return 1;
        }
        double hours = from < 0 ? w.life().hoursUsed() : 0;
        for (int m = Math.max(from, 0); m < to; m++) {
            hours += w.life().use().hoursPerMonth().get(m);
        }
        double months = from < 0 ? w.life().monthsUsed() + to : to - from;
        double a = w.life().months() == 0 ? 0 : months / w.life().months();
        double b = w.life().hours() == 0 ? 0 : hours / w.life().hours();
        return Math.max(a, b);
    }

    private int monthsLate(Work w, int from, int to) {
        int late = 0;
        for (int m = Math.max(from + 1, 0); m <= to; m++) {
            late += used(w, from, m) > 1 + 1e-9 || from < 0 && w.rules().dueAtFirstVisit() ? 1 : 0;
        }
        return late;
    }

    private boolean mayStep(Work w, int from, int to, int phase) {
        if (from < 0) {
            for (LeftUntil l : p.demands().left()) {
                if (p.works().get(l.work()) == w && to < l.month()) {
                    return false;
                }
            }
        }
        if (!w.life().bounded()) {
            return true;
        }
        int mostLate = from < 0 ? w.rules().maxLateFirstMonths() : w.rules().maxLateMonths();
        boolean inTime = monthsLate(w, from, to) <= mostLate;
        if (from < 0 && monthsLate(w, -1, 0) > mostLate) {
            int t = 0;
            while (!possible(w, phase, t, Place.AFLOAT) && !possible(w, phase, t, Place.ASHORE)) {
                t++;
            }
            inTime = to == t;
        }
        return inTime && used(w, from, to) >= w.rules().earliestFraction() - 1e-9;
    }

    private boolean mayRest(Work w, int from) {
        return !w.life().bounded()
                || from >= 0 && w.rules().once()
                || monthsLate(w, from, horizon)
                        <= (from < 0
                                ? w.rules().maxLateFirstMonths()
                                : w.rules().maxLateMonths());
    }

    private long stepCost(Work w, int from, int to, int phase) {
        long c = w.phases().get(phase).costCents();
        if (!w.life().bounded()) {
            return c;
        }
        return c
                + Math.round(c * w.materialShare() * Math.max(0, 1 - used(w, from, to)) + 1e-6)
                + w.riskPerMonthCents() * monthsLate(w, from, to);
    }

    private long restCost(Work w, int from, int phase) {
        if (!w.life().bounded() || from >= 0 && w.rules().once()) {
            return 0;
        }
        return Math.round(w.phases().get(phase).costCents() * Math.min(1, used(w, from, horizon)) + 1e-6)
                + w.riskPerMonthCents() * monthsLate(w, from, horizon);
    }

    private void choose(List<Sequence> chosen) {
        if (chosen.size() < legal.size()) {
            for (Sequence s : legal.get(chosen.size())) {
                chosen.add(s);
                choose(chosen);
                chosen.remove(chosen.size() - 1);
            }
            return;
        }
        for (FollowOn f : p.followOns()) {
            for (int t = 0; t < horizon; t++) {
                int first = t + f.minLagMonths();
                int last =
                        Math.max(t + f.maxLagMonths(), firstPossible(p.works().get(f.follower()), first));
                if (last >= horizon) {
                    continue;
                }
                int window = (1 << last - first + 1) - 1 << first;
                if (asks(f, chosen.get(f.trigger()).months, t) && (chosen.get(f.follower()).months & window) == 0) {
                    return;
                }
            }
        }
        long cost = setUps(chosen);
        for (Sequence s : chosen) {
            cost += s.cost;
        }
        if (cost < best) {
            place(chosen, cost, 0, forced(Place.AFLOAT), forced(Place.ASHORE));
        }
    }

    /** Whether the trigger is done in the month, in a phase that asks for the follower: phases go round from the next one. */
    private boolean asks(FollowOn f, int months, int t) {
        Work trigger = p.works().get(f.trigger());
        int doneBefore = Integer.bitCount(months & (1 << t) - 1);
        int phase = (trigger.nextPhase() + doneBefore) % trigger.phases().size();
        return (months >> t & 1) == 1 && f.calledBy(phase);
    }

    private int firstPossible(Work w, int from) {
        int t = from;
        while (t < horizon && !mayHold(w, t, Place.AFLOAT) && !mayHold(w, t, Place.ASHORE)) {
            t++;
        }
        return t;
    }

    private boolean mayHold(Work w, int t, Place place) {
        return possible(w, w.nextPhase(), t, place) && !p.demands().forbidden().contains(new VisitSlot(t, place));
    }

    private int forced(Place place) {
        int mask = 0;
        for (VisitSlot s : p.demands().forced()) {
            mask |= s.place() == place ? 1 << s.month() : 0;
        }
        return mask;
    }

    private long setUps(List<Sequence> chosen) {
        long sum = 0;
        for (int g = 0; g < p.servicePoints().size(); g++) {
            int months = 0;
            for (int j = 0; j < chosen.size(); j++) {
                months |= p.works().get(j).servicePoint() == g ? chosen.get(j).months : 0;
            }
            sum += Integer.bitCount(months) * p.servicePoints().get(g).setUpCents();
        }
        return sum;
    }

    /** Tries every set of visits, afloat and ashore, month by month, in which every work of the month finds its place. */
    private void place(List<Sequence> chosen, long cost, int t, int afloat, int ashore) {
        if (t == horizon) {
            long whole = cost
                    + Integer.bitCount(afloat) * p.tariff().callOutAfloatCents()
                    + Integer.bitCount(ashore) * p.tariff().workVisitAshoreCents()
                    + haul[ashore]
                    + afloatExtra(chosen, ashore);
            if (whole < best && demandsMet(chosen, afloat, ashore)) {
                best = whole;
            }
            return;
        }
        for (int choice = 0; choice < 4; choice++) {
            int f = afloat | (choice & 1) << t;
            int a = ashore | choice >> 1 << t;
            boolean served = true;
            for (Sequence s : chosen) {
                served &= (s.months >> t & 1) == 0 || ((s.afloat & f | s.ashore & a) >> t & 1) == 1;
            }
            if (served) {
                place(chosen, cost, t + 1, f, a);
            }
        }
    }

    private long afloatExtra(List<Sequence> chosen, int ashore) {
        long sum = 0;
        for (int j = 0; j < chosen.size(); j++) {
            Work w = p.works().get(j);
            int phase = w.nextPhase();
            for (int t = 0; t < horizon; t++) {
                if ((chosen.get(j).months >> t & 1) == 1) {
                    boolean inTheWater = ((chosen.get(j).ashore & ashore) >> t & 1) == 0;
                    sum += inTheWater ? w.phases().get(phase).afloatExtraCents() : 0;
                    phase = (phase + 1) % w.phases().size();
                }
            }
        }
        return sum;
    }

    private boolean demandsMet(List<Sequence> chosen, int afloat, int ashore) {
        for (VisitSlot s : p.demands().forbidden()) {
            if (((s.place() == Place.AFLOAT ? afloat : ashore) >> s.month() & 1) == 1) {
                return false;
            }
        }
        for (int t = 0; t < horizon; t++) {
            boolean impossible = (afloat >> t & 1) == 1 && !p.months().get(t).afloatPossible()
                    || (ashore >> t & 1) == 1 && !p.months().get(t).ashorePossible();
            if (impossible) {
                return false;
            }
        }
        int n = Integer.bitCount(afloat) + Integer.bitCount(ashore);
        return n >= p.demands().minVisits() && n <= p.demands().maxVisits() && firstVisitsMet(chosen, afloat, ashore);
    }

    private boolean firstVisitsMet(List<Sequence> chosen, int afloat, int ashore) {
        for (int j = 0; j < chosen.size(); j++) {
            Work w = p.works().get(j);
            if (!w.rules().dueAtFirstVisit()) {
                continue;
            }
            int fitting = 0;
            for (int t = 0; t < horizon; t++) {
                boolean fits = (afloat >> t & 1) == 1 && possible(w, w.nextPhase(), t, Place.AFLOAT)
                        || (ashore >> t & 1) == 1 && possible(w, w.nextPhase(), t, Place.ASHORE);
                fitting |= fits && mayStep(w, -1, t, w.nextPhase()) ? 1 << t : 0;
            }
            if (fitting != 0
                    && Integer.numberOfTrailingZeros(fitting) < Integer.numberOfTrailingZeros(chosen.get(j).months)) {
                return false;
            }
        }
        return true;
    }
}
