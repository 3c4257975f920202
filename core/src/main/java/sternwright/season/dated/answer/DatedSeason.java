package sternwright.season.dated.answer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import sternwright.season.Bound;
import sternwright.season.SeasonPlan;
import sternwright.season.Stay;
import sternwright.season.dated.Published;
import sternwright.season.dated.WorkingTime;
import sternwright.season.dated.make.SeasonOfYard;

/**
 * A season planned, in the yard's words.
 *
 * @param from first day
 * @param to last day
 * @param weeks first day of each week
 * @param visits in order of their first day
 * @param cost what it costs, in the yard's currency
 * @param bound what no plan can cost less than, in the yard's currency
 * @param gap part of the cost that is not proved necessary, 0 to 1
 * @param how how plan and bound were found
 * @param loads how full everything is
 * @param binds what is full for how long
 * @param moved promised dates that are others now
 */
public record DatedSeason(
        LocalDate from,
        LocalDate to,
        List<LocalDate> weeks,
        List<DatedVisit> visits,
        CostSplit cost,
        double bound,
        double gap,
        String how,
        List<Load> loads,
        List<Binding> binds,
        List<MovedDate> moved) {
    /** Copies the lists. */
    public DatedSeason {
        weeks = List.copyOf(weeks);
        visits = List.copyOf(visits);
        loads = List.copyOf(loads);
        binds = List.copyOf(binds);
        moved = List.copyOf(moved);
    }

    /**
     * Puts a plan back into the yard's words.
     *
     * @param season the season that was planned
     * @param plan a plan of it that the judge has passed
     * @param bound its bound
     * @return the dated season
     */
    public static DatedSeason of(SeasonOfYard season, SeasonPlan plan, Bound bound) {
        Rota rota = new Rota(season.problem(), plan);
        WhyThen why = new WhyThen(season, plan, rota);
        WorkingTime time = season.time();
        List<Load> loads = new Loads(season.problem(), plan, rota).all();
        List<LocalDate> weeks = new ArrayList<>();
        for (int w = 0; w < time.axis().weeks(); w++) {
            weeks.add(time.weekFrom(w));
        }
        return new DatedSeason(
                time.first(),
                time.last(),
                weeks,
                visits(season, plan, why),
                CostSplit.of(plan.cost(), season.pointValue()),
                bound.value() * season.pointValue(),
                bound.gap(plan.cost().total()),
                plan.how() + "; bound: " + bound.how(),
                loads,
                Binding.of(loads, time),
                why.moved());
    }

    private static List<DatedVisit> visits(SeasonOfYard season, SeasonPlan plan, WhyThen why) {
        Map<Integer, List<DatedOperation>> byVisit = new LinkedHashMap<>();
        Map<Integer, Stay> stays = new LinkedHashMap<>();
        for (int i = 0; i < season.meanings().size(); i++) {
            byVisit.computeIfAbsent(visit(season, i), v -> new ArrayList<>()).add(why.dated(i));
        }
        season.problem().stays().forEach(s -> stays.put(visit(season, s.lift()), s));
        List<DatedVisit> visits = new ArrayList<>();
        byVisit.forEach((visit, operations) -> {
            var first = operations.get(0).meaning();
            Stay stay = stays.get(visit);
            visits.add(new DatedVisit(
                    first.boatId(),
                    first.boatName(),
                    first.visit(),
                    stay == null
                            ? ""
                            : season.problem()
                                    .yard()
                                    .placeClasses()
                                    .get(stay.placeClass())
                                    .name(),
                    stay == null ? null : season.time().begin(plan.startQ().get(stay.lift())),
                    stay == null ? null : season.time().end(plan.endQ(season.problem(), stay.launch())),
                    operations));
        });
        visits.sort(Comparator.comparing(DatedVisit::from).thenComparing(DatedVisit::boatName));
        return visits;
    }

    private static int visit(SeasonOfYard season, int operation) {
        var problem = season.problem();
        return problem.halves().get(problem.operations().get(operation).half()).visit();
    }

    /** Every operation in order of time. */
    public List<DatedOperation> operations() {
        return operations(o -> true);
    }

    /**
     * Some operations in order of time; ordering a few of thousands costs little.
     *
     * @param wanted says which
     */
    public List<DatedOperation> operations(Predicate<DatedOperation> wanted) {
        return visits.stream()
                .flatMap(v -> v.operations().stream())
                .filter(wanted)
                .sorted(Comparator.comparing(DatedOperation::from)
                        .thenComparing(o -> o.meaning().boatName())
                        .thenComparing(o -> o.meaning().step()))
                .toList();
    }

    /**
     * The plan as it is published.
     *
     * @param plannedOn the day on which its visits were planned
     */
    public List<Published> published(LocalDate plannedOn) {
        return operations().stream()
                .map(o -> new Published(
                        o.meaning().name(),
                        o.from().toLocalDate(),
                        o.quarter(),
                        o.until().toLocalDate(),
                        String.join(", ", o.people()),
                        o.hoist(),
                        o.reason(),
                        plannedOn))
                .toList();
    }
}
