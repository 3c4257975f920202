package sternwright.boat;

/** How the engine gets rid of its heat. */
public enum Cooling {
    /** Raw water through the block: direct. */
    RAW_WATER,
    /** Closed coolant circuit and a raw-water heat exchanger: indirect. */
    FRESH_WATER,
    /** Closed circuit with a cooler outside on the hull. */
    KEEL
}
