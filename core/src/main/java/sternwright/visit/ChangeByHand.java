package sternwright.visit;

import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import sternwright.boat.PartRef;
import sternwright.visit.planned.AgreedWork;
import sternwright.visit.planned.HandChange;
import sternwright.visit.planned.VisitAt;
import sternwright.visit.problem.FollowOn;
import sternwright.visit.problem.MonthVisit;
import sternwright.visit.problem.MonthWork;
import sternwright.visit.problem.Place;
import sternwright.visit.problem.VisitPlan;
import sternwright.visit.problem.VisitProblem;

/** Applies what a person changes to a lean plan. */
final class ChangeByHand {
    private final BoatProblem boat;
    private final VisitProblem problem;
    private final Map<VisitAt, Set<Integer>> visits = new TreeMap<>();
    private final List<String> said = new ArrayList<>();

    ChangeByHand(BoatProblem boat, VisitPlan from) {
        this.boat = boat;
        problem = boat.problem();
        for (MonthVisit v : from.visits()) {
            Set<Integer> works = new TreeSet<>();
            v.works().forEach(w -> works.add(w.work()));
            visits.put(at(v), works);
        }
    }

    private VisitAt at(MonthVisit v) {
        return new VisitAt(
                problem.firstMonth().plusMonths(v.month()),
                sternwright.service.Place.valueOf(v.place().name()));
    }

    /** The visits after the changes. */
    List<MonthVisit> after(List<HandChange> changes) {
        changes.forEach(this::apply);
        return written();
    }

    /**
     * The visits with every work where it is agreed; works of which nothing is agreed stay where they are, as does what lies after
     * the last month agreed. Visits without works are not held.
     */
    List<MonthVisit> asAgreed(List<AgreedWork> agreed) {
        YearMonth end = problem.firstMonth().plusMonths(problem.horizon() - 1L);
        List<AgreedWork> inside = agreed.stream()
                .filter(a -> !a.at().month().isBefore(problem.firstMonth())
                        && !a.at().month().isAfter(end))
                .toList();
        YearMonth last = inside.stream()
                .map(a -> a.at().month())
                .max(YearMonth::compareTo)
                .orElse(problem.firstMonth());
        for (int j = 0; j < boat.works().size(); j++) {
            int work = j;
            List<VisitAt> at = inside.stream()
                    .filter(a -> is(work, a.part(), a.ruleId()))
                    .map(AgreedWork::at)
                    .toList();
            if (!at.isEmpty()) {
                visits.forEach((visit, works) -> {
                    if (!visit.month().isAfter(last)) {
                        works.remove(work);
                    }
                });
                at.forEach(a -> visits.computeIfAbsent(a, v -> new TreeSet<>()).add(work));
            }
        }
        visits.values().removeIf(Set::isEmpty);
        return written();
    }

    private boolean is(int work, PartRef part, String ruleId) {
        BoatWork on = boat.works().get(work);
        return on.ref().equals(part)
                && on.phases().stream().anyMatch(r -> r.rule().id().equals(ruleId));
    }

    private List<MonthVisit> written() {
        List<MonthVisit> list = new ArrayList<>();
        visits.forEach((at, works) -> list.add(new MonthVisit(
                month(at.month()),
                Place.valueOf(at.place().name()),
                works.stream().map(w -> new MonthWork(w, 0)).toList())));
        return list;
    }

    /** What was done besides what was asked. */
    List<String> said() {
        return said;
    }

    private int month(YearMonth month) {
        long index = problem.firstMonth().until(month, java.time.temporal.ChronoUnit.MONTHS);
        if (index < 0 || index >= problem.horizon()) {
            throw new IllegalArgumentException(words(month) + " lies outside the plan, which runs from "
                    + words(problem.firstMonth()) + " to "
                    + words(problem.firstMonth().plusMonths(problem.horizon() - 1L)));
        }
        return (int) index;
    }

    private void apply(HandChange change) {
        if (change instanceof HandChange.MoveWork c) {
            int work = work(c.part(), c.ruleId(), c.from());
            month(c.to().month());
            held(c.from()).remove(work);
            visits.computeIfAbsent(c.to(), a -> new TreeSet<>()).add(work);
            follow(work, c.from(), c.to());
        } else if (change instanceof HandChange.LeaveWork c) {
            held(c.from()).remove(work(c.part(), c.ruleId(), c.from()));
        } else if (change instanceof HandChange.MoveVisit c) {
            month(c.to().month());
            Set<Integer> works = held(c.from());
            visits.remove(c.from());
            visits.computeIfAbsent(c.to(), a -> new TreeSet<>()).addAll(works);
        } else if (change instanceof HandChange.DropVisit c) {
            Set<Integer> works = held(c.at());
            visits.remove(c.at());
            works.forEach(w -> toNearest(w, c.at()));
        } else if (change instanceof HandChange.AddVisit c) {
            month(c.at().month());
            visits.computeIfAbsent(c.at(), a -> new TreeSet<>());
        }
    }

    private Set<Integer> held(VisitAt at) {
        Set<Integer> works = visits.get(at);
        if (works == null) {
            throw new IllegalArgumentException("there is no visit " + words(at) + "; there are: "
                    + String.join(
                            ", ",
                            visits.keySet().stream().map(ChangeByHand::words).toList()));
        }
        return works;
    }

    private int work(PartRef part, String ruleId, VisitAt from) {
        for (int w : held(from)) {
            if (is(w, part, ruleId)) {
                return w;
            }
        }
        if (boat.everyVisit().stream()
                .anyMatch(w ->
                        w.ref().equals(part) && w.phases().get(0).rule().id().equals(ruleId))) {
            throw new IllegalArgumentException(ruleId + " on " + part + " is done at every visit: it cannot be moved");
        }
        throw new IllegalArgumentException("the visit " + words(from) + " has no work " + ruleId + " on " + part);
    }

    /** Works that must follow go with the one they follow, if they can be done there. */
    private void follow(int work, VisitAt from, VisitAt to) {
        for (FollowOn f : problem.followOns()) {
            if (f.trigger() == work && held(from).contains(f.follower()) && fits(f.follower(), to)) {
                held(from).remove(f.follower());
                held(to).add(f.follower());
                said.add(boat.works().get(f.follower()).name() + " follows it and goes with it.");
                follow(f.follower(), from, to);
            }
        }
    }

    private void toNearest(int work, VisitAt dropped) {
        String name = boat.works().get(work).name();
        visits.keySet().stream()
                .filter(a -> fits(work, a) && !held(a).contains(work))
                .min(Comparator.comparingLong((VisitAt a) ->
                                Math.abs(dropped.month().until(a.month(), java.time.temporal.ChronoUnit.MONTHS)))
                        .thenComparing(a -> a))
                .ifPresentOrElse(
                        a -> {
                            held(a).add(work);
                            said.add(name + " goes to the visit " + words(a) + ".");
                        },
                        () -> said.add(name + " has no other visit that can take it and is left out."));
    }

    private boolean fits(int work, VisitAt at) {
        var phase = problem.works().get(work).phases().get(0);
        return phase.places().contains(Place.valueOf(at.place().name()))
                && phase.season().contains(at.month().getMonth());
    }

    static String words(VisitAt at) {
        return at.place().words() + " in " + words(at.month());
    }

    private static String words(YearMonth month) {
        return month.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + month.getYear();
    }
}
