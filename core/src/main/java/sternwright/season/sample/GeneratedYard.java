package sternwright.season.sample;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import sternwright.season.Axis;
import sternwright.season.Days;
import sternwright.season.Hoist;
import sternwright.season.LiftClass;
import sternwright.season.PlaceClass;
import sternwright.season.Technician;
import sternwright.season.Yard;

/** The hoists, places and people of an invented yard, in proportion to its boats. */
final class GeneratedYard {
    private static final int WEEKS_AT_CHRISTMAS = 2;
    private static final int FIRST_WEEK_AFTER_CHRISTMAS = 16;
    private static final double DAYS_BETWEEN_SPRING_TIDES = 14.765;
    private static final double DAYS_OF_WATER_EACH_SIDE = 3.5;
    private static final List<List<Integer>> SKILLS = List.of(
            List.of(GeneratedSeason.ENGINE),
            List.of(GeneratedSeason.ENGINE),
            List.of(GeneratedSeason.ENGINE, GeneratedSeason.DRIVE),
            List.of(GeneratedSeason.ENGINE, GeneratedSeason.DRIVE),
            List.of(GeneratedSeason.DRIVE, GeneratedSeason.HULL),
            List.of(GeneratedSeason.HULL),
            List.of(GeneratedSeason.HULL),
            List.of(GeneratedSeason.ELECTRICS, GeneratedSeason.ENGINE));

    private GeneratedYard() {}

    static Yard of(double scale, int[] boatsOfClass, Random random) {
        Axis axis = GeneratedSeason.AXIS;
        int crew = (int) Math.round(8 * scale);
        int spare = (int) Math.round(2 * scale);
        List<PlaceClass> places = List.of(
                new PlaceClass("up to 9 m", boatsOfClass[0] + 2 * spare),
                new PlaceClass("9 to 12 m", boatsOfClass[1] + spare),
                new PlaceClass("over 12 m", boatsOfClass[2] + spare));
        return new Yard(
                axis,
                List.of("engine", "drive", "hull", "electrics"),
                crew(axis, crew, random),
                Collections.nCopies(axis.weeks(), spare),
                (int) Math.floor(0.75 * crew),
                hoists((int) Math.round(scale)),
                liftClasses((int) Math.round(scale)),
                places,
                List.of(),
                List.of(springTides(axis)));
    }

    private static List<Technician> crew(Axis axis, int count, Random random) {
        List<Technician> crew = new ArrayList<>();
        for (int t = 0; t < count; t++) {
            List<Integer> away = new ArrayList<>();
            int winter = 12 + random.nextInt(10);
            weekAway(axis, winter, away);
            weekAway(axis, winter + 1, away);
            weekAway(axis, random.nextInt(43), away);
            crew.add(new Technician("Technician " + (t + 1), SKILLS.get(t % SKILLS.size()), away));
        }
        return crew;
    }

    private static void weekAway(Axis axis, int week, List<Integer> away) {
        for (int day = 0; day < axis.daysPerWeek(); day++) {
            away.add(week * axis.daysPerWeek() + day);
        }
    }

    private static List<Hoist> hoists(int ofEach) {
        List<Hoist> hoists = new ArrayList<>();
        List<Integer> slots = Collections.nCopies(GeneratedSeason.QUARTERS_PER_DAY, 1);
        for (int h = 0; h < 2 * ofEach; h++) {
            hoists.add(new Hoist((h < ofEach ? "Big hoist " : "Small hoist ") + (h % ofEach + 1), slots, List.of()));
        }
        return hoists;
    }

    private static List<LiftClass> liftClasses(int ofEach) {
        List<Integer> big = new ArrayList<>();
        List<Integer> all = new ArrayList<>();
        for (int h = 0; h < 2 * ofEach; h++) {
            all.add(h);
            if (h < ofEach) {
                big.add(h);
            }
        }
        return List.of(new LiftClass("up to 12 t", all), new LiftClass("over 12 t", big));
    }

    private static Days springTides(Axis axis) {
        List<Integer> days = new ArrayList<>();
        for (int day = 0; day < axis.days(); day++) {
            int week = day / axis.daysPerWeek();
            int calendarWeek = week < FIRST_WEEK_AFTER_CHRISTMAS ? week : week + WEEKS_AT_CHRISTMAS;
            double phase = (7 * calendarWeek + day % axis.daysPerWeek()) % DAYS_BETWEEN_SPRING_TIDES;
            if (Math.min(phase, DAYS_BETWEEN_SPRING_TIDES - phase) <= DAYS_OF_WATER_EACH_SIDE) {
                days.add(day);
            }
        }
        return new Days("spring tides", days);
    }
}
