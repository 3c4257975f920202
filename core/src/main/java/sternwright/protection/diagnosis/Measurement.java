package sternwright.protection.diagnosis;

import sternwright.protection.register.BoatCircuit;

/**
 * Something that can be measured.
 *
 * @param quantity what
 * @param where the body or the joint
 * @param setting how the boat stands
 */
public record Measurement(Quantity quantity, String where, Setting setting) {
    /** In words, with the place by its short name. */
    public String words() {
        return words(where.replace("~", " to "));
    }

    /** In words, with the place as one says it aboard. */
    public String words(BoatCircuit boat) {
        String place = boat.words(where);
        return words(place.equals(where) ? place : "the " + place);
    }

    private String words(String place) {
        return quantity.words() + " " + place + " (" + quantity.how()
                + (setting.anodesOn() ? "" : ", anodes lifted off")
                + (setting.shoreLead() ? ", shore lead plugged in" : "") + ")";
    }
}
