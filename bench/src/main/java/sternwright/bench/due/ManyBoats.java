package sternwright.bench.due;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Arrangement;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Cooling;
import sternwright.boat.Hull;
import sternwright.boat.HullMaterial;
import sternwright.boat.Installation;
import sternwright.boat.Owner;
import sternwright.boat.Part;
import sternwright.boat.PartCatalogue;
import sternwright.boat.PartKind;
import sternwright.boat.PartRef;
import sternwright.boat.ShorePower;
import sternwright.boat.Side;
import sternwright.boat.Water;
import sternwright.boat.Winter;
import sternwright.due.BoatCase;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.history.BoatHistory;
import sternwright.history.MeterReading;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.history.TakenReading;
import sternwright.measure.MonthlyShare;
import sternwright.service.AppliesTo;
import sternwright.service.EveryNth;
import sternwright.service.Half;
import sternwright.service.Interval;
import sternwright.service.Modifier;
import sternwright.service.Occasion;
import sternwright.service.Place;
import sternwright.service.Programme;
import sternwright.service.Rule;
import sternwright.service.RuleBook;
import sternwright.service.Trigger;
import sternwright.yard.Use;

/** Invented boats of forty parts and sixty rules each, eight years of history, from a seed. */
final class ManyBoats {
    static final int PARTS = 40;
    static final int RULES = 60;
    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Source PRACTICE = new Source("bench", "", Standing.COMMON_PRACTICE);
    private static final int[] MONTHS = {6, 12, 12, 12, 24, 24, 36, 60};
    private static final double[] HOURS = {0, 0, 100, 200, 250, 500, 1000};
    private static final MonthlyShare SHARE =
            new MonthlyShare(List.of(.01, .01, .03, .08, .13, .17, .20, .19, .11, .05, .01, .01));
    private static final Use USE = new Use("cruising", "cruising", 120, 0.5, SHARE, false);
    private static final Berth BERTH = new Berth(
            "b",
            "invented",
            54,
            new Water(35.0, null, Collections.nCopies(12, 12.0)),
            MonthDay.of(11, 15),
            MonthDay.of(4, 1),
            false,
            ShorePower.EARTHED);

    /** Names are shared between boats, as a store that reads them once shares them. */
    private static final List<String> PART_IDS = names("p", PARTS);

    private static final List<String> KINDS = names("kind", PARTS);
    private static final List<String> RULE_IDS = names("rule", RULES);

    private ManyBoats() {}

    private static List<String> names(String stem, int count) {
        return java.util.stream.IntStream.range(0, count)
                .mapToObj(i -> stem + i)
                .toList();
    }

    /** Sixty rules over forty kinds of part: months, hours, life, every n-th, occasions, follow-ons, findings. */
    static RuleBook rules(long seed) {
        Random random = new Random(seed);
        List<Rule> rules = new ArrayList<>();
        for (int i = 0; i < RULES; i++) {
            rules.add(rule("rule" + i, "kind" + i % PARTS, interval(i, random), random));
        }
        List<PartKind> kinds = new ArrayList<>();
        for (int i = 0; i < PARTS; i++) {
            kinds.add(new PartKind("kind" + i, "kind " + i, "point" + i % 6, false, null, null, Set.of()));
        }
        return RuleBook.of(
                new Programme("bench", "bench", true, rules, List.of(), List.of()),
                List.of(),
                new PartCatalogue(kinds));
    }

    private static Interval interval(int i, Random random) {
        Integer months = MONTHS[random.nextInt(MONTHS.length)];
        double hours = HOURS[random.nextInt(HOURS.length)];
        Double orHours = hours > 0 ? hours : null;
        return switch (i % 12) {
            case 3 -> new Interval(null, null, 84 + random.nextInt(60), null, null, List.of(), null);
            case 5 -> new Interval(null, null, null, null, Occasion.EVERY_LAY_UP_BEFORE_FROST, List.of(), null);
            case 7 -> new Interval(months, orHours, null, null, null, List.of("rule" + random.nextInt(RULES)), null);
            case 11 ->
                i >= PARTS
                        ? new Interval(null, null, null, new EveryNth("rule" + (i - PARTS), 3), null, List.of(), null)
                        : Interval.of(months, orHours);
            default -> Interval.of(months, orHours);
        };
    }

    private static Rule rule(String id, String kind, Interval interval, Random random) {
        Half half = Half.values()[random.nextInt(3)];
        return new Rule(
                id,
                id,
                "",
                "",
                new AppliesTo(Set.of(kind), Set.of(), Set.of(), Set.of(), Set.of()),
                interval,
                half,
                Place.EITHER,
                false,
                60,
                null,
                Set.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                random.nextInt(6) == 0,
                interval.lifeMonths() != null,
                List.of(new Modifier("condition:contaminated", 0.5, null, "bench", PRACTICE)),
                List.of(new Trigger("remaining", 50.0, null, "bench")),
                Set.of("tag" + random.nextInt(5)),
                0.5,
                0.1,
                PRACTICE);
    }

    static List<BoatCase> boats(int count, long seed) {
        Random random = new Random(seed);
        List<BoatCase> boats = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            boats.add(boat("boat" + i, random));
        }
        return boats;
    }

    private static BoatCase boat(String id, Random random) {
        List<Part> parts = new ArrayList<>(PARTS);
        List<ServiceEntry> entries = new ArrayList<>();
        double annual = 40 + random.nextInt(300);
        for (int p = 0; p < PARTS; p++) {
            LocalDate fitted = random.nextInt(10) == 0 ? null : TODAY.minusDays(random.nextInt(3000));
            parts.add(part(p, fitted));
            PartRef ref = new PartRef("main", PART_IDS.get(p));
            for (int r = p; r < RULES; r += PARTS) {
                addHistory(entries, ref, RULE_IDS.get(r), annual, random);
            }
        }
        List<MeterReading> meter = new ArrayList<>();
        for (int y = 8; y >= 0; y--) {
            meter.add(MeterReading.of(TODAY.minusYears(y).minusDays(20), "main", annual * (8 - y)));
        }
        Installation main =
                new Installation("main", Side.CENTRELINE, Arrangement.SHAFT, Cooling.FRESH_WATER, null, null, parts);
        Boat boat = new Boat(
                id,
                id,
                new Owner("nobody", null),
                "b",
                "cruising",
                Winter.ASHORE,
                new Hull(10, 3, 1.5, 5000, HullMaterial.GRP),
                List.of(main),
                List.of(),
                null,
                null);
        return new BoatCase(boat, BERTH, USE, new BoatHistory(id, entries, meter), Map.of());
    }

    private static Part part(int p, @Nullable LocalDate fitted) {
        Part plain = Part.of(PART_IDS.get(p), KINDS.get(p));
        return fitted == null ? plain : plain.fitted(fitted, null);
    }

    private static void addHistory(List<ServiceEntry> entries, PartRef ref, String rule, double annual, Random random) {
        for (int y = 1 + random.nextInt(8); y > 0; y -= 1 + random.nextInt(3)) {
            LocalDate date = TODAY.minusYears(y).plusDays(random.nextInt(300));
            @Nullable Double hours = random.nextInt(3) == 0 ? null : annual * (8 - y + 0.5);
            List<TakenReading> readings = random.nextInt(10) == 0
                    ? List.of(new TakenReading("remaining", random.nextInt(100), "%"))
                    : List.of();
            entries.add(new ServiceEntry(date, ref, rule, Outcome.DONE, hours, "nobody", readings, ""));
        }
    }
}
