package sternwright.season.dated;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Currency;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Hull;
import sternwright.boat.HullMaterial;
import sternwright.boat.Owner;
import sternwright.boat.PartRef;
import sternwright.boat.ShorePower;
import sternwright.boat.Water;
import sternwright.boat.Winter;
import sternwright.due.ClauseKind;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.measure.Money;
import sternwright.service.AppliesTo;
import sternwright.service.Half;
import sternwright.service.Interval;
import sternwright.service.Occasion;
import sternwright.service.Place;
import sternwright.service.Rule;
import sternwright.service.RuleInForce;
import sternwright.service.Scope;
import sternwright.visit.planned.PlannedVisit;
import sternwright.visit.planned.PlannedWork;
import sternwright.yard.LengthBand;
import sternwright.yard.SeasonDates;
import sternwright.yard.Tariff;
import sternwright.yard.WorkCalendar;
import sternwright.yard.Yard;
import sternwright.yard.resource.Absence;
import sternwright.yard.resource.CrewMember;
import sternwright.yard.resource.HighWater;
import sternwright.yard.resource.Hoist;
import sternwright.yard.resource.Resources;
import sternwright.yard.resource.SeasonPrices;
import sternwright.yard.resource.StandingClass;
import sternwright.yard.resource.StayTimes;
import sternwright.yard.resource.TidalDock;
import sternwright.yard.resource.TideTable;

/** Invented yards with boats and their planned visits, drawn from a seed. */
public final class InventedSeason {
    /** First day of every invented season. */
    public static final LocalDate FROM = LocalDate.of(2026, 9, 1);

