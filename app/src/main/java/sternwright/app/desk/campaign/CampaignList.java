package sternwright.app.desk.campaign;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.YardFiles;
import sternwright.boat.PartRef;
import sternwright.due.Due;
import sternwright.history.MeterReading;
import sternwright.history.RunningHours;

/**
 * The parts of a campaign: those of the age or the hours asked for, and those of which it is not known.
 *
 * @param campaign what was asked
 * @param today the day called today
 * @param lines in order of owner, boat and part
 */
public record CampaignList(Campaign campaign, LocalDate today, List<CampaignLine> lines) {
    /** Copies the list. */
    public CampaignList {
        lines = List.copyOf(lines);
    }

    private record OnPart(String boatId, PartRef part) {}

    /**
     * Makes the list.
     *
     * @param campaign what is asked
     * @param dues the yard's due list
     * @param files the yard's files
     * @param today the day called today
     * @return its lines, one a part
     */
    public static CampaignList of(Campaign campaign, List<Due> dues, YardFiles files, LocalDate today) {
        Map<OnPart, DueRow> byPart = new HashMap<>();
        List<Due> ofRule = dues.stream()
                .filter(d -> campaign.ruleId() == null
                        || campaign.ruleId().equals(d.rule().id()))
                .toList();
        for (DueRow row : DueTable.rows(files, ofRule)) {
            if (about(campaign, row)) {
                byPart.merge(new OnPart(row.boat().id(), row.due().part()), row, CampaignList::leading);
            }
        }
        List<CampaignLine> lines = byPart.values().stream()
                .map(r -> line(campaign, r, files, today))
                .filter(l -> old(campaign, l))
                .sorted(Comparator.comparing(
                                (CampaignLine l) -> l.row().boat().owner().name())
                        .thenComparing(l -> l.row().boat().name())
                        .thenComparing(l -> l.row().due().part()))
                .toList();
        return new CampaignList(campaign, today, lines);
    }

    private static boolean about(Campaign campaign, DueRow row) {
        return campaign.kindId() == null || campaign.kindId().equals(row.part().kind());
    }

    /** The renewal stands for its part; without one, what falls due first. */
    private static DueRow leading(DueRow a, DueRow b) {
        Comparator<DueRow> order = Comparator.comparing(
                        (DueRow r) -> !r.due().rule().renews())
                .thenComparing(r -> r.due().dueOn());
        return order.compare(a, b) <= 0 ? a : b;
    }

    private static CampaignLine line(Campaign campaign, DueRow row, YardFiles files, LocalDate today) {
        Due due = row.due();
        boolean ofPart = due.rule().renews() || campaign.ruleId() == null;
        LocalDate fitted = ofPart ? row.part().fittedOn() : null;
        LocalDate done = due.rule().renews() || !ofPart ? due.lastDone() : null;
        boolean byWork = done != null && (fitted == null || !done.isBefore(fitted));
        LocalDate since = byWork ? done : fitted;
        Double then = byWork ? due.hoursAtLastDone() : ofPart ? row.part().hoursAtFitting() : null;
        OptionalDouble now = since == null || then == null ? OptionalDouble.empty() : hours(row, files, today);
        return new CampaignLine(
                row,
                since,
                since == null ? null : (int) ChronoUnit.MONTHS.between(since, today),
                now.isEmpty() || then == null ? null : Math.max(0, now.getAsDouble() - then));
    }

    private static OptionalDouble hours(DueRow row, YardFiles files, LocalDate today) {
        List<MeterReading> meter = files.history(row.boat().id()).meter().stream()
                .filter(r -> r.installationId().equals(row.installation().id())
                        && !r.date().isAfter(today))
                .toList();
        return RunningHours.of(meter)
                .latest()
                .map(p -> OptionalDouble.of(p.hours()))
                .orElse(OptionalDouble.empty());
    }

    /** Left out only if everything that was asked is known and below; what is not known is for a person to look at. */
    private static boolean old(Campaign campaign, CampaignLine line) {
        boolean young = below(campaign.atLeastMonths(), line.months());
        boolean fresh = below(campaign.atLeastHours(), line.hours());
        boolean asked = campaign.atLeastMonths() != null || campaign.atLeastHours() != null;
        return !asked || !(young || campaign.atLeastMonths() == null) || !(fresh || campaign.atLeastHours() == null);
    }

    private static boolean below(@Nullable Number limit, @Nullable Number found) {
        return limit != null && found != null && found.doubleValue() < limit.doubleValue();
    }

    /**
     * How many boats it reaches.
     *
     * @return boats
     */
    public int boats() {
        return (int) lines.stream().map(l -> l.row().boat().id()).distinct().count();
    }

    /**
     * The list as a table for a spreadsheet.
     *
     * @return CSV with a head; dates are ISO 8601, what is not known is empty
     */
    public String csv() {
        return CampaignCsv.of(this);
    }
}
