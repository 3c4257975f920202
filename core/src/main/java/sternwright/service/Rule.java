package sternwright.service;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.finding.Source;

/**
 * One rule of a service programme: the work, on what, when, where, with what.
 *
 * @param id short name, unique in the programme
 * @param work what is done, as an order: "change engine oil and filter"
 * @param why what it is good for, in words an owner understands
 * @param ifDeclined what happens if it is left, in words an owner understands
 * @param appliesTo which parts
 * @param interval when due
 * @param half half of the year
 * @param place where
 * @param diver may be done afloat by a diver although it belongs ashore
 * @param minutes working minutes with fair access
 * @param servicePoint works at one point share the set-up; null to take the part kind's own
 * @param skills what the engineer must be able to do
 * @param supplies from the stores
 * @param readings measurements asked
 * @param cautions ids of cautions
 * @param steps in working order
 * @param safety a safety item: never past its life without the owner's signed refusal
 * @param renews the part is new afterwards: its life starts again
 * @param modifiers circumstances that change the interval
 * @param triggers findings that make it due at once
 * @param tags words by which other rules refer to it, such as {@code leg-work}
 * @param materialShare share of the cost that is thrown away if done before its time, 0 to 1
 * @param riskPerMonthLate what a month past due costs on average in trouble, as a share of the work's price
 * @param source where the figures come from
 */
public record Rule(
        String id,
        String work,
        String why,
        String ifDeclined,
        AppliesTo appliesTo,
        Interval interval,
        Half half,
        Place place,
        boolean diver,
        double minutes,
        @Nullable String servicePoint,
        Set<String> skills,
        List<SupplyNeed> supplies,
        List<ReadingAsked> readings,
        List<String> cautions,
        List<String> steps,
        boolean safety,
        boolean renews,
        List<Modifier> modifiers,
        List<Trigger> triggers,
        Set<String> tags,
        double materialShare,
        double riskPerMonthLate,
        Source source) {
    /** Copies the collections. */
    public Rule {
        skills = Set.copyOf(skills);
        supplies = List.copyOf(supplies);
        readings = List.copyOf(readings);
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
        modifiers = List.copyOf(modifiers);
        triggers = List.copyOf(triggers);
        tags = Set.copyOf(tags);
    }
}
