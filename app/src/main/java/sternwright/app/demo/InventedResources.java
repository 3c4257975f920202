package sternwright.app.demo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import sternwright.boat.Berth;
import sternwright.boat.Boat;
import sternwright.boat.Winter;
import sternwright.history.BoatHistory;
import sternwright.history.Outcome;
import sternwright.season.dated.OwnerDate;
import sternwright.yard.SeasonDates;
import sternwright.yard.resource.Absence;
import sternwright.yard.resource.CrewMember;
import sternwright.yard.resource.Hoist;
import sternwright.yard.resource.Resources;
import sternwright.yard.resource.SeasonPrices;
import sternwright.yard.resource.StandingClass;
import sternwright.yard.resource.StayTimes;
import sternwright.yard.resource.TidalDock;

/**
 * Hoists, places, people and owners' dates of an invented yard, in proportion to its boats: for 300 boats two hoists, twenty people, and
 * as many places as boats that winter ashore and a few more. Each person is away two weeks in winter and one week at any time.
 */
final class InventedResources {
    private static final double BOATS_OF_A_SMALL_YARD = 300;
    private static final int PEOPLE = 20;
    private static final int FEWEST_PEOPLE = 4;
    private static final double SHARE_ON_SHORT_STAYS = 0.35;
    private static final double SHARE_WITH_A_DATE = 0.9;
    private static final double SHARE_LIGHT = 0.8;
    private static final int LIFTS_A_DAY = 6;
    private static final double[] LENGTHS_M = {9, 12, 15, 30};
    private static final Set<DayOfWeek> WEEK = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);
    private static final List<String> FIRST = List.of(
            "Wren", "Odo", "Isla", "Corin", "Maud", "Perran", "Tilda", "Bram", "Senna", "Jory", "Lowen", "Kitto");
    private static final List<String> LAST =
            List.of("Tallow", "Marl", "Quern", "Sedge", "Cobble", "Thole", "Rushlight", "Fenner", "Larch", "Oakum");
    private static final List<Set<String>> SKILLS = List.of(
            Set.of("mechanical"),
            Set.of("yard", "mechanical"),
            Set.of("mechanical", "drive"),
            Set.of("electrical", "mechanical"),
            Set.of("mechanical", "drive", "yard"),
            Set.of("mechanical", "drive"),
            Set.of("yard"),
            Set.of("mechanical"));

    private final SeasonDates.Window layUp;
    private final SeasonDates.Window recommission;
    private final boolean ahead;
    private final SplittableRandom random;

    InventedResources(SeasonDates season, LocalDate today, long seed) {
        layUp = season.layUpEndingFrom(today);
        recommission = season.recommissionEndingFrom(today);
        ahead = layUp.to().isBefore(recommission.to());
        random = new SplittableRandom(seed);
    }

    /** Resources for these boats. */
    Resources resources(List<Boat> boats) {
        double scale = boats.size() / BOATS_OF_A_SMALL_YARD;
        return new Resources(
                hoists(boats, (int) Math.max(1, Math.round(scale))),
                standing(boats, (int) Math.max(2, Math.round(4 * scale))),
                crew((int) Math.max(FEWEST_PEOPLE, Math.round(PEOPLE * scale))),
                StayTimes.USUAL,
                SeasonPrices.USUAL);
    }

    /** Half of the hoists lift the heaviest fifth too; the others, at a tidal dock, everything else. */
    private static List<Hoist> hoists(List<Boat> boats, int ofEach) {
        double light = Math.ceil(share(boats, SHARE_LIGHT, b -> b.hull().massKg()) / 500) * 500;
        double narrow = Math.ceil(share(boats, SHARE_LIGHT, b -> b.hull().beamM()) * 4) / 4;
        double heaviest = share(boats, 1, b -> b.hull().massKg());
        double widest = share(boats, 1, b -> b.hull().beamM());
        List<Hoist> hoists = new ArrayList<>();
        for (int h = 1; h <= ofEach; h++) {
            String number = ofEach == 1 ? "" : " " + h;
            String id = number.strip();
            hoists.add(new Hoist(
                    "travel-hoist" + id,
                    "Travel hoist" + number,
                    Math.max(60_000, heaviest),
                    Math.max(7, widest),
                    LIFTS_A_DAY,
                    null));
            hoists.add(new Hoist(
                    "creek-crane" + id, "Creek crane" + number, light, narrow, LIFTS_A_DAY, new TidalDock(-2.2, 0.3)));
        }
        return hoists;
    }

    /** The figure below which a share of the boats lie. */
    private static double share(List<Boat> boats, double share, ToDoubleFunction<Boat> figure) {
        double[] sorted = boats.stream().mapToDouble(figure).sorted().toArray();
        return sorted.length == 0 ? 1 : sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    }

    private static List<StandingClass> standing(List<Boat> boats, int spare) {
        List<StandingClass> standing = new ArrayList<>();
        for (int c = 0; c < LENGTHS_M.length; c++) {
            double upTo = LENGTHS_M[c];
            double from = c == 0 ? 0 : LENGTHS_M[c - 1];
            List<Boat> fit = boats.stream()
                    .filter(b -> b.hull().lengthM() > from && b.hull().lengthM() <= upTo)
                    .toList();
            long ashore = fit.stream().filter(b -> b.winter() == Winter.ASHORE).count();
            int forShortStays = (int) Math.ceil(SHARE_ON_SHORT_STAYS * (fit.size() - ashore));
            String name = c == 0 ? "up to 9 m" : c == 3 ? "over 15 m" : (int) from + " to " + (int) upTo + " m";
            standing.add(new StandingClass("class-" + (c + 1), name, upTo, (int) ashore + forShortStays + spare));
        }
        return standing;
    }

    private List<CrewMember> crew(int count) {
        List<CrewMember> crew = new ArrayList<>();
        Set<String> names = new HashSet<>();
        LocalDate winter = (ahead ? layUp.to() : recommission.from().minusWeeks(13)).with(DayOfWeek.MONDAY);
        for (int p = 0; p < count; p++) {
            String name = FIRST.get(p % FIRST.size()) + " " + LAST.get((p * 7 + p / FIRST.size()) % LAST.size());
            if (!names.add(name)) {
                name += " " + (p + 1);
            }
            LocalDate first = winter.plusWeeks(random.nextInt(10));
            LocalDate second = winter.minusWeeks(10).plusWeeks(random.nextInt(36));
            crew.add(new CrewMember(
                    "p" + (p + 1),
                    name,
                    SKILLS.get(p % SKILLS.size()),
                    WEEK,
                    List.of(
                            new Absence(first, first.plusDays(11), "holiday"),
                            new Absence(second, second.plusDays(4), "holiday")),
                    10,
                    30));
        }
        return crew;
    }

    /** Dates that owners have set, and boats that stand ashore already. */
    List<OwnerDate> dates(
            List<Boat> boats, Map<String, Berth> berths, Map<String, BoatHistory> histories, LocalDate today) {
        List<OwnerDate> dates = new ArrayList<>();
        for (Boat boat : boats) {
            boolean hauled = boat.winter() == Winter.ASHORE && laidUp(histories.get(boat.id()));
            if (hauled && ahead) {
                dates.add(new OwnerDate(boat.id(), OwnerDate.Kind.ASHORE_SINCE, "", today.minusDays(1), ""));
            }
            if (random.nextDouble() < SHARE_WITH_A_DATE) {
                LocalDate wanted = Triangular.WANTED.day(recommission.from(), recommission.to(), random);
                if (wanted.isAfter(today.plusWeeks(4))) {
                    dates.add(new OwnerDate(boat.id(), OwnerDate.Kind.AFLOAT_BY, "", wanted, ""));
                }
            }
            LocalDate out = released(berths.get(boat.berthId()));
            if (boat.winter() == Winter.ASHORE && ahead && !hauled && out.isAfter(today)) {
                dates.add(new OwnerDate(boat.id(), OwnerDate.Kind.OUT_FROM, "", out, ""));
            }
        }
        return dates;
    }

    /** The day from which an owner lets the boat go; early enough for the yard to lay it up before the frost. */
    private LocalDate released(@Nullable Berth berth) {
        LocalDate day = Triangular.RELEASED.day(layUp.from(), layUp.to(), random);
        MonthDay frost = berth == null ? null : berth.firstFrost();
        if (frost == null) {
            return day;
        }
        LocalDate night = frost.atYear(layUp.from().getYear());
        LocalDate last = night.isBefore(layUp.from()) ? day : night.minusWeeks(2);
        return day.isBefore(last) ? day : last;
    }

    /** Whether this lay-up's frost protection is written down. */
    private boolean laidUp(@Nullable BoatHistory history) {
        return history != null
                && history.entries().stream()
                        .anyMatch(e -> e.ruleId().equals("freeze-protect-raw-water")
                                && e.outcome() == Outcome.DONE
                                && !e.date().isBefore(layUp.from()));
    }
}
