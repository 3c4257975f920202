package sternwright.app.files.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.template.Arrangements.UsualPart;
import sternwright.boat.Arrangement;
import sternwright.boat.Boat;
import sternwright.boat.Bond;
import sternwright.boat.Cooling;
import sternwright.boat.Hull;
import sternwright.boat.HullMaterial;
import sternwright.boat.Installation;
import sternwright.boat.Owner;
import sternwright.boat.Part;
import sternwright.boat.PartCatalogue;
import sternwright.boat.PartKind;
import sternwright.boat.PartRef;
import sternwright.boat.Side;
import sternwright.boat.Winter;

/** Makes a boat from its arrangement. */
public final class BoatTemplate {
    /**
     * What is known of a new boat; null is not known.
     *
     * @param id short name
     * @param name as painted on the stern
     * @param owner whose it is
     * @param berthId where it lies
     * @param use its kind of use
     * @param winter where it spends the winter
     * @param lengthM length overall, m
     * @param beamM beam, m
     * @param draughtM draught, m
     * @param massKg mass as lifted, kg
     * @param material of the hull
     * @param arrangement how power gets to the water
     * @param cooling how the engine is cooled
     * @param twin two engines, port and starboard
     * @param engineModel as on the plate
     * @param powerKw rated power of one engine, kW
     */
    public record Known(
            String id,
            String name,
            @Nullable Owner owner,
            String berthId,
            String use,
            Winter winter,
            @Nullable Double lengthM,
            @Nullable Double beamM,
            @Nullable Double draughtM,
            @Nullable Double massKg,
            HullMaterial material,
            Arrangement arrangement,
            Cooling cooling,
            boolean twin,
            @Nullable String engineModel,
            @Nullable Double powerKw) {}

    private static final double USUAL_LENGTH_M = 10;

    private final Arrangements arrangements;
    private final PartCatalogue catalogue;

    /**
     * Makes boats from a catalogue.
     *
     * @param arrangements what each arrangement usually consists of
     * @param catalogue kinds of part with their usual metals
     */
    public BoatTemplate(Arrangements arrangements, PartCatalogue catalogue) {
        this.arrangements = arrangements;
        this.catalogue = catalogue;
    }

    /**
     * The whole boat.
     *
     * @param known what is known of it
     * @return the boat, the rest guessed or left out
     */
    public Boat boat(Known known) {
        List<Installation> installations = known.twin()
                ? List.of(installation("port", Side.PORT, known), installation("starboard", Side.STARBOARD, known))
                : List.of(installation("main", Side.CENTRELINE, known));
        List<Bond> bonds = new ArrayList<>();
        installations.forEach(i -> bonds.addAll(bonds(i)));
        return new Boat(
                known.id(),
                known.name(),
                known.owner() == null ? new Owner("not known", null) : known.owner(),
                known.berthId(),
                known.use(),
                known.winter(),
                hull(known),
                installations,
                bonds,
                null,
                null);
    }

    /** Proportions of common yachts and motor boats; every one is marked as assumed where it was not given. */
    private static Hull hull(Known known) {
        double length = or(known.lengthM(), USUAL_LENGTH_M);
        return new Hull(
                length,
                or(known.beamM(), tenth(0.33 * length)),
                or(known.draughtM(), tenth(0.16 * length)),
                or(known.massKg(), Math.rint(0.055 * length * length * length) * 100),
                known.material());
    }

    private static double or(@Nullable Double value, double guess) {
        return value == null ? guess : value;
    }

    private static double tenth(double value) {
        return Math.rint(value * 10) / 10;
    }

    /**
     * One installation, as an engine added to a boat would have it.
     *
     * @param id its short name
     * @param side where it sits
     * @param known arrangement, cooling, model and power
     * @return the installation with all its usual parts
     */
    public Installation installation(String id, Side side, Known known) {
        return new Installation(
                id,
                side,
                known.arrangement(),
                known.cooling(),
                known.engineModel(),
                known.powerKw(),
                parts(known.arrangement(), known.cooling()));
    }

    /**
     * The usual parts of an installation.
     *
     * @param arrangement how power gets to the water
     * @param cooling how the engine is cooled
     * @return parts with usual metals and guessed areas
     */
    public List<Part> parts(Arrangement arrangement, Cooling cooling) {
        List<UsualPart> usual = arrangements.parts().stream()
                .filter(p -> p.of(arrangement, cooling))
                .toList();
        List<String> ids = usual.stream().map(UsualPart::id).toList();
        return usual.stream().map(u -> part(u, ids)).toList();
    }

    private Part part(UsualPart usual, List<String> ids) {
        boolean wet = usual.wettedAreaM2() > 0;
        String metal = catalogue.find(usual.kind()).map(PartKind::usualMetal).orElse(null);
        return new Part(
                usual.id(),
                usual.kind(),
                ids.contains(usual.parent()) ? usual.parent() : null,
                null,
                null,
                null,
                1,
                metal,
                wet ? usual.wettedAreaM2() : null,
                usual.massKg() > 0 ? usual.massKg() : null,
                wet ? usual.coatedShare() : null,
                Set.of(),
                Map.of());
    }

    /**
     * The usual bonds of an installation.
     *
     * @param installation with its parts
     * @return bonds between parts that are there
     */
    public List<Bond> bonds(Installation installation) {
        return arrangements.bonds().stream()
                .filter(b -> b.arrangements().isEmpty() || b.arrangements().contains(installation.arrangement()))
                .filter(b -> installation.part(b.from()).isPresent()
                        && installation.part(b.to()).isPresent())
                .map(b -> new Bond(
                        new PartRef(installation.id(), b.from()),
                        new PartRef(installation.id(), b.to()),
                        null,
                        b.never()))
                .toList();
    }
}
