package sternwright.service;

/** A clause of an interval that an overriding can drop. */
public enum IntervalClause {
    /** Months since it was last done. */
    MONTHS("months"),
    /** Engine hours since it was last done. */
    HOURS("hours"),
    /** Life of the part. */
    LIFE_MONTHS("life-months");

    private final String field;

    IntervalClause(String field) {
        this.field = field;
    }

    /**
     * The clause as a programme's file writes it.
     *
     * @return the name of the field
     */
    public String field() {
        return field;
    }
}
