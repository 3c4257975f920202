package sternwright.measure;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;

/**
 * How a yearly quantity spreads over the twelve months, January first; the shares add up to one.
 *
 * @param shares twelve shares, each at least 0
 */
public record MonthlyShare(List<Double> shares) {
    /** Checks twelve shares and scales them to the sum one. */
    public MonthlyShare {
        if (shares.size() != 12) {
            throw new IllegalArgumentException(
                    "a year has 12 months, not " + shares.size() + ": give January to December");
        }
        double sum = 0;
        for (double s : shares) {
            if (!(s >= 0)) {
                throw new IllegalArgumentException("a month's share is at least 0, not " + s);
            }
            sum += s;
        }
        if (sum <= 0) {
            throw new IllegalArgumentException("all twelve shares are 0: at least one month must be used");
        }
        double total = sum;
        shares = shares.stream().map(s -> s / total).toList();
    }

    /**
     * The share of one month.
     *
     * @param month which month
     * @return 0 to 1
     */
    public double of(Month month) {
        return shares.get(month.getValue() - 1);
    }

    /**
     * The same year seen from the other hemisphere: moved by six months.
     *
     * @return the shifted shares
     */
    public MonthlyShare shiftedHalfAYear() {
        return new MonthlyShare(java.util.stream.IntStream.range(0, 12)
                .mapToObj(i -> shares.get((i + 6) % 12))
                .toList());
    }

    /**
     * The share of a year that lies between two dates, days within a month counted evenly.
     *
     * @param from first day, included
     * @param to last day, excluded; not before {@code from}
     * @return years of use, 1 for any full year
     */
    public double between(LocalDate from, LocalDate to) {
        return upTo(to) - upTo(from);
    }

    /** Use from a fixed origin to a date: whole years count one each. */
    private double upTo(LocalDate date) {
        double sum = date.getYear();
        for (int m = 0; m < date.getMonthValue() - 1; m++) {
            sum += shares.get(m);
        }
        return sum + of(date.getMonth()) * (date.getDayOfMonth() - 1) / date.lengthOfMonth();
    }

    /**
     * The first date by which a given share of use has passed.
     *
     * @param from start
     * @param years use to pass, in years, at least 0
     * @return the date; {@code from} if nothing has to pass
     */
    public LocalDate after(LocalDate from, double years) {
        double target = upTo(from) + years;
        int year = (int) Math.floor(target);
        double rest = target - year;
        for (int m = 0; m < 12; m++) {
            double share = shares.get(m);
            if (rest < share || m == 11) {
                LocalDate first = LocalDate.of(year, m + 1, 1);
                double part = share > 0 ? Math.min(1, rest / share) : 1;
                LocalDate date = first.plusDays((long) Math.ceil(part * first.lengthOfMonth() - 1e-9));
                return date.isBefore(from) ? from : date;
            }
            rest -= share;
        }
        throw new AssertionError("the last month always answers");
    }
}
