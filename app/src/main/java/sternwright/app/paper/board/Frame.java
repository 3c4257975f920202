package sternwright.app.paper.board;

import java.time.LocalDate;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.DatedSeason;

/**
 * How large a board is drawn, which days it shows, and what can be taken hold of on it. Lengths in px of 1/96 inch.
 *
 * @param from first day shown
 * @param to last day shown
 * @param labels width of the column of names
 * @param chart width of the days
 * @param words width of the words at the end of a row
 * @param axis height of the months and weeks above
 * @param boatRow height of a boat
 * @param loadRow height of a resource
 * @param boats boats of one panel
 * @param loads resources of one panel
 * @param hold what can be taken hold of
 */
public record Frame(
        LocalDate from,
        LocalDate to,
        double labels,
        double chart,
        double words,
        double axis,
        double boatRow,
        double loadRow,
        int boats,
        int loads,
        Hold hold) {
    /** What a person can take hold of. */
    public interface Hold {
        /** Nothing: a drawing to look at. */
        Hold NOTHING = new Hold() {
            @Override
            public String boat(String boatId) {
                return "";
            }

            @Override
            public boolean operation(DatedOperation operation) {
                return false;
            }
        };

        /**
         * Where a boat's name leads.
         *
         * @param boatId the boat
         * @return an address, empty for nowhere
         */
        String boat(String boatId);

        /**
         * Whether an operation can be set on another day.
         *
         * @param operation the operation
         * @return true if it can
         */
        boolean operation(DatedOperation operation);
    }

    /** A sheet across: 40 boats or 30 resources on each. */
    static Frame sheet(DatedSeason season) {
        return new Frame(season.from(), season.to(), 132, 850, 198, 24, 15, 20, 40, 30, Hold.NOTHING);
    }

    /**
     * A screen: rows as high as a finger or a mouse needs (24 px, WCAG 2.2, 2.5.8).
     *
     * @param from first day shown
     * @param to last day shown
     * @param boats boats of one panel
     * @param hold what can be taken hold of
     * @return the frame
     */
    public static Frame screen(LocalDate from, LocalDate to, int boats, Hold hold) {
        return new Frame(from, to, 168, 570, 208, 36, 24, 30, boats, 60, hold);
    }

    boolean wide() {
        return axis > 30;
    }
}
