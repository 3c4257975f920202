package sternwright.season.dated.make;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sternwright.season.dated.Step;
import sternwright.service.Occasion;
import sternwright.service.Place;
import sternwright.service.Rule;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;

/**
 * Works of a visit that one person does in one go.
 *
 * @param step what they are in the life of the visit
 * @param skills what the person must be able to do
 * @param works the works in their order
 * @param minutes working minutes, set-ups counted in
 */
record WorkGroup(Step step, Set<String> skills, List<PlannedWork> works, double minutes) {
    /** Tag of a rule whose work wants the boat afloat and settled. */
    static final String SETTLED = "settled-afloat";

    /** Tag of a rule whose work has time until the recommission on a boat that stands ashore for the winter. */
    static final String WINTER_WORK = "winter-work";

    /** Longer groups are divided between works, so that others can take a part or it can be done on another day: two days. */
    private static final double LONGEST_MINUTES = 960;

    WorkGroup {
        skills = Set.copyOf(skills);
        works = List.copyOf(works);
    }

    /** Whether the boat is not safe against frost before this is done. */
    boolean frost() {
        return works.stream()
                .anyMatch(w -> w.inForce().rule().interval().occasion() == Occasion.EVERY_LAY_UP_BEFORE_FROST);
    }

    /** Whether a work belongs to a rule. */
    boolean has(String ruleId) {
        return works.stream().anyMatch(w -> w.inForce().rule().id().equals(ruleId));
    }

    /** Name of the operation, unique in a visit. */
    String operation() {
        return step.words() + ", " + SkillKinds.words(skills);
    }

    /**
     * The works of a visit by step and skill, what protects from frost first.
     *
     * @param visit the visit
     * @param usual the step of works that are nothing special; {@link Step#WINTER} for a winter ashore, of which what cannot wait is lay-up
     */
    static List<WorkGroup> of(PlannedVisit visit, Step usual) {
        double working =
                visit.works().stream().mapToDouble(PlannedWork::minutes).sum();
        double factor = working > 0 ? Math.max(1, visit.minutes() / working) : 1;
        Map<String, WorkGroup> open = new LinkedHashMap<>();
        List<WorkGroup> result = new ArrayList<>();
        for (PlannedWork work : visit.works()) {
            Rule rule = work.inForce().rule();
            Step step = step(rule, usual);
            String key = step + SkillKinds.words(rule.skills());
            double minutes = factor * work.minutes();
            WorkGroup before = open.get(key);
            if (before != null && before.minutes + minutes > LONGEST_MINUTES) {
                result.add(before);
                before = null;
            }
            open.put(
                    key,
                    before == null
                            ? new WorkGroup(step, rule.skills(), List.of(work), minutes)
                            : before.with(work, minutes));
        }
        result.addAll(open.values());
        result.sort(Comparator.comparing(g -> !g.frost()));
        return result;
    }

    private WorkGroup with(PlannedWork work, double more) {
        List<PlannedWork> all = new ArrayList<>(works);
        all.add(work);
        return new WorkGroup(step, skills, all, minutes + more);
    }

    private static Step step(Rule rule, Step usual) {
        if (rule.place() == Place.AFLOAT && rule.tags().contains(SETTLED)) {
            return Step.SETTLED;
        }
        if (usual == Step.RECOMMISSION && rule.interval().occasion() == Occasion.EVERY_LAY_UP_BEFORE_FROST) {
            return Step.LAY_UP;
        }
        if (usual == Step.WINTER) {
            return rule.tags().contains(WINTER_WORK) ? Step.WINTER : Step.LAY_UP;
        }
        boolean trial = rule.place() == Place.AFLOAT && rule.interval().occasion() == Occasion.EVERY_RECOMMISSION;
        return trial ? Step.TRIAL : usual;
    }
}
