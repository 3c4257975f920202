package sternwright.due;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
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
import sternwright.boat.PartRef;
import sternwright.boat.ShorePower;
import sternwright.boat.Side;
import sternwright.boat.Water;
import sternwright.boat.Winter;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.history.BoatHistory;
import sternwright.history.MeterReading;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;
import sternwright.history.TakenReading;
import sternwright.measure.MonthlyShare;
import sternwright.service.AppliesTo;
import sternwright.service.Half;
import sternwright.service.Interval;
import sternwright.service.Modifier;
import sternwright.service.Place;
import sternwright.service.Rule;
import sternwright.service.RuleInForce;
import sternwright.service.Scope;
import sternwright.service.Trigger;
import sternwright.yard.SeasonDates;
import sternwright.yard.Use;

/** An invented boat with one engine, to which a test adds rules, parts and history. */
final class OneBoat {
    static final Source PRACTICE = new Source("service practice", "", Standing.COMMON_PRACTICE);
    static final MonthlyShare SUMMER =
            new MonthlyShare(List.of(.01, .01, .03, .08, .13, .17, .20, .19, .11, .05, .01, .01));

    private final List<Part> parts = new ArrayList<>();
    private final List<RuleOn> rules = new ArrayList<>();
    private final List<ServiceEntry> entries = new ArrayList<>();
    private final List<MeterReading> meter = new ArrayList<>();
    private boolean hot;
    private boolean heavy;
    private boolean southern;

    private record RuleOn(String kind, Rule rule) {}

    OneBoat part(Part part) {
        parts.add(part);
        return this;
    }

    OneBoat rule(String kind, Rule rule) {
        rules.add(new RuleOn(kind, rule));
        return this;
    }

    OneBoat done(String date, String part, String rule, @Nullable Double hours) {
        entries.add(ServiceEntry.done(LocalDate.parse(date), new PartRef("main", part), rule, hours));
        return this;
    }

    OneBoat entry(String date, String part, String rule, Outcome outcome, TakenReading... readings) {
        entries.add(new ServiceEntry(
                LocalDate.parse(date),
                new PartRef("main", part),
                rule,
                outcome,
                null,
                "tester",
                Arrays.asList(readings),
                ""));
        return this;
    }

    OneBoat meter(String date, double hours) {
        meter.add(MeterReading.of(LocalDate.parse(date), "main", hours));
        return this;
    }

    OneBoat hotMarina() {
        hot = true;
        return this;
    }

    OneBoat heavyUse() {
        heavy = true;
        return this;
    }

    OneBoat south() {
        southern = true;
        return this;
    }

    List<Due> on(String today) {
        Berth berth = new Berth(
                "b",
                "invented berth",
                southern ? -36 : 54,
                new Water(35.0, null, Collections.nCopies(12, 12.0)),
                MonthDay.of(southern ? Month.MAY : Month.NOVEMBER, 15),
                MonthDay.of(southern ? Month.SEPTEMBER : Month.APRIL, 1),
                hot,
                ShorePower.EARTHED);
        Installation main = new Installation(
                "main", Side.CENTRELINE, Arrangement.SAILDRIVE, Cooling.FRESH_WATER, null, null, parts);
        Boat boat = new Boat(
                "b1",
                "Invented",
                new Owner("Nobody", null),
                "b",
                "cruising",
                Winter.ASHORE,
                new Hull(10, 3, 1.5, 5000, HullMaterial.GRP),
                List.of(main),
                List.of(),
                null,
                null);
        return DueList.of(
                boat,
                berth,
                new Use("cruising", "cruising", 120, 0.5, SUMMER, heavy),
                southern ? SeasonDates.SOUTHERN : SeasonDates.NORTHERN,
                this::inForce,
                new BoatHistory("b1", entries, meter),
                Map.of(),
                LocalDate.parse(today));
    }

    Due the(String rule, String today) {
        return on(today).stream()
                .filter(d -> d.rule().id().equals(rule))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no due entry for " + rule));
    }

    private List<RuleInForce> inForce(Boat boat, Installation installation, Part part) {
        return rules.stream()
                .filter(r -> r.kind.equals(part.kind()))
                .map(r -> new RuleInForce(r.rule, Scope.GENERIC, PRACTICE))
                .toList();
    }

    static Rule rule(String id, Interval interval) {
        return rule(id, interval, Half.ANY, false, false, List.of(), List.of(), Set.of());
    }

    static Rule rule(
            String id,
            Interval interval,
            Half half,
            boolean safety,
            boolean renews,
            List<Modifier> modifiers,
            List<Trigger> triggers,
            Set<String> tags) {
        return new Rule(
                id,
                id.replace('-', ' '),
                "",
                "",
                new AppliesTo(Set.of(), Set.of(), Set.of(), Set.of(), Set.of()),
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
                safety,
                renews,
                modifiers,
                triggers,
                tags,
                0.5,
                0.1,
                PRACTICE);
    }
}
