package sternwright.app.desk.answers;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sternwright.boat.PartRef;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.job.estimate.Estimate;
import sternwright.job.estimate.EstimateLine;
import sternwright.job.estimate.OwnerAnswer;
import sternwright.job.estimate.Refusal;

/**
 * An estimate as it was offered, with the owner's answers.
 *
 * @param number boat id and first day of the visit
 * @param yardName whose estimate it is
 * @param invented true for demo data
 * @param issuedOn the day it was written
 * @param validUntil last day on which it can be answered
 * @param boatId the boat
 * @param boat as painted on the stern
 * @param owner whose she is
 * @param from first day of the visit
 * @param to last day of the visit
 * @param place afloat or ashore, in words
 * @param lifts the boat is lifted for it
 * @param lines the works
 * @param visitLines lines of the visit as a whole
 * @param currency ISO 4217
 * @param taxName what the tax is called
 * @param taxPercent tax, percent
 * @param saved what the same works would cost more one by one, without tax
 */
public record OwnerEstimate(
        String number,
        String yardName,
        boolean invented,
        LocalDate issuedOn,
        LocalDate validUntil,
        String boatId,
        String boat,
        String owner,
        LocalDate from,
        LocalDate to,
        String place,
        boolean lifts,
        List<Line> lines,
        List<VisitLine> visitLines,
        String currency,
        String taxName,
        double taxPercent,
        BigDecimal saved) {
    /** Copies the lists. */
    public OwnerEstimate {
        lines = List.copyOf(lines);
        visitLines = List.copyOf(visitLines);
    }

    /**
     * One work.
     *
     * @param id by which it is answered: installation, part and rule with slashes
     * @param number running number, the same as on paper
     * @param installation id of the installation
     * @param part id of the part
     * @param rule id of the rule
     * @param work what is done
     * @param partName on which part, as people say it
     * @param reason why now
     * @param why what it is good for; may be empty
     * @param ifDeclined what happens if it is left; may be empty
     * @param price labour and priced supplies without tax
     * @param unpriced supplies whose price is not known; they come on top
     * @param safety a safety item
     * @param statement what an owner confirms who refuses it; empty if it is no safety item
     * @param answer what the owner says
     * @param answeredBy who answered; empty while open
     * @param answeredOn when; null while open
     */
    public record Line(
            String id,
            int number,
            String installation,
            String part,
            String rule,
            String work,
            String partName,
            String reason,
            String why,
            String ifDeclined,
            BigDecimal price,
            List<String> unpriced,
            boolean safety,
            String statement,
            OwnerAnswer answer,
            String answeredBy,
            @Nullable LocalDate answeredOn) {
        /** Copies the list. */
        public Line {
            unpriced = List.copyOf(unpriced);
        }

        Line answered(OwnerAnswer to, String by, LocalDate on) {
            return new Line(
                    id,
                    number,
                    installation,
                    part,
                    rule,
                    work,
                    partName,
                    reason,
                    why,
                    ifDeclined,
                    price,
                    unpriced,
                    safety,
                    statement,
                    to,
                    by,
                    on);
        }
    }

    /**
     * A line of the visit as a whole.
     *
     * @param what what is paid for
     * @param quantity how much
     * @param unit of what
     * @param amount price without tax
     */
    public record VisitLine(String what, double quantity, String unit, BigDecimal amount) {}

    /** How far the answering has come. */
    public enum State {
        /** Nothing answered yet. */
        OPEN,
        /** Some lines are answered. */
        PARTLY_ANSWERED,
        /** Every line is answered. */
        ALL_ANSWERED,
        /** Its last day is over and some lines are open. */
        EXPIRED
    }

    /**
     * An estimate ready to be answered.
     *
     * @param estimate the estimate, not answered on paper
     * @return every line open
     */
    public static OwnerEstimate of(Estimate estimate) {
        Map<Integer, String> statements = new HashMap<>();
        for (Refusal r : estimate.refusals()) {
            statements.put(r.lineNumber(), r.statement());
        }
        return new OwnerEstimate(
                estimate.number(),
                estimate.yardName(),
                estimate.invented(),
                estimate.issuedOn(),
                estimate.validUntil(),
                estimate.boat().id(),
                estimate.boat().name(),
                estimate.boat().owner().name(),
                estimate.from(),
                estimate.to(),
                estimate.place().words(),
                estimate.lifts(),
                estimate.lines().stream()
                        .map(l -> line(
                                l,
                                Optional.ofNullable(statements.get(l.number())).orElse("")))
                        .toList(),
                estimate.visitLines().stream()
                        .map(p -> new VisitLine(
                                p.what(), p.quantity(), p.unit(), p.amount().amount()))
                        .toList(),
                estimate.plannedNet().currency().getCurrencyCode(),
                estimate.taxName(),
                estimate.taxPercent(),
                estimate.savedByBundling().amount());
    }

    private static Line line(EstimateLine l, String statement) {
        PartRef part = l.planned().part();
        String rule = l.planned().inForce().rule().id();
        return new Line(
                part + "/" + rule,
                l.number(),
                part.installationId(),
                part.partId(),
                rule,
                l.planned().inForce().rule().work(),
                l.planned().partName(),
                l.planned().reason(),
                l.why(),
                l.ifDeclined(),
                l.price().amount(),
                l.unpriced(),
                l.safety(),
                statement,
                OwnerAnswer.OPEN,
                "",
                null);
    }

    /** The same with other lines. */
    OwnerEstimate lines(List<Line> others) {
        return new OwnerEstimate(
                number,
                yardName,
                invented,
                issuedOn,
                validUntil,
                boatId,
                boat,
                owner,
                from,
                to,
                place,
                lifts,
                others,
                visitLines,
                currency,
                taxName,
                taxPercent,
                saved);
    }

    /**
     * How far it is answered.
     *
     * @param today the day called today
     * @return the state
     */
    public State state(LocalDate today) {
        long open = lines.stream().filter(l -> l.answer() == OwnerAnswer.OPEN).count();
        if (open == 0) {
            return State.ALL_ANSWERED;
        }
        if (today.isAfter(validUntil)) {
            return State.EXPIRED;
        }
        return open == lines.size() ? State.OPEN : State.PARTLY_ANSWERED;
    }

    /**
     * Whether a line is refused; then the visit has to be planned anew before the lines of the visit as a whole can be relied on.
     *
     * @return true if so
     */
    public boolean anyRefused() {
        return lines.stream().anyMatch(l -> l.answer() == OwnerAnswer.DECLINED);
    }

    /**
     * Total without tax of what is not refused; prices not known are not in it.
     *
     * @return nothing at all if every work is refused
     */
    public BigDecimal net() {
        BigDecimal works = lines.stream()
                .filter(l -> l.answer() != OwnerAnswer.DECLINED)
                .map(Line::price)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        boolean none = lines.stream().allMatch(l -> l.answer() == OwnerAnswer.DECLINED);
        BigDecimal visit = visitLines.stream().map(VisitLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
        return rounded(none ? BigDecimal.ZERO : works.add(visit));
    }

    /**
     * Tax on the total, rounded half up once, on the sum.
     *
     * @return the tax
     */
    public BigDecimal tax() {
        return rounded(net().multiply(BigDecimal.valueOf(taxPercent)).movePointLeft(2));
    }

    /**
     * Total with tax.
     *
     * @return what is to be paid if nothing unknown comes on top
     */
    public BigDecimal gross() {
        return net().add(tax());
    }

    private BigDecimal rounded(BigDecimal amount) {
        return amount.setScale(
                Math.max(0, Currency.getInstance(currency).getDefaultFractionDigits()), RoundingMode.HALF_UP);
    }

    /**
     * The entries of the history for the safety items that are refused.
     *
     * @return one for each; other works that are refused stay due and are offered again
     */
    public List<ServiceEntry> refusals() {
        return lines.stream()
                .filter(l -> l.safety() && l.answer() == OwnerAnswer.DECLINED)
                .map(l -> new ServiceEntry(
                        Objects.requireNonNull(l.answeredOn()),
                        new PartRef(l.installation(), l.part()),
                        l.rule(),
                        Outcome.REFUSED,
                        null,
                        l.answeredBy(),
                        List.of(),
                        "Estimate " + number + ": " + l.statement()))
                .toList();
    }
}
