package sternwright.boat;

/**
 * What hoist and hard standing need to know.
 *
 * @param lengthM length overall, m
 * @param beamM beam, m
 * @param draughtM draught, m
 * @param massKg mass as lifted, kg
 * @param material what the hull is made of
 */
public record Hull(double lengthM, double beamM, double draughtM, double massKg, HullMaterial material) {}
