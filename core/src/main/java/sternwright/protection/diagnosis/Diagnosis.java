package sternwright.protection.diagnosis;

import java.util.List;
import java.util.Map;

/**
 * What the readings say.
 *
 * @param verdicts every hypothesis with its probability, likeliest first; the tail below one in a thousand is left out
 * @param soundProbability probability that nothing is wrong
 * @param otherProbability probability that something not on the list is wrong
 * @param nothingExplains true where even the best hypothesis makes readings like these very rare
 * @param bestFit share of sound draws of the best hypothesis that lie farther from its mean than these readings (chi-squared tail)
 * @param faultProbability probability of each fault by its id, in whatever company
 * @param next what to measure next, most telling first
 * @param summary in plain words
 */
public record Diagnosis(
        List<Verdict> verdicts,
        double soundProbability,
        double otherProbability,
        boolean nothingExplains,
        double bestFit,
        Map<String, Double> faultProbability,
        List<NextMeasurement> next,
        String summary) {
    public Diagnosis {
        verdicts = List.copyOf(verdicts);
        faultProbability = Map.copyOf(faultProbability);
        next = List.copyOf(next);
    }

    /**
     * A hypothesis and how probable it is after the readings.
     *
     * @param hypothesis what would be wrong
     * @param probability 0 to 1
     */
    public record Verdict(Hypothesis hypothesis, double probability) {}

    /**
     * A measurement not yet taken.
     *
     * @param measurement what to measure
     * @param bits expected information on what is wrong
     * @param minutes what it takes
     */
    public record NextMeasurement(Measurement measurement, double bits, int minutes) {}
}
