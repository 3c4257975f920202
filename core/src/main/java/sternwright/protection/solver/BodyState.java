package sternwright.protection.solver;

/**
 * What the solution says of one body.
 *
 * @param metalV potential of the metal against remote water: what a half cell far away reads, V against silver/silver chloride in seawater
 * @param interfaceV potential against the water beside it: what a half cell close to it reads, V
 * @param currentA current from the metal into the water, A; negative where the body is being protected
 * @param anodicCurrentA the part of the current that dissolves metal, A
 */
public record BodyState(double metalV, double interfaceV, double currentA, double anodicCurrentA) {}
