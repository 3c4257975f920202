package sternwright.service.check;

/**
 * A field in a programme.
 *
 * @param programme id of the programme
 * @param list {@code rules} or {@code overridings}
 * @param index place in that list, counted from 0
 * @param ruleId the rule, or the rule that is overridden
 * @param field the field in it, such as {@code interval.unless-lasts-to}; empty for the whole entry
 */
public record Spot(String programme, String list, int index, String ruleId, String field) {
    /** A rule. */
    static Spot rule(String programme, int index, String ruleId) {
        return new Spot(programme, "rules", index, ruleId, "");
    }

    /** An overriding. */
    static Spot overriding(String programme, int index, String ruleId) {
        return new Spot(programme, "overridings", index, ruleId, "");
    }

    /** A field of the same entry. */
    Spot at(String name) {
        return new Spot(programme, list, index, ruleId, name);
    }

    /**
     * The field in words.
     *
     * @return such as {@code rule renew-mounts, interval.unless-lasts-to}
     */
    public String words() {
        String entry = list.equals("rules") ? "rule " + ruleId : "overriding " + (index + 1) + " (rule " + ruleId + ")";
        return field.isEmpty() ? entry : entry + ", " + field;
    }
}
