package sternwright.app.files.kind;

import java.util.List;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Many;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Shapes;
import sternwright.yard.resource.CrewMember;
import sternwright.yard.resource.Hoist;
import sternwright.yard.resource.Resources;
import sternwright.yard.resource.SeasonPrices;
import sternwright.yard.resource.StandingClass;
import sternwright.yard.resource.StayTimes;
import sternwright.yard.resource.TidalDock;

/** What a season is planned with: {@code resources.yaml}. */
public final class ResourcesShape {
    private static final Field<TidalDock, Double> DEPTH = Field.required(
            "depth-m",
            Numbers.any().atLeast(-15).atMost(30),
            TidalDock::depthM,
            "depth of the dock below chart datum, m; negative where it dries above datum");
    private static final Field<TidalDock, Double> CLEARANCE = Field.or(
            "clearance-m",
            Numbers.notNegative().atMost(5),
            0.3,
            TidalDock::clearanceM,
            "water wanted under the keel, m");
    private static final Block<TidalDock> TIDAL = Block.of(
            "a tidal dock",
            "a lifting dock that is not deep enough at all states of the tide",
            v -> new TidalDock(v.get(DEPTH), v.get(CLEARANCE)),
            DEPTH,
            CLEARANCE);

    private static final Field<Hoist, String> HOIST_ID = Field.required("id", Shapes.id(), Hoist::id, "short name");
    private static final Field<Hoist, String> HOIST_NAME =
            Field.required("name", Shapes.text(), Hoist::name, "as people say it");
    private static final Field<Hoist, Double> MASS =
            Field.required("max-mass-kg", Numbers.positive(), Hoist::maxMassKg, "heaviest boat, kg");
    private static final Field<Hoist, Double> BEAM =
            Field.required("max-beam-m", Numbers.positive(), Hoist::maxBeamM, "widest boat, m");
    private static final Field<Hoist, Integer> LIFTS = Field.required(
            "lifts-a-day", Numbers.count(1), Hoist::liftsADay, "lifts and launches together in one working day");
    private static final Field<Hoist, TidalDock> TIDAL_FIELD = Field.optional(
            "tidal", TIDAL, Hoist::tidal, "where it needs the tide; left out where there is always water enough");
    private static final Block<Hoist> HOIST = Block.of(
            "a hoist",
            "a hoist, crane or slip",
            v -> new Hoist(
                    v.get(HOIST_ID), v.get(HOIST_NAME), v.get(MASS), v.get(BEAM), v.get(LIFTS), v.orNull(TIDAL_FIELD)),
            HOIST_ID,
            HOIST_NAME,
            MASS,
            BEAM,
            LIFTS,
            TIDAL_FIELD);

    private static final Field<StandingClass, String> STANDING_ID =
            Field.required("id", Shapes.id(), StandingClass::id, "short name");
    private static final Field<StandingClass, String> STANDING_NAME =
            Field.required("name", Shapes.text(), StandingClass::name, "as people say it");
    private static final Field<StandingClass, Double> UP_TO = Field.required(
            "up-to-length-m", Numbers.positive(), StandingClass::upToLengthM, "longest boat that fits, m");
    private static final Field<StandingClass, Integer> PLACES =
            Field.required("places", Numbers.count(0), StandingClass::places, "how many there are");
    private static final Block<StandingClass> STANDING = Block.of(
            "places",
            "places on hard standing of one length; a short boat may stand on a longer place",
            v -> new StandingClass(v.get(STANDING_ID), v.get(STANDING_NAME), v.get(UP_TO), v.get(PLACES)),
            STANDING_ID,
            STANDING_NAME,
            UP_TO,
            PLACES);

    private static final Field<Resources, List<Hoist>> HOISTS = Field.or(
            "hoists",
            Many.list(HOIST).uniqueBy(Hoist::id),
            List.of(),
            Resources::hoists,
            "what takes boats out of the water");
    private static final Field<Resources, List<StandingClass>> STANDINGS = Field.or(
            "hard-standing",
            Many.list(STANDING).uniqueBy(StandingClass::id),
            List.of(),
            Resources::standing,
            "places by length");
    private static final Field<Resources, List<CrewMember>> CREW = Field.required(
            "crew",
            Many.list(CrewShape.MEMBER).between(1, 1000).uniqueBy(CrewMember::id),
            Resources::crew,
            "people who work on boats");
    private static final Field<Resources, StayTimes> TIMES = Field.or(
            "times",
            SeasonTimesShape.TIMES,
            StayTimes.USUAL,
            Resources::times,
            "the yard's own steps; left out: common practice");
    private static final Field<Resources, SeasonPrices> PRICES = Field.or(
            "prices",
            SeasonTimesShape.PRICES,
            SeasonPrices.USUAL,
            Resources::prices,
            "what the season's wishes are worth, in the yard's currency");

    /** The whole file. */
    public static final Block<Resources> RESOURCES = Block.of(
            "the resources",
            "what a season is planned with: hoists, hard standing, crew, times and prices",
            v -> new Resources(v.get(HOISTS), v.get(STANDINGS), v.get(CREW), v.get(TIMES), v.get(PRICES)),
            HOISTS,
            STANDINGS,
            CREW,
            TIMES,
            PRICES);

    private ResourcesShape() {}
}
