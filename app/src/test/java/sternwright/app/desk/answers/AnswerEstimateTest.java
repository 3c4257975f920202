package sternwright.app.desk.answers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sternwright.app.desk.answers.OwnerEstimate.Line;
import sternwright.app.desk.answers.OwnerEstimate.State;
import sternwright.app.files.problem.BadInput;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.job.InventedVisits;
import sternwright.job.estimate.Estimate;
import sternwright.job.estimate.Estimates;
import sternwright.job.estimate.OwnerAnswer;

class AnswerEstimateTest {
    private static final Estimate PAPER = Estimates.of(InventedVisits.layUp(), InventedVisits.facts(), 30);
    private static final OwnerEstimate OFFERED = OwnerEstimate.of(PAPER);
    private static final LocalDate DAY = OFFERED.issuedOn().plusDays(1);

    @Test
    void theSumsAreThoseOfThePaperHoweverItIsAnswered() {
        sums(PAPER, OFFERED);
        for (int refused = 1; refused <= OFFERED.lines().size(); refused++) {
            Set<Integer> numbers =
                    OFFERED.lines().stream().limit(refused).map(Line::number).collect(Collectors.toSet());
            List<LineAnswer> answers = OFFERED.lines().stream()
                    .map(l -> new LineAnswer(
                            l.id(),
                            numbers.contains(l.number()) ? OwnerAnswer.DECLINED : OwnerAnswer.ACCEPTED,
                            "A. Owner",
                            true))
                    .toList();
            sums(PAPER.answered(numbers), AnswerEstimate.of(OFFERED, answers, DAY));
        }
    }

    private static void sums(Estimate paper, OwnerEstimate data) {
        assertEquals(paper.net().amount(), data.net());
        assertEquals(paper.tax().amount(), data.tax());
        assertEquals(paper.gross().amount(), data.gross());
    }

    @Test
    void lineByLineUntilAllIsAnswered() {
        OwnerEstimate now = OFFERED;
        assertEquals(State.OPEN, now.state(DAY));
        int open = now.lines().size();
        for (Line line : OFFERED.lines()) {
            now = AnswerEstimate.of(now, List.of(yes(line)), DAY);
            open--;
            assertEquals(open == 0 ? State.ALL_ANSWERED : State.PARTLY_ANSWERED, now.state(DAY));
        }
        assertEquals(now, AnswerEstimate.of(now, List.of(yes(OFFERED.lines().get(0))), DAY.plusDays(1)));
        assertEquals(State.ALL_ANSWERED, now.state(OFFERED.validUntil().plusYears(1)));
        assertEquals(State.EXPIRED, OFFERED.state(OFFERED.validUntil().plusDays(1)));
        assertTrue(now.refusals().isEmpty());
        assertFalse(now.anyRefused());
    }

    @Test
    void aRefusedSafetyItemStandsInTheHistory() {
        Line safety = OFFERED.lines().stream().filter(Line::safety).findFirst().orElseThrow();
        LineAnswer no = new LineAnswer(safety.id(), OwnerAnswer.DECLINED, " A. Owner ", true);
        List<ServiceEntry> entries =
                AnswerEstimate.of(OFFERED, List.of(no), DAY).refusals();
        assertEquals(1, entries.size());
        ServiceEntry entry = entries.get(0);
        assertEquals(Outcome.REFUSED, entry.outcome());
        assertEquals("A. Owner", entry.who());
        assertEquals(DAY, entry.date());
        assertEquals(safety.rule(), entry.ruleId());
        assertTrue(entry.note().contains("I take this decision myself"), entry.note());
        Line other =
                OFFERED.lines().stream().filter(l -> !l.safety()).findFirst().orElseThrow();
        assertTrue(
                AnswerEstimate.of(OFFERED, List.of(new LineAnswer(other.id(), OwnerAnswer.DECLINED, "A", false)), DAY)
                        .refusals()
                        .isEmpty());
    }

    @Test
    void everythingWrongIsSaidTogether() {
        Line safety = OFFERED.lines().stream().filter(Line::safety).findFirst().orElseThrow();
        Line other =
                OFFERED.lines().stream().filter(l -> !l.safety()).findFirst().orElseThrow();
        List<LineAnswer> answers = new ArrayList<>(List.of(
                new LineAnswer(safety.id(), OwnerAnswer.DECLINED, "A. Owner", false),
                new LineAnswer("no/such/line", OwnerAnswer.ACCEPTED, "A. Owner", false),
                new LineAnswer(other.id(), OwnerAnswer.ACCEPTED, "  ", false),
                new LineAnswer(other.id(), OwnerAnswer.ACCEPTED, "A. Owner", false)));
        BadInput bad = assertThrows(BadInput.class, () -> AnswerEstimate.of(OFFERED, answers, DAY));
        assertEquals(4, bad.problems().size(), bad.getMessage());
        assertThrows(BadInput.class, () -> AnswerEstimate.of(OFFERED, List.of(), DAY));
        assertThrows(
                BadInput.class,
                () -> AnswerEstimate.of(
                        OFFERED, List.of(yes(other)), OFFERED.validUntil().plusDays(1)));
        OwnerEstimate said = AnswerEstimate.of(OFFERED, List.of(yes(other)), DAY);
        LineAnswer no = new LineAnswer(other.id(), OwnerAnswer.DECLINED, "B. Other", false);
        BadInput twice = assertThrows(BadInput.class, () -> AnswerEstimate.of(said, List.of(no), DAY));
        assertTrue(String.valueOf(twice.getMessage()).contains("A. Owner"), twice.getMessage());
    }

    @Test
    void keptAsATextAndReadBack() {
        OwnerEstimate said =
                AnswerEstimate.of(OFFERED, List.of(yes(OFFERED.lines().get(0))), DAY);
        OwnerEstimate back = AnswerEstimate.read("estimates/x.json", AnswerEstimate.text(said));
        assertEquals(said, back);
        assertEquals(new BigDecimal("0.00").scale(), back.net().scale());
        assertThrows(BadInput.class, () -> AnswerEstimate.read("estimates/x.json", "{\"number\": 3}"));
        assertThrows(BadInput.class, () -> AnswerEstimate.read("estimates/x.json", "not json"));
    }

    private static LineAnswer yes(Line line) {
        return new LineAnswer(line.id(), OwnerAnswer.ACCEPTED, "A. Owner", false);
    }
}
