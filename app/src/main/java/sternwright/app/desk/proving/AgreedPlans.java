package sternwright.app.desk.proving;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.visits.AshoreSince;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.YardFiles;
import sternwright.boat.Boat;
import sternwright.visit.BoatPlan;
import sternwright.visit.HandPlan;
import sternwright.visit.planned.AgreedWork;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.VisitAt;

/** Plans as they are proposed and as they were agreed. Any number of threads may ask. */
public final class AgreedPlans {
    private final OpenYard yard;
    private final ProvedPlans plans;

    @Nullable
    private volatile Known known;

    /**
     * Opens it.
     *
     * @param yard the yard
     * @param plans its proposed plans
     */
    public AgreedPlans(OpenYard yard, ProvedPlans plans) {
        this.yard = yard;
        this.plans = plans;
    }

    private record Known(String state, Map<String, List<AgreedWork>> byBoat, Map<String, LocalDate> ashoreSince) {}

    /**
     * What is agreed, by boat.
     *
     * @return works in the order they were written down
     */
    public Map<String, List<AgreedWork>> all() {
        return known().byBoat();
    }

    private Known known() {
        String state = yard.state();
        Known now = known;
        if (now == null || !now.state().equals(state)) {
            now = new Known(
                    state,
                    SeasonFolder.agreed(yard.shelf("")).stream().collect(Collectors.groupingBy(AgreedWork::boatId)),
                    AshoreSince.of(yard.shelf("")));
            known = now;
        }
        return now;
    }

    /**
     * What is agreed for a boat from today on.
     *
     * @param boatId the boat
     * @return works, none if nothing is agreed
     */
    public List<AgreedWork> of(String boatId) {
        return Optional.ofNullable(all().get(boatId)).orElse(List.of()).stream()
                .filter(a -> !a.at().month().atEndOfMonth().isBefore(yard.today()))
                .toList();
    }

    /**
     * The next visit that is agreed, of every boat that has one.
     *
     * @return the visit by boat
     */
    public Map<String, VisitAt> next() {
        LocalDate today = yard.today();
        return all().values().stream()
                .flatMap(List::stream)
                .filter(a -> !a.at().month().atEndOfMonth().isBefore(today))
                .collect(Collectors.toMap(
                        AgreedWork::boatId, AgreedWork::at, BinaryOperator.minBy(Comparator.naturalOrder())));
    }

    /**
     * The proposed plan of a boat.
     *
     * @param boat the boat
     * @param months how far to plan
     * @param reader whose language and formats reasons are worded in
     * @return the run, which goes on by itself
     */
    public PlanRun proposed(Boat boat, int months, Locale reader) {
        YardFiles files = yard.files();
        LocalDate today = yard.today();
        return plans.of(files, known().ashoreSince(), boat, today, months, reader);
    }

    /**
     * The plan of a boat with its works where they were agreed.
     *
     * @param run the proposed plan
     * @param boatId the boat
     * @return empty if nothing is agreed, or there is no plan
     */
    public Optional<HandPlan> agreed(PlanRun run, String boatId) {
        return agreed(run, boatId, "");
    }

    /**
     * The same, as somebody looked at it before the proof may have ended.
     *
     * @param run the proposed plan
     * @param boatId the boat
     * @param looked mark of the plan that was looked at, empty for the newest
     * @return empty if nothing is agreed, there is no plan, or it is not what was looked at any more
     */
    public Optional<HandPlan> agreed(PlanRun run, String boatId, String looked) {
        List<AgreedWork> works = of(boatId);
        return works.isEmpty()
                ? Optional.empty()
                : run.shown().stream()
                        .map(p -> run.visits().asAgreed(p, works))
                        .filter(h -> looked.isEmpty() || PlanMark.of(h.plan()).equals(looked))
                        .findFirst();
    }

    /**
     * The proposed plan as somebody looked at it before the proof may have ended.
     *
     * @param run the proposed plan
     * @param looked mark of the plan that was looked at, empty for the newest
     * @return empty if there is no plan, or it is not what was looked at any more
     */
    public static Optional<BoatPlan> proposed(PlanRun run, String looked) {
        return run.shown().stream()
                .filter(p -> looked.isEmpty() || PlanMark.of(p).equals(looked))
                .findFirst();
    }

    /**
     * A visit that an address names.
     *
     * @param chosen its name
     * @param boat the boat
     * @param reader whose language and formats reasons are worded in
     * @return empty if there is no such visit any more
     */
    public Optional<PlannedVisit> visit(ChosenVisit chosen, Boat boat, Locale reader) {
        PlanRun run = proposed(boat, chosen.months(), reader);
        Optional<BoatPlan> plan = chosen.agreed()
                ? agreed(run, boat.id(), chosen.looked()).map(HandPlan::plan)
                : proposed(run, chosen.looked());
        return plan.flatMap(chosen::in);
    }
}
