package sternwright.app.files.kind;

import java.time.LocalTime;
import java.util.Set;
import java.util.function.Function;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Many;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shapes;
import sternwright.yard.resource.SeasonPrices;
import sternwright.yard.resource.StayTimes;

/** The yard's own steps and what the season's wishes are worth, as the resources' file says them. */
final class SeasonTimesShape {
    private static final StayTimes T = StayTimes.USUAL;
    private static final SeasonPrices P = SeasonPrices.USUAL;

    private static final Field<StayTimes, LocalTime> BEGINS = Field.or(
            "begins",
            Shapes.parsedText(
                    "a time of day such as 08:00",
                    "[0-2][0-9]:[0-5][0-9]",
                    LocalTime::parse,
                    "Write hours and minutes as two digits each, in quotes: \"08:00\"."),
            T.begins(),
            StayTimes::begins,
            "when the working day begins");
    private static final Field<StayTimes, Double> HOURS = Field.or(
            "hours-a-day",
            Numbers.positive().atMost(16),
            T.hoursADay(),
            StayTimes::hoursADay,
            "hours of a working day; works are planned in quarters of it");
    private static final Field<StayTimes, Double> WASH = Field.or(
            "wash-and-inspect-minutes",
            Numbers.positive().atMost(2400),
            T.washMinutes(),
            StayTimes::washMinutes,
            "wash and inspect after the lift, minutes");
    private static final Field<StayTimes, Set<String>> WASH_SKILLS =
            Field.or("wash-skills", Many.set(Shapes.id()), T.washSkills(), StayTimes::washSkills, "what washing needs");
    private static final Field<StayTimes, Integer> WASH_WITHIN = days(
            "wash-within-days", 0, T.washWithinDays(), StayTimes::washWithinDays, "working days from lift to wash");
    private static final Field<StayTimes, Integer> BEFORE_LAUNCH = days(
            "before-launch-days",
            1,
            T.beforeLaunchDays(),
            StayTimes::beforeLaunchDays,
            "most working days from recommission to launch");
    private static final Field<StayTimes, Integer> SHORT_STAY = days(
            "short-stay-days",
            1,
            T.shortStayDays(),
            StayTimes::shortStayDays,
            "most working days ashore beyond the work itself in a visit that is not a winter");
    private static final Field<StayTimes, Integer> EARLY = days(
            "launch-early-days",
            1,
            T.launchEarlyDays(),
            StayTimes::launchEarlyDays,
            "most working days before the owner's date on which a boat is launched");
    private static final Field<StayTimes, Integer> SETTLING = days(
            "settling-days",
            1,
            T.settlingDays(),
            StayTimes::settlingDays,
            "working days afloat before coupling alignment");
    private static final Field<StayTimes, Integer> TRIAL = days(
            "trial-within-days",
            1,
            T.trialWithinDays(),
            StayTimes::trialWithinDays,
            "working days after launch and settling by which alignment and sea trial are done");

    static final Block<StayTimes> TIMES = Block.of(
            "the times",
            "how long the yard's own steps take and how far apart they may lie",
            v -> new StayTimes(
                    v.get(BEGINS),
                    v.get(HOURS),
                    v.get(WASH),
                    v.get(WASH_SKILLS),
                    v.get(WASH_WITHIN),
                    v.get(BEFORE_LAUNCH),
                    v.get(SHORT_STAY),
                    v.get(EARLY),
                    v.get(SETTLING),
                    v.get(TRIAL)),
            BEGINS,
            HOURS,
            WASH,
            WASH_SKILLS,
            WASH_WITHIN,
            BEFORE_LAUNCH,
            SHORT_STAY,
            EARLY,
            SETTLING,
            TRIAL);

    private static final Field<SeasonPrices, Double> FROST = price(
            "frost-late-per-day",
            P.frostLatePerDay(),
            SeasonPrices::frostLatePerDay,
            "a boat not safe against frost by its berth's first frost, for each working day");
    private static final Field<SeasonPrices, Double> LATE = price(
            "late-per-day",
            P.latePerDay(),
            SeasonPrices::latePerDay,
            "work or launch after its date, for each working day");
    private static final Field<SeasonPrices, Double> EARLY_PRICE = price(
            "early-per-day",
            P.earlyPerDay(),
            SeasonPrices::earlyPerDay,
            "a boat launched before the owner wants it, for each working day");
    private static final Field<SeasonPrices, Double> MOVED = price(
            "promise-moved", P.promiseMoved(), SeasonPrices::promiseMoved, "a promised date that moves to another day");
    private static final Field<SeasonPrices, Double> MOVED_DAY = price(
            "promise-per-day",
            P.promisePerDay(),
            SeasonPrices::promisePerDay,
            "the same for each working day it moves");
    private static final Field<SeasonPrices, Double> UNEVEN = price(
            "uneven-per-hand",
            P.unevenPerHand(),
            SeasonPrices::unevenPerHand,
            "each hand at work at once above the usual crew, for each week");
    private static final Field<SeasonPrices, Double> HAND_WEEK = Field.optional(
            "overtime-per-hand-week",
            Numbers.positive(),
            SeasonPrices::overtimePerHandWeek,
            "one extra person for a week; left out: from the crew's overtime prices");
    private static final Field<SeasonPrices, Double> EVEN = Field.or(
            "even-share",
            Numbers.notNegative().atMost(1),
            P.evenShare(),
            SeasonPrices::evenShare,
            "share of the crew that the yard counts as an even week, 0 to 1");

    static final Block<SeasonPrices> PRICES = Block.of(
            "the prices",
            "what the season's wishes are worth; only their proportions move the plan",
            v -> new SeasonPrices(
                    v.get(FROST),
                    v.get(LATE),
                    v.get(EARLY_PRICE),
                    v.get(MOVED),
                    v.get(MOVED_DAY),
                    v.get(UNEVEN),
                    v.orNull(HAND_WEEK),
                    v.get(EVEN)),
            FROST,
            LATE,
            EARLY_PRICE,
            MOVED,
            MOVED_DAY,
            UNEVEN,
            HAND_WEEK,
            EVEN);

    private SeasonTimesShape() {}

    private static Field<StayTimes, Integer> days(
            String name, int least, int usual, Function<StayTimes, Integer> getter, String meaning) {
        return Field.or(name, Numbers.count(least), usual, getter::apply, meaning);
    }

    private static Field<SeasonPrices, Double> price(
            String name, double usual, Function<SeasonPrices, Double> getter, String meaning) {
        return Field.or(name, Numbers.notNegative(), usual, getter::apply, meaning);
    }
}
