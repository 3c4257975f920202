package sternwright.app.command.register;

import java.io.IOException;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.desk.register.NewBoat;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.template.BoatTemplate;
import sternwright.boat.Arrangement;
import sternwright.boat.Cooling;
import sternwright.boat.HullMaterial;
import sternwright.boat.Owner;
import sternwright.boat.Winter;

/** A new boat. */
@Command(
        name = "boat",
        description = "Write a boat's file: every part her arrangement usually has, guesses marked as assumed.",
        sortOptions = false)
public final class NewBoatCommand extends Deed {
    @Option(
            names = "--arrangement",
            required = true,
            description = "How power gets to the water: ${COMPLETION-CANDIDATES}.")
    @Nullable
    Arrangement arrangement;

    @Option(names = "--twin", description = "Two engines, port and starboard.")
    boolean twin;

    @Option(
            names = "--cooling",
            defaultValue = "fresh-water",
            description = "How the engine is cooled: ${COMPLETION-CANDIDATES}; left out: ${DEFAULT-VALUE}.")
    Cooling cooling = Cooling.FRESH_WATER;

    @Option(names = "--name", description = "As painted on the stern.")
    @Nullable
    String name;

    @Option(names = "--id", description = "Short name, also of the file; left out: made from the name.")
    @Nullable
    String id;

    @Option(names = "--owner", description = "Whose she is.")
    @Nullable
    String owner;

    @Option(names = "--contact", description = "The owner's telephone or e-mail.")
    @Nullable
    String contact;

    @Option(names = "--berth", description = "Id of her berth; left out: the yard's first.")
    @Nullable
    String berth;

    @Option(names = "--use", description = "Id of her kind of use; left out: the yard's first.")
    @Nullable
    String use;

    @Option(names = "--winter", defaultValue = "ashore", description = "${COMPLETION-CANDIDATES}.")
    Winter winter = Winter.ASHORE;

    @Option(names = "--length", paramLabel = "M", description = "Length overall, m.")
    @Nullable
    Double lengthM;

    @Option(names = "--beam", paramLabel = "M", description = "Beam, m.")
    @Nullable
    Double beamM;

    @Option(names = "--draught", paramLabel = "M", description = "Draught, m.")
    @Nullable
    Double draughtM;

    @Option(names = "--mass", paramLabel = "KG", description = "Mass as lifted, kg.")
    @Nullable
    Double massKg;

    @Option(names = "--material", defaultValue = "grp", description = "Of the hull: ${COMPLETION-CANDIDATES}.")
    HullMaterial material = HullMaterial.GRP;

    @Option(names = "--engine-model", description = "As on the plate.")
    @Nullable
    String engineModel;

    @Option(names = "--power", paramLabel = "KW", description = "Rated power of one engine, kW.")
    @Nullable
    Double powerKw;

    @Override
    public Integer call() throws IOException {
        String file = NewBoat.make(program().shelf(), program().latest(), this::known);
        out().println("Wrote " + program().yard().resolve(file) + ".");
        out().println("Open it and put true figures where it says \"assumed\"; then: sternwright --yard "
                + program().yard() + " due " + shortName());
        return ExitStatus.DONE;
    }

    private BoatTemplate.Known known(YardFiles yard) {
        String shortName = shortName();
        return new BoatTemplate.Known(
                shortName,
                name == null ? shortName : name,
                owner == null ? null : new Owner(owner, contact),
                berth == null ? firstBerth(yard) : berth,
                use == null ? yard.yard().uses().get(0).id() : use,
                winter,
                lengthM,
                beamM,
                draughtM,
                massKg,
                material,
                Objects.requireNonNull(arrangement),
                cooling,
                twin,
                engineModel,
                powerKw);
    }

    private static String firstBerth(YardFiles yard) {
        return yard.berths().keySet().stream().findFirst().orElse("");
    }

    private String shortName() {
        String made = id != null ? id : name == null ? "" : slug(name);
        if (made.isEmpty()) {
            throw BadInput.of(
                    "new boat", "neither --id nor --name is given", "a name for the boat", "Add --name \"Her Name\".");
        }
        if (!made.matches("[a-z0-9][a-z0-9._-]*")) {
            throw BadInput.of(
                    "--id",
                    "found \"" + made + "\"",
                    "a short name",
                    "Use lower-case letters, digits, hyphen, dot or underscore, no spaces.");
        }
        return made;
    }

    /** Letters without their accents, words joined by hyphens. */
    private static String slug(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
    }
}
