package sternwright.protection.diagnosis;

/**
 * How the boat stood while a reading was taken.
 *
 * @param anodesOn anodes in place; else all lifted off
 * @param shoreLead shore lead plugged in
 */
public record Setting(boolean anodesOn, boolean shoreLead) {
    /** Anodes on, shore lead out: the usual one. */
    public static final Setting USUAL = new Setting(true, false);
}
