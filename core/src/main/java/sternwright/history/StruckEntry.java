package sternwright.history;

/**
 * An entry that does not hold.
 *
 * @param entry the entry as it was written
 * @param strike who struck it, when and why
 */
public record StruckEntry(ServiceEntry entry, Strike strike) {}
