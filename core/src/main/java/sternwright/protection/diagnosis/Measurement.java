package sternwright.protection.diagnosis;

/**
 * Something that can be measured.
 *
 * @param quantity what
 * @param where the body or the joint
 * @param setting how the boat stands
 */
public record Measurement(Quantity quantity, String where, Setting setting) {
    /** In words. */
    public String words() {
        return quantity.words() + " at " + where.replace("~", " to ")
                + (setting.anodesOn() ? "" : ", anodes lifted off")
                + (setting.shoreLead() ? ", shore lead plugged in" : "");
    }
}
