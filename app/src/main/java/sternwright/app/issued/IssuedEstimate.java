package sternwright.app.issued;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.job.estimate.Estimate;

/**
 * An estimate that was made, how its link stands, and what the owner said.
 *
 * @param id its name in the yard's own addresses
 * @param offered what was offered
 * @param madeAt when
 * @param madeBy by whom
 * @param linked whether a link was made for it
 * @param expiresAt until when the link works
 * @param withdrawnAt when the link was withdrawn, null if it was not
 * @param answeredAt when the owner answered, null if not yet
 * @param answeredBy the name the owner wrote, null if not yet
 * @param recordedAt when refusals of safety items went on record, null if not yet
 * @param accepted the owner's answers by line
 */
public record IssuedEstimate(
        String id,
        OfferedEstimate offered,
        Instant madeAt,
        String madeBy,
        boolean linked,
        Instant expiresAt,
        @Nullable Instant withdrawnAt,
        @Nullable Instant answeredAt,
        @Nullable String answeredBy,
        @Nullable Instant recordedAt,
        Map<Integer, Boolean> accepted) {
    /** Copies the map. */
    public IssuedEstimate {
        accepted = Map.copyOf(accepted);
    }

    /** How the link of an estimate stands. */
    public enum Link {
        /** None was made yet. */
        NONE,
        /** The owner can answer. */
        OPEN,
        /** The owner has answered; the link shows the answer. */
        ANSWERED,
        /** Its time is over. */
        EXPIRED,
        /** The yard withdrew it. */
        WITHDRAWN
    }

    IssuedEstimate with(Map<Integer, Boolean> answers) {
        return new IssuedEstimate(
                id,
                offered,
                madeAt,
                madeBy,
                linked,
                expiresAt,
                withdrawnAt,
                answeredAt,
                answeredBy,
                recordedAt,
                answers);
    }

    /**
     * How the link stands.
     *
     * @param now the time
     * @return its state
     */
    public Link link(Instant now) {
        if (withdrawnAt != null) {
            return Link.WITHDRAWN;
        }
        if (!linked && answeredAt == null) {
            return Link.NONE;
        }
        if (!now.isBefore(expiresAt)) {
            return answeredAt == null ? Link.EXPIRED : Link.ANSWERED;
        }
        return answeredAt == null ? Link.OPEN : Link.ANSWERED;
    }

    /**
     * The estimate with the owner's answers in it.
     *
     * @return as offered as long as there is no answer
     */
    public Estimate estimate() {
        List<Integer> declined = accepted.entrySet().stream()
                .filter(e -> !e.getValue())
                .map(Map.Entry::getKey)
                .toList();
        return answeredAt == null ? offered.estimate() : offered.estimate().answered(declined);
    }

    /**
     * Whether safety items were refused that are not on record yet.
     *
     * @return true if somebody has to put them on record
     */
    public boolean owesRecord() {
        return answeredAt != null
                && recordedAt == null
                && !estimate().refusals().isEmpty();
    }
}
