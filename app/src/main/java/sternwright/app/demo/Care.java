package sternwright.app.demo;

/**
 * How an invented owner looks after the boat.
 *
 * @param visits share of the season's visits that take place
 * @param works share of the works due at a visit that are done
 * @param written share of the entries in which the hours are written down
 * @param refuses share of the big works that are refused with a signature
 */
record Care(double visits, double works, double written, double refuses) {
    static final Care CAREFUL = new Care(1, 0.99, 0.98, 0);
    static final Care USUAL = new Care(0.96, 0.94, 0.85, 0.02);
    static final Care SPARING = new Care(0.85, 0.8, 0.6, 0.2);
    static final Care NEGLECTED = new Care(0.45, 0.5, 0.3, 0.3);
}
