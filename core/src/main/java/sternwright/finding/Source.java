package sternwright.finding;

/**
 * Where a figure comes from.
 *
 * @param title document, or "service practice" where there is none
 * @param place edition, section, table; empty if not needed
 * @param standing what the figure rests on
 */
public record Source(String title, String place, Standing standing) {
    /**
     * The source as one line for page, paper and list.
     *
     * @return title, place and standing
     */
    public String line() {
        return title + (place.isEmpty() ? "" : ", " + place) + " (" + standing.words() + ")";
    }
}
