package sternwright.finding;

/**
 * A caution that stands where work can hurt someone.
 *
 * @param id short name by which rules refer to it
 * @param text what to mind, in full sentences
 */
public record Caution(String id, String text) {}
