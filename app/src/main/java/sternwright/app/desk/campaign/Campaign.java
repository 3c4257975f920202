package sternwright.app.desk.campaign;

import org.jspecify.annotations.Nullable;

/**
 * Which parts a campaign is about. At least rule or kind is named.
 *
 * @param name what the yard calls it
 * @param ruleId the work, by the id of its rule; null for the renewal of the part, or what falls due on it first
 * @param kindId the kind of part; null for every part the rule is for
 * @param atLeastMonths age in months; for works that do not renew their part, months since they were last done; null if age does
 *     not count
 * @param atLeastHours engine hours since then; null if hours do not count
 */
public record Campaign(
        String name,
        @Nullable String ruleId,
        @Nullable String kindId,
        @Nullable Integer atLeastMonths,
        @Nullable Double atLeastHours) {
    /** Refuses a campaign about everything, and figures below nothing. */
    public Campaign {
        if (ruleId == null && kindId == null) {
            throw new IllegalArgumentException("a campaign is about a rule or a kind of part: name one of them");
        }
        if (atLeastMonths != null && atLeastMonths < 0 || atLeastHours != null && !(atLeastHours >= 0)) {
            throw new IllegalArgumentException("a campaign from an age of " + atLeastMonths + " months, " + atLeastHours
                    + " hours: expected 0 or more");
        }
    }
}
