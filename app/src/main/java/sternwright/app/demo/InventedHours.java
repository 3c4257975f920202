package sternwright.app.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import sternwright.history.MeterReading;
import sternwright.measure.MonthlyShare;
import sternwright.yard.Use;

/** The true running hours of one invented engine, and what its meter was said to show. */
final class InventedHours {
    private final MonthlyShare months;
    private final LocalDate from;
    private final double atStart;
    private final double[] perYear;
    private final String installationId;
    private final List<MeterReading> meter = new ArrayList<>();
    private double takenOff;

    InventedHours(
            String installationId,
            Use use,
            boolean southern,
            LocalDate from,
            double atStart,
            double habit,
            SplittableRandom random) {
        this.installationId = installationId;
        this.months = southern ? use.months().shiftedHalfAYear() : use.months();
        this.from = from;
        this.atStart = atStart;
        this.perYear = new double[12];
        for (int i = 0; i < perYear.length; i++) {
            perYear[i] = use.annualHours() * habit * Math.exp(0.2 * random.nextGaussian());
        }
    }

    /** Running hours on a day, counted over meter changes. */
    double on(LocalDate day) {
        double hours = atStart;
        LocalDate yearFrom = from;
        for (int i = 0; i < perYear.length && yearFrom.isBefore(day); i++) {
            LocalDate yearTo = yearFrom.plusYears(1);
            hours += perYear[i] * months.between(yearFrom, day.isBefore(yearTo) ? day : yearTo);
            yearFrom = yearTo;
        }
        return Math.rint(hours);
    }

    /** The meter is read. */
    void read(LocalDate day, String who) {
        meter.add(new MeterReading(day, installationId, on(day) - takenOff, null, who));
    }

    /** The meter is replaced by one that shows 0. */
    void replace(LocalDate day, String who) {
        double last = on(day) - takenOff;
        meter.add(new MeterReading(day, installationId, last, 0.0, who));
        takenOff += last;
    }

    /** Somebody writes down a wrong figure: a digit too many or two digits changed over. */
    void misread(LocalDate day, boolean tenfold) {
        double shown = on(day) - takenOff;
        double wrong = tenfold ? shown * 10 : Math.max(0, shown - 270);
        meter.add(new MeterReading(day, installationId, Math.rint(wrong), null, "owner"));
    }

    List<MeterReading> meter() {
        return List.copyOf(meter);
    }
}
