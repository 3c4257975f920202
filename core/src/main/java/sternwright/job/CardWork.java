package sternwright.job;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Part;
import sternwright.service.Place;
import sternwright.visit.planned.PlannedWork;

/**
 * One work on a card.
 *
 * @param number running number on the card, from 1; also its mark in the drawing
 * @param planned the work as planned: part, rule in force, reason, minutes, supplies
 * @param register the part as the register knows it, null if the register no longer has it
 * @param cautions keys of the cautions that apply, in the order of the card
 * @param readings readings asked
 * @param diver done in the water by a diver although it belongs ashore
 */
public record CardWork(
        int number,
        PlannedWork planned,
        @Nullable Part register,
        List<String> cautions,
        List<CardReading> readings,
        boolean diver) {
    /** Copies the lists. */
    public CardWork {
        cautions = List.copyOf(cautions);
        readings = List.copyOf(readings);
    }

    /**
     * What is done, as an order.
     *
     * @return the rule's words
     */
    public String order() {
        return planned.inForce().rule().work();
    }

    /**
     * Steps in working order.
     *
     * @return the rule's steps; empty if the programme has none
     */
    public List<String> steps() {
        return planned.inForce().rule().steps();
    }

    /**
     * Whether it is a safety item.
     *
     * @return true if it may not be left past its life without the owner's signed refusal
     */
    public boolean safety() {
        return planned.inForce().rule().safety();
    }

    /**
     * Whether it can only be done out of the water.
     *
     * @return true if the rule says ashore
     */
    public boolean belongsAshore() {
        return planned.inForce().rule().place() == Place.ASHORE;
    }

    /**
     * What access costs here.
     *
     * @return the access factor if it is worse than good
     */
    public Optional<Double> poorAccess() {
        return Optional.ofNullable(register).map(Part::access).filter(a -> a > 1);
    }
}