    private static final Currency EUR = Currency.getInstance("EUR");
    private static final Source PRACTICE = new Source("service practice", "", Standing.COMMON_PRACTICE);
    private static final Set<DayOfWeek> WEEK = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);

    private InventedSeason() {}

    /** A season of so many boats. */
    public static SeasonRequest of(int boats, long seed) {
        Random random = new Random(seed);
        List<SeasonBoat> visits = new ArrayList<>();
        List<OwnerDate> dates = new ArrayList<>();
        for (int b = 1; b <= boats; b++) {
            SeasonBoat boat = boat(b, random);
            visits.add(boat);
            if (random.nextDouble() < 0.4) {
                LocalDate wanted = LocalDate.of(2027, 3, 20).plusDays(random.nextInt(60));
                dates.add(new OwnerDate(boat.boat().id(), OwnerDate.Kind.AFLOAT_BY, "", wanted, ""));
            }
        }
        return new SeasonRequest(
                yard(),
                resources(boats, random),
                tides(),
                visits,
                dates,
                List.of(),
                List.of(),
                List.of(),
                FROM,
                LocalDate.of(2027, 7, 16),
                FROM);
    }

    /** The yard: two days off at Christmas and two at New Year. */
    public static Yard yard() {
        Tariff tariff = new Tariff(List.of(new LengthBand(20, 480)), 9, 65, 30, 150, 95);
        Set<LocalDate> holidays = Set.of(
                LocalDate.of(2026, 12, 24),
                LocalDate.of(2026, 12, 25),
                LocalDate.of(2026, 12, 31),
                LocalDate.of(2027, 1, 1));
        return new Yard(
                "Invented Yard",
                true,
                EUR,
                "VAT",
                20,
                72,
                15,
                tariff,
                SeasonDates.NORTHERN,
                new WorkCalendar(WEEK, holidays),
                List.of(),
                List.of());
    }

    private static SeasonBoat boat(int number, Random random) {
        double length = 6 + 9 * random.nextDouble();
        Hull hull = new Hull(
                length, 2 + length * 0.15, 0.8 + random.nextDouble() * 1.2, Math.pow(length, 3) * 6, HullMaterial.GRP);
        Winter winter = random.nextDouble() < 0.7 ? Winter.ASHORE : Winter.AFLOAT;
        String id = String.format("boat-%03d", number);
        Boat boat = new Boat(
                id,
                "Boat " + number,
                new Owner("Owner " + number, null),
                "quay",
                "x",
                winter,
                hull,
                List.of(),
                List.of(),
                null,
                null);
        List<PlannedVisit> visits = new ArrayList<>();
        Place place = winter == Winter.ASHORE ? Place.ASHORE : Place.AFLOAT;
        LocalDate from = FROM.plusDays(10 + random.nextInt(40));
        List<PlannedWork> layUp = new ArrayList<>(List.of(
                frost(), work("oil-" + number, "change oil", 60 + random.nextInt(200), Set.of("mechanical"), place)));
        if (random.nextDouble() < 0.5) {
            layUp.add(work(
                    "drive-" + number,
                    "drive service",
                    120 + random.nextInt(600),
                    Set.of("mechanical", "drive"),
                    place));
        }
        if (random.nextDouble() < 0.3) {
            layUp.add(work("battery-" + number, "test batteries", 60, Set.of("electrical"), place));
        }
        visits.add(visit(id, from, LocalDate.of(2026, 11, 27), place, layUp));
        visits.add(visit(
                id,
                LocalDate.of(2027, 3, 1),
                LocalDate.of(2027, 5, 14),
                place,
                List.of(work(
                        "impeller-" + number,
                        "renew impeller",
                        90 + random.nextInt(150),
                        Set.of("mechanical"),
                        place))));
        visits.add(visit(
                id, LocalDate.of(2027, 4, 1), LocalDate.of(2027, 5, 28), Place.AFLOAT, List.of(align(), trial())));
        if (winter == Winter.AFLOAT && random.nextDouble() < 0.3) {
            LocalDate lift = LocalDate.of(2027, 6, 1);
            visits.add(visit(
                    id,
                    lift,
                    lift.plusDays(20),
                    Place.ASHORE,
                    List.of(work("anode-" + number, "renew anodes", 90, Set.of("mechanical"), Place.ASHORE))));
        }
        return new SeasonBoat(boat, berth(), visits);
    }

    /** The berth of every boat: it freezes from 12 November. */
    public static Berth berth() {
        return new Berth(
                "quay",
                "Invented Quay",
                54,
                new Water(30.0, null, List.of()),
                MonthDay.of(11, 12),
                MonthDay.of(3, 31),
                false,
                ShorePower.NONE);
    }

    private static PlannedVisit visit(String boat, LocalDate from, LocalDate to, Place place, List<PlannedWork> works) {
        double minutes = works.stream().mapToDouble(PlannedWork::minutes).sum() + 15;
        Money zero = Money.zero(EUR);
        return new PlannedVisit(
                boat, from, to, place, place == Place.ASHORE, works, minutes, List.of(), List.of(), zero, zero);
    }

    private static PlannedWork frost() {
        Interval interval = new Interval(null, null, null, null, Occasion.EVERY_LAY_UP_BEFORE_FROST, List.of(), null);
        return work(
                rule("freeze-protect", "freeze-protect", 60, Set.of("mechanical"), Place.EITHER, interval, Set.of()));
    }

    private static PlannedWork align() {
        return work(rule(
                "align",
                "align the coupling",
                60,
                Set.of("mechanical", "drive"),
                Place.AFLOAT,
                Interval.of(24, null),
                Set.of("settled-afloat")));
    }

    private static PlannedWork trial() {
        Interval interval = new Interval(null, null, null, null, Occasion.EVERY_RECOMMISSION, List.of(), null);
        return work(rule(
                "trial", "recommission and sea trial", 90, Set.of("mechanical"), Place.AFLOAT, interval, Set.of()));
    }

    private static PlannedWork work(String id, String what, double minutes, Set<String> skills, Place place) {
        return work(rule(id, what, minutes, skills, place, Interval.of(12, null), Set.of()));
    }

    private static PlannedWork work(Rule rule) {
        Money zero = Money.zero(EUR);
        return new PlannedWork(
                new PartRef("main", "engine"),
                "engine",
                new RuleInForce(rule, Scope.GENERIC, PRACTICE),
                FROM,
                ClauseKind.MONTHS,
                "due",
                "engine",
                rule.minutes(),
                zero,
                List.of(),
                zero);
    }

    private static Rule rule(
            String id,
            String work,
            double minutes,
            Set<String> skills,
            Place place,
            Interval interval,
            Set<String> tags) {
        return new Rule(
                id,
                work,
                "",
                "",
                new AppliesTo(Set.of(), Set.of(), Set.of(), Set.of(), Set.of()),
                interval,
                Half.ANY,
                place,
                false,
                minutes,
                null,
                skills,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                false,
                false,
                List.of(),
                List.of(),
                tags,
                0,
                0,
                PRACTICE);
    }

    /** Two hoists, one of them tidal; places for most boats; a crew in proportion. */
    public static Resources resources(int boats, Random random) {
        List<CrewMember> crew = new ArrayList<>();
        int people = Math.max(4, boats / 10);
        List<Set<String>> skills = List.of(
                Set.of("mechanical", "yard"),
                Set.of("mechanical", "drive"),
                Set.of("mechanical", "electrical"),
                Set.of("yard"));
        for (int p = 0; p < people; p++) {
            LocalDate holiday = FROM.plusDays(random.nextInt(280));
            Set<DayOfWeek> days = p % 4 == 3 ? EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.THURSDAY) : WEEK;
            crew.add(new CrewMember(
                    "p" + p,
                    "Person " + p,
                    skills.get(p % 4),
                    days,
                    List.of(new Absence(holiday, holiday.plusDays(11), "holiday")),
                    8,
                    30));
        }
        List<Hoist> hoists = List.of(
                new Hoist("big", "Big hoist", 30_000, 6, 4, null),
                new Hoist("slip", "Tidal slip", 8_000, 4, 3, new TidalDock(-1.5, 0.3)));
        List<StandingClass> standing = List.of(
                new StandingClass("short", "up to 9 m", 9, boats / 2),
                new StandingClass("middle", "up to 12 m", 12, boats / 3 + 1),
                new StandingClass("long", "over 12 m", 20, boats / 3 + 1));
        return new Resources(hoists, standing, crew, StayTimes.USUAL, SeasonPrices.USUAL);
    }

    /** Two high waters a day, springs every 14.77 days. */
    public static TideTable tides() {
        List<HighWater> waters = new ArrayList<>();
        for (int d = 0; d < 420; d++) {
            double springs = Math.cos(2 * Math.PI * d / 14.765);
            LocalTime at = LocalTime.of(0, 20).plusMinutes(d * 50L % 740);
            waters.add(new HighWater(FROM.minusDays(10).plusDays(d).atTime(at), 4 + springs));
            waters.add(new HighWater(FROM.minusDays(10).plusDays(d).atTime(at.plusHours(11)), 4 + 0.95 * springs));
        }
        return new TideTable(waters);
    }
}
