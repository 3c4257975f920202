package sternwright.job;

import java.time.LocalDate;
import java.util.List;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.service.Place;
import sternwright.visit.planned.SupplyLine;

/**
 * A job card: what to take, what to mind, what to do in which order, what to measure and what to write down.
 *
 * @param number boat id and first day of the visit
 * @param yardName whose card it is
 * @param invented true for demo data, said on the paper
 * @param issuedOn the day it was written
 * @param boat the boat
 * @param berth where it lies
 * @param from first day of the visit
 * @param to last day of the visit
 * @param place afloat or ashore
 * @param lifts the boat is lifted for it
 * @param engines the installations worked on, with their last meter readings
 * @param cautions cautions of the visit as a whole or of more than one service point, in full
 * @param openings hull openings below water, to be noted on arrival and on leaving
 * @param points the works in working order, by service point
 * @param supplies pick list
 * @param setUpMinutes minutes of the visit that are not working minutes: set-up and what belongs to the visit
 * @param minutes all minutes
 * @param toSettle what is unknown or missing and has to be settled before or on board, in sentences
 */
public record JobCard(
        String number,
        String yardName,
        boolean invented,
        LocalDate issuedOn,
        Boat boat,
        Berth berth,
        LocalDate from,
        LocalDate to,
        Place place,
        boolean lifts,
        List<CardEngine> engines,
        List<CardCaution> cautions,
        List<HullOpening> openings,
        List<CardPoint> points,
        List<SupplyLine> supplies,
        double setUpMinutes,
        double minutes,
        List<String> toSettle) {
    /** Copies the lists. */
    public JobCard {
        engines = List.copyOf(engines);
        cautions = List.copyOf(cautions);
        openings = List.copyOf(openings);
        points = List.copyOf(points);
        supplies = List.copyOf(supplies);
        toSettle = List.copyOf(toSettle);
    }

    /**
     * All works in working order.
     *
     * @return the works of all points
     */
    public List<CardWork> works() {
        return points.stream().flatMap(p -> p.works().stream()).toList();
    }

    /**
     * Whether a diver is wanted.
     *
     * @return true if one of the works is done in the water although it belongs ashore
     */
    public boolean diver() {
        return works().stream().anyMatch(CardWork::diver);
    }
}
