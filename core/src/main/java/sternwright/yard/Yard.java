package sternwright.yard;

import java.util.Currency;
import java.util.List;
import java.util.Optional;
import sternwright.measure.unit.YardUnits;

/**
 * The yard itself.
 *
 * @param name as on letterhead
 * @param invented true for demo data, said on every paper
 * @param currency ISO 4217 currency of every price
 * @param taxName what tax is called on an estimate
 * @param taxPercent tax on labour and supplies, percent
 * @param labourPerHour price of an engineer's hour without tax
 * @param setUpMinutes minutes of set-up at one service point, shared by the works there
 * @param tariff lifts, hard standing, call-outs
 * @param season lay-up and recommission
 * @param calendar working days
 * @param uses kinds of use with the hours to expect
 * @param stores what the stores sell
 * @param units the units it works in
 */
public record Yard(
        String name,
        boolean invented,
        Currency currency,
        String taxName,
        double taxPercent,
        double labourPerHour,
        double setUpMinutes,
        Tariff tariff,
        SeasonDates season,
        WorkCalendar calendar,
        List<Use> uses,
        List<StoreItem> stores,
        YardUnits units) {
    /** Copies the lists. */
    public Yard {
        uses = List.copyOf(uses);
        stores = List.copyOf(stores);
    }

    /**
     * A yard that works in metric units.
     *
     * @param name as on letterhead
     * @param invented true for demo data
     * @param currency of every price
     * @param taxName what tax is called
     * @param taxPercent tax, percent
     * @param labourPerHour price of an hour without tax
     * @param setUpMinutes minutes of set-up at one service point
     * @param tariff lifts, hard standing, call-outs
     * @param season lay-up and recommission
     * @param calendar working days
     * @param uses kinds of use
     * @param stores what the stores sell
     */
    public Yard(
            String name,
            boolean invented,
            Currency currency,
            String taxName,
            double taxPercent,
            double labourPerHour,
            double setUpMinutes,
            Tariff tariff,
            SeasonDates season,
            WorkCalendar calendar,
            List<Use> uses,
            List<StoreItem> stores) {
        this(
                name,
                invented,
                currency,
                taxName,
                taxPercent,
                labourPerHour,
                setUpMinutes,
                tariff,
                season,
                calendar,
                uses,
                stores,
                YardUnits.METRIC);
    }

    /**
     * The same yard with other prices.
     *
     * @param inCurrency of every price
     * @param tax what tax is called
     * @param percent tax, percent
     * @param perHour price of an engineer's hour
     * @param setUp minutes of set-up at one service point
     * @param charges lifts, hard standing, call-outs
     * @return a new record
     */
    public Yard rates(Currency inCurrency, String tax, double percent, double perHour, double setUp, Tariff charges) {
        return new Yard(
                name,
                invented,
                inCurrency,
                tax,
                percent,
                perHour,
                setUp,
                charges,
                season,
                calendar,
                uses,
                stores,
                units);
    }

    /**
     * The same yard with another year.
     *
     * @param halves lay-up and recommission
     * @param days working days
     * @return a new record
     */
    public Yard year(SeasonDates halves, WorkCalendar days) {
        return new Yard(
                name,
                invented,
                currency,
                taxName,
                taxPercent,
                labourPerHour,
                setUpMinutes,
                tariff,
                halves,
                days,
                uses,
                stores,
                units);
    }

    /**
     * The same yard in other units.
     *
     * @param others the units it works in
     * @return a new record
     */
    public Yard in(YardUnits others) {
        return new Yard(
                name,
                invented,
                currency,
                taxName,
                taxPercent,
                labourPerHour,
                setUpMinutes,
                tariff,
                season,
                calendar,
                uses,
                stores,
                others);
    }

    /**
     * The same yard with other stores.
     *
     * @param items what the stores sell
     * @return a new record
     */
    public Yard stores(List<StoreItem> items) {
        return new Yard(
                name,
                invented,
                currency,
                taxName,
                taxPercent,
                labourPerHour,
                setUpMinutes,
                tariff,
                season,
                calendar,
                uses,
                items,
                units);
    }

    /**
     * The kind of use of an id.
     *
     * @param id short name
     * @return the use, empty if the yard has none of that name
     */
    public Optional<Use> use(String id) {
        return uses.stream().filter(u -> u.id().equals(id)).findFirst();
    }

    /**
     * The thing in the stores of an id.
     *
     * @param id short name
     * @return the item, empty if the yard sells none of that name
     */
    public Optional<StoreItem> storeItem(String id) {
        return stores.stream().filter(s -> s.id().equals(id)).findFirst();
    }
}
