package sternwright.app.web.visits;

import java.util.List;
import sternwright.app.web.page.Field;

/**
 * What the page of a boat's plan shows.
 *
 * @param boatId the boat
 * @param boat her name
 * @param lead whose she is and where she lies
 * @param agreed what is agreed, in a sentence; may be empty
 * @param looked mark of the plan, empty where there is none
 * @param months how far it is planned
 * @param running whether something is still being worked out
 * @param proof how good the plan is known to be, in a sentence
 * @param clash demands that cannot hold together; empty where there is a plan
 * @param visits the visits
 * @param net what the owner pays in all
 * @param split what the plan weighs
 * @param total what it comes to
 * @param alternatives one visit fewer, one more
 * @param left what leaving a work costs
 * @param notes what was assumed, and what was refused
 */
public record PlanView(
        String boatId,
        String boat,
        String lead,
        String agreed,
        String looked,
        Field months,
        boolean running,
        String proof,
        List<String> clash,
        List<Visit> visits,
        String net,
        List<Price> split,
        String total,
        List<Alternative> alternatives,
        Left left,
        List<String> notes) {
    /** Copies the lists. */
    public PlanView {
        clash = List.copyOf(clash);
        visits = List.copyOf(visits);
        split = List.copyOf(split);
        alternatives = List.copyOf(alternatives);
        notes = List.copyOf(notes);
    }

    /**
     * One visit.
     *
     * @param number which, from 1
     * @param from the first day, as it stands in an address
     * @param place the place, as it stands in an address
     * @param dates when
     * @param where where, and whether the boat is lifted for it
     * @param time all minutes
     * @param works what is done
     * @param prices what belongs to the visit as a whole
     * @param net price without tax
     * @param saved what bundling saves, may be empty
     * @param supplies what it takes from the stores
     */
    public record Visit(
            int number,
            String from,
            String place,
            String dates,
            String where,
            String time,
            List<Work> works,
            List<Price> prices,
            String net,
            String saved,
            List<String> supplies) {
        /** Copies the lists. */
        public Visit {
            works = List.copyOf(works);
            prices = List.copyOf(prices);
            supplies = List.copyOf(supplies);
        }
    }

    /**
     * One work.
     *
     * @param work what is done
     * @param part on what
     * @param safety whether it is a safety item
     * @param due the day it falls due
     * @param reason why, in a sentence
     * @param figure where the interval comes from
     * @param left what happens if it is left, may be empty
     * @param time its minutes
     * @param price labour and supplies
     */
    public record Work(
            String work,
            String part,
            boolean safety,
            String due,
            String reason,
            String figure,
            String left,
            String time,
            String price) {}

    /**
     * A line of money.
     *
     * @param what what for
     * @param quantity how much of it, may be empty
     * @param amount how much money
     */
    public record Price(String what, String quantity, String amount) {}

    /**
     * A plan with another number of visits.
     *
     * @param name fewer or more
     * @param costs what it weighs more or less, or why it cannot be
     * @param visits its visits, may be empty
     */
    public record Alternative(String name, String costs, List<String> visits) {
        /** Copies the list. */
        public Alternative {
            visits = List.copyOf(visits);
        }
    }

    /**
     * What leaving a work costs.
     *
     * @param work the field to choose a work
     * @param until the field for the day
     * @param answer the answer, may be empty
     */
    public record Left(Field work, Field until, String answer) {}
}
