package sternwright.season;

/**
 * A boat on hard standing: it holds a place from the start of its lift to the end of its launch.
 *
 * @param lift index of the lifting operation
 * @param launch index of the launching operation
 * @param placeClass index of the smallest {@link PlaceClass} that takes the boat
 */
public record Stay(int lift, int launch, int placeClass) {}
