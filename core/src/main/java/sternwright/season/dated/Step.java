package sternwright.season.dated;

/** What an operation is in the life of a visit. */
public enum Step {
    /** The boat stands ashore when the season begins. */
    STANDS("stands ashore"),
    /** Out of the water. */
    LIFT("lift"),
    /** Hull washed and looked at. */
    WASH("wash and inspect"),
    /** Works of the lay-up. */
    LAY_UP("lay-up"),
    /** Works ashore that may be done at any time of the winter. */
    WINTER("winter work"),
    /** Works of the recommission. */
    RECOMMISSION("recommission"),
    /** Other works. */
    WORK("work"),
    /** Into the water. */
    LAUNCH("launch"),
    /** Work afloat that wants the boat settled. */
    SETTLED("settled afloat"),
    /** Work afloat after the launch, sea trial among it. */
    TRIAL("sea trial");

    private final String words;

    Step(String words) {
        this.words = words;
    }

    /** The step in plain words. */
    public String words() {
        return words;
    }
}
