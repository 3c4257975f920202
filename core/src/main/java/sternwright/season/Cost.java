package sternwright.season;

/**
 * What a plan costs, split by what it is paid for, in the yard's own points or money.
 *
 * @param frost machinery not laid up before its frost date: unsafe
 * @param promises dates moved that were given to owners
 * @param late work finished after the owner's date
 * @param early boats launched before the owner wants them
 * @param overtime extra hands
 * @param uneven weekly peaks above the usual crew
 */
public record Cost(long frost, long promises, long late, long early, long overtime, long uneven) {
    /** All of it. */
    public long total() {
        return frost + promises + late + early + overtime + uneven;
    }
}
