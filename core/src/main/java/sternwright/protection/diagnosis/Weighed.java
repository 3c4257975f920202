package sternwright.protection.diagnosis;

/**
 * A case after the readings.
 *
 * @param example the case
 * @param logWeight logarithm of prior times likelihood
 * @param readings distribution of the readings under it
 */
record Weighed(Case example, double logWeight, Gaussian readings) {}
