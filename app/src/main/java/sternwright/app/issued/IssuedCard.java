package sternwright.app.issued;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A job card that was issued, as lists name it.
 *
 * @param id its name in addresses
 * @param boatId the boat
 * @param boatName her name
 * @param from first day of the visit
 * @param to last day of the visit
 * @param issuedAt when it was issued
 * @param issuedBy by whom
 * @param finishedAt when it was recorded, null as long as it is open
 * @param finishedBy by whom, null as long as it is open
 */
public record IssuedCard(
        String id,
        String boatId,
        String boatName,
        LocalDate from,
        LocalDate to,
        Instant issuedAt,
        String issuedBy,
        @Nullable Instant finishedAt,
        @Nullable String finishedBy) {
    /**
     * Whether it still can be written on.
     *
     * @return false once it is recorded
     */
    public boolean open() {
        return finishedAt == null;
    }
}
