package sternwright.visit.solver;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import sternwright.visit.problem.FollowOn;
import sternwright.visit.problem.LeftUntil;
import sternwright.visit.problem.MonthSpan;
import sternwright.visit.problem.VisitDemands;
import sternwright.visit.problem.VisitProblem;
import sternwright.visit.problem.VisitSlot;
import sternwright.visit.problem.Work;
import sternwright.visit.problem.WorkRules;

/**
 * One demand that could be given up, and its words.
 *
 * @param kind what sort of demand
 * @param work index of the work, or -1
 * @param item the span, follow-on, slot, left work or number asked
 * @param words the demand in words
 */
record Demand(Kind kind, int work, Object item, String words) {
    enum Kind {
        LIMIT,
        FIRST_VISIT,
        SPAN,
        FOLLOW_ON,
        FORCED,
        FORBIDDEN,
        LEFT,
        FEWEST,
        MOST
    }

    private static final int NO_LIMIT = 1_000_000;

    /** Every demand of a problem; those of the works last, since they are least likely to be given up. */
    static List<Demand> all(VisitProblem p) {
        List<Demand> list = new ArrayList<>();
        for (int j = 0; j < p.works().size(); j++) {
            addRules(p, j, list);
        }
        for (FollowOn f : p.followOns()) {
            list.add(new Demand(
                    Kind.FOLLOW_ON,
                    -1,
                    f,
                    p.works().get(f.follower()).name() + " must follow "
                            + p.works().get(f.trigger()).name() + lag(f)));
        }
        VisitDemands d = p.demands();
        for (LeftUntil l : d.left()) {
            list.add(new Demand(
                    Kind.LEFT,
                    l.work(),
                    l,
                    p.works().get(l.work()).name() + " is left until " + p.monthName(l.month())));
        }
        d.forced().forEach(s -> list.add(new Demand(Kind.FORCED, -1, s, "a visit " + words(p, s) + " is promised")));
        d.forbidden().forEach(s -> list.add(new Demand(Kind.FORBIDDEN, -1, s, "no visit " + words(p, s))));
        if (d.minVisits() > 0) {
            list.add(new Demand(Kind.FEWEST, -1, d.minVisits(), "at least " + d.minVisits() + " visits"));
        }
        if (d.maxVisits() < 2 * p.horizon()) {
            list.add(new Demand(
                    Kind.MOST,
                    -1,
                    d.maxVisits(),
                    "at most " + d.maxVisits() + (d.maxVisits() == 1 ? " visit" : " visits")));
        }
        return list;
    }

    private static String lag(FollowOn f) {
        return f.maxLagMonths() == 0 ? " in the same month" : " within " + months(f.maxLagMonths());
    }

    private static String months(int count) {
        return count == 1 ? "a month" : count + " months";
    }

    private static String words(VisitProblem p, VisitSlot s) {
        return (s.place() == sternwright.visit.problem.Place.AFLOAT ? "afloat" : "ashore") + " in "
                + p.monthName(s.month());
    }

    private static void addRules(VisitProblem p, int j, List<Demand> list) {
        Work w = p.works().get(j);
        if (w.life().bounded()) {
            list.add(new Demand(Kind.LIMIT, j, w.rules().maxLateMonths(), limitWords(p, w)));
        }
        if (w.rules().dueAtFirstVisit()) {
            list.add(new Demand(
                    Kind.FIRST_VISIT,
                    j,
                    j,
                    w.name() + " has no known history and is done at the first visit that fits"));
        }
        for (MonthSpan s : w.rules().mustFallIn()) {
            if (s.first() < p.horizon()) {
                String from = p.monthName(s.first());
                String to = p.monthName(Math.min(s.last(), p.horizon() - 1));
                list.add(new Demand(
                        Kind.SPAN,
                        j,
                        s,
                        w.name() + " must be done " + (from.equals(to) ? "in " + from : "from " + from + " to " + to)));
            }
        }
    }

    private static String limitWords(VisitProblem p, Work w) {
        int due = new LifeSteps(w, p.horizon()).dueMonth(LifeSteps.START);
        int late = Math.min(w.rules().maxLateMonths(), w.rules().maxLateFirstMonths());
        String first = due < 0 ? "due already" : due >= p.horizon() ? "not due yet" : "due in " + p.monthName(due);
        String limit = late == 0
                ? "a safety item, never left past its life"
                : "to be done at most " + months(late) + " late each time";
        Set<String> places = new TreeSet<>();
        w.phases().forEach(k -> k.places().forEach(x -> places.add(x.name().toLowerCase(java.util.Locale.ROOT))));
        return w.name() + " (" + String.join(" or ", places) + ", " + first + ") is " + limit;
    }

    /** The problem with only the demands kept. */
    static VisitProblem only(VisitProblem p, List<Demand> kept) {
        Set<Demand> set = new HashSet<>(kept);
        List<Work> works = new ArrayList<>();
        for (int j = 0; j < p.works().size(); j++) {
            works.add(relax(p.works().get(j), j, kept));
        }
        List<FollowOn> follow =
                p.followOns().stream().filter(f -> any(kept, Kind.FOLLOW_ON, f)).toList();
        VisitDemands d = p.demands();
        VisitDemands left = new VisitDemands(
                filter(d.forced(), set, Kind.FORCED),
                filter(d.forbidden(), set, Kind.FORBIDDEN),
                any(kept, Kind.FEWEST, d.minVisits()) ? d.minVisits() : 0,
                any(kept, Kind.MOST, d.maxVisits()) ? d.maxVisits() : Integer.MAX_VALUE,
                d.left().stream().filter(l -> any(kept, Kind.LEFT, l)).toList());
        return p.withWorks(works, follow).with(left);
    }

    private static boolean any(List<Demand> kept, Kind kind, Object item) {
        return kept.stream().anyMatch(d -> d.kind == kind && d.item.equals(item));
    }

    private static Set<VisitSlot> filter(Set<VisitSlot> slots, Set<Demand> kept, Kind kind) {
        Set<VisitSlot> result = new HashSet<>();
        for (Demand d : kept) {
            if (d.kind == kind && d.item instanceof VisitSlot s && slots.contains(s)) {
                result.add(s);
            }
        }
        return result;
    }

    private static Work relax(Work w, int j, List<Demand> kept) {
        boolean limit = false;
        boolean first = false;
        List<MonthSpan> spans = new ArrayList<>();
        for (Demand d : kept) {
            limit |= d.work == j && d.kind == Kind.LIMIT;
            first |= d.work == j && d.kind == Kind.FIRST_VISIT;
            if (d.work == j && d.kind == Kind.SPAN && d.item instanceof MonthSpan s) {
                spans.add(s);
            }
        }
        WorkRules r = w.rules();
        return w.with(new WorkRules(
                limit ? r.maxLateMonths() : NO_LIMIT,
                limit ? r.maxLateFirstMonths() : NO_LIMIT,
                r.earliestFraction(),
                r.once(),
                first,
                spans));
    }
}
