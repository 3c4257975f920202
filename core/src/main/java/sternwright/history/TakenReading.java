package sternwright.history;

/**
 * A measured value; no judgement.
 *
 * @param name what was measured, as asked by the rule, such as {@code anode-remaining}
 * @param value the value
 * @param unit its unit, such as {@code %}
 */
public record TakenReading(String name, double value, String unit) {}
