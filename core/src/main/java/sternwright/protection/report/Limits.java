package sternwright.protection.report;

import java.util.List;

/** What a lumped model gets wrong, how to measure, and what can hurt: said on every report. */
public final class Limits {
    private Limits() {}

    /** What such a model cannot see or gets wrong. */
    public static List<String> ofTheModel() {
        return List.of(
                "One potential for each part: near a small anode it is more negative than shown, at the far end less.",
                "Potentials are good to some tens of millivolts; wastage to a factor of two until the boat's own anodes were weighed.",
                "Demand falls as metal grows a chalky film, and rises with speed; berth and under way are solved apart.",
                "Overprotected aluminium is eaten by alkali: it is flagged by its potential, no rate is computed.",
                "Loss of zinc from brass, crevices and pitting in stainless steel, alternating current, microbes and cavitation are not in it.",
                "A galvanic isolator that failed open leaves the boat without earth and shows in no direct-current reading: only an electrician's test finds it.",
                "Where scales and half cell disagree, believe the scales for how much and the half cell for now.");
    }

    /** How to take the readings. */
    public static List<String> howToMeasure() {
        return List.of(
                "Half cell soaked for half an hour and checked against clean zinc: zinc must read -1.03 V (30 mV either way) against silver/silver chloride.",
                "Half cell in the water, close to the part (a hand's breadth) for \"close\"; some metres off for \"far\". Write down where it hung.",
                "Meter's plus on the part's bare metal, minus on the half cell; write the sign, the unit and the electrode.",
                "Take every part; then the anode itself; then with the shore lead plugged in and out.",
                "A joint is judged by the millivolts across it while it works (good: below 10 mV), not by its ohms.",
                "Ohms only ashore or with the wire off, with both polarities: afloat the couple's own voltage sits in the circuit.",
                "Weigh every anode that comes off, brushed clean, and write the weight of the new one.");
    }

    /** What can hurt. */
    public static List<String> cautions() {
        return List.of(
                "People in the water near boats on shore power have been killed: unplug before anyone goes into the water; no swimming or diving in a marina with shore power on.",
                "Shore earth and isolator are life-safety parts: they are tested or fitted, never removed. Measurements on the alternating-current side are for a qualified electrician.",
                "This report advises. The maker's manual, local codes and the licensed person on site decide.");
    }
}
