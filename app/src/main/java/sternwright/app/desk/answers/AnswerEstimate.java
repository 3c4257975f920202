package sternwright.app.desk.answers;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sternwright.app.desk.answers.OwnerEstimate.Line;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.job.estimate.OwnerAnswer;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** Takes an owner's answers. */
public final class AnswerEstimate {
    private static final int LONGEST_NAME = 120;
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final OwnerEstimate estimate;
    private final LocalDate today;
    private final List<Problem> wrong = new ArrayList<>();

    private AnswerEstimate(OwnerEstimate estimate, LocalDate today) {
        this.estimate = estimate;
        this.today = today;
    }

    /**
     * Puts answers into an estimate. Lines that are not answered stay as they are; the same answer once more changes nothing.
     *
     * @param estimate as it was offered, with the answers until now
     * @param answers what the owner says
     * @param today the day it is said
     * @return the estimate with them
     * @throws BadInput with everything that is wrong; the field of a problem is the id of its line
     */
    public static OwnerEstimate of(OwnerEstimate estimate, List<LineAnswer> answers, LocalDate today) {
        return new AnswerEstimate(estimate, today).with(answers);
    }

    private OwnerEstimate with(List<LineAnswer> answers) {
        if (answers.isEmpty()) {
            say("", "nothing is answered", "yes or no on at least one line", "Choose yes or no on a line.");
        }
        Map<String, Line> lines = new HashMap<>();
        estimate.lines().forEach(l -> lines.put(l.id(), l));
        Set<String> seen = new HashSet<>();
        for (LineAnswer answer : answers) {
            Line line = lines.get(answer.lineId());
            if (line == null) {
                say(answer.lineId(), "the estimate has no such line", "one of its lines", "Open the estimate again.");
            } else if (!seen.add(answer.lineId())) {
                say(answer.lineId(), "the line is answered twice", "one answer", "Choose yes or no.");
            } else {
                check(line, answer);
            }
        }
        if (!wrong.isEmpty()) {
            throw new BadInput(wrong);
        }
        Map<String, LineAnswer> byLine = new HashMap<>();
        answers.forEach(a -> byLine.put(a.lineId(), a));
        return estimate.lines(estimate.lines().stream()
                .map(l -> answered(l, byLine.get(l.id())))
                .toList());
    }

    private Line answered(Line line, @org.jspecify.annotations.Nullable LineAnswer answer) {
        return answer == null || line.answer() == answer.answer()
                ? line
                : line.answered(answer.answer(), answer.name().strip(), today);
    }

    private void check(Line line, LineAnswer answer) {
        String name = answer.name().strip();
        if (answer.answer() == OwnerAnswer.OPEN) {
            say(line.id(), "no answer is given", "yes or no", "Choose yes or no.");
        }
        if (line.answer() != OwnerAnswer.OPEN) {
            if (line.answer() != answer.answer()) {
                say(
                        line.id(),
                        "it was answered by " + line.answeredBy() + " on " + line.answeredOn(),
                        "",
                        "Ask the yard to change it.");
            }
            return;
        }
        if (today.isAfter(estimate.validUntil())) {
            say(
                    line.id(),
                    "the estimate held until " + estimate.validUntil(),
                    "",
                    "Ask the yard for a new one: prices may have changed.");
        }
        if (name.isEmpty() || name.length() > LONGEST_NAME || name.chars().anyMatch(Character::isISOControl)) {
            say(
                    line.id(),
                    name.isEmpty() ? "there is no name" : "the name cannot be taken",
                    "the name of whoever answers, up to " + LONGEST_NAME + " characters",
                    "Write your name; it stands for your signature.");
        }
        if (line.safety() && answer.answer() == OwnerAnswer.DECLINED && !answer.statementRead()) {
            say(
                    line.id(),
                    "it is a safety item and the statement is not confirmed",
                    "the statement confirmed",
                    "Read what can happen and confirm it, or let it be done.");
        }
    }

    private void say(String line, String found, String expected, String advice) {
        wrong.add(new Problem("estimate " + estimate.number(), 0, line, found, expected, advice));
    }

    /**
     * The estimate as a text to keep.
     *
     * @param estimate the estimate
     * @return JSON
     */
    public static String text(OwnerEstimate estimate) {
        return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(estimate);
    }

    /**
     * Reads a kept estimate.
     *
     * @param name of the text, for the problem
     * @param text as {@link #text} wrote it
     * @return the estimate
     * @throws BadInput if it is not such a text
     */
    public static OwnerEstimate read(String name, String text) {
        try {
            return JSON.readValue(text, OwnerEstimate.class);
        } catch (JacksonException | IllegalArgumentException | NullPointerException e) {
            throw BadInput.of(name, "this is not an estimate that was kept", "JSON as the program wrote it", "");
        }
    }
}
