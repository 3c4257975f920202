package sternwright.job.estimate;

/**
 * What an owner signs who declines a safety item. Common practice, no source; local law may ask for other words.
 *
 * @param lineNumber the line of the estimate
 * @param statement the words above the signature
 */
public record Refusal(int lineNumber, String statement) {
    static Refusal of(EstimateLine line) {
        String ifLeft =
                line.ifDeclined().isBlank() ? "" : " I have been told what can happen: " + full(line.ifDeclined());
        return new Refusal(
                line.number(),
                "I do not want line " + line.number() + " done ("
                        + line.planned().inForce().rule().work() + ", "
                        + line.planned().partName() + "). I have been told that it is a safety item." + ifLeft
                        + " The yard advises against using the boat before it is done. I take this decision myself.");
    }

    private static String full(String words) {
        String text = words.strip();
        String first = text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
        return first.endsWith(".") ? first : first + ".";
    }
}
