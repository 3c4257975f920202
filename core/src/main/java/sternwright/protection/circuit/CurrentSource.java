package sternwright.protection.circuit;

/**
 * A direct current forced from one body to another by something outside the model, such as a leak from battery positive.
 *
 * @param id short name, unique in its circuit
 * @param from body the conventional current is taken from
 * @param to body it is put into
 * @param currentA current, A
 */
public record CurrentSource(String id, String from, String to, double currentA) {}
