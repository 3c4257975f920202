package sternwright.app.demo;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.SplittableRandom;

/**
 * The triangular distribution over a stretch of days, by its inverse: what is known of a date is its earliest, its usual and
 * its latest day.
 *
 * @param earliest share of the stretch
 * @param usual share of the stretch at which most fall
 * @param latest share of the stretch
 */
record Triangular(double earliest, double usual, double latest) {
    /** When owners let a boat go in autumn: working days 10 to 50 of a lay-up of 65, mostly 27. */
    static final Triangular RELEASED = new Triangular(10 / 65.0, 27 / 65.0, 50 / 65.0);
    /** When owners want a boat back: mid March to the end of May, mostly the second half of April. */
    static final Triangular WANTED = new Triangular(0.15, 0.55, 0.97);

    /** A day between two days, the last of them left out. */
    LocalDate day(LocalDate from, LocalDate to, SplittableRandom random) {
        double u = random.nextDouble();
        double width = latest - earliest;
        double turn = (usual - earliest) / width;
        double share = u < turn
                ? earliest + Math.sqrt(u * width * (usual - earliest))
                : latest - Math.sqrt((1 - u) * width * (latest - usual));
        return from.plusDays((long) (share * ChronoUnit.DAYS.between(from, to)));
    }
}
