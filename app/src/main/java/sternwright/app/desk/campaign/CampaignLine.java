package sternwright.app.desk.campaign;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One part of a campaign.
 *
 * @param row the work with boat and part
 * @param since fitted, renewed or last done on this day; null if not known
 * @param months whole months since then; null if not known
 * @param hours engine hours since then, to the last reading of the meter; null if not known
 */
public record CampaignLine(
        DueRow row,
        @Nullable LocalDate since,
        @Nullable Integer months,
        @Nullable Double hours) {}
