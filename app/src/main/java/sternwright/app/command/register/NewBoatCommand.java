package sternwright.app.command.register;

import java.io.IOException;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.desk.register.NewBoat;
import sternwright.app.desk.register.ShortName;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
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
    private static final Map<String, String> OPTIONS = Map.of(
            "name", "--name",
            "berth", "--berth",
            "use", "--use",
            "length-m", "--length",
            "beam-m", "--beam",
            "draught-m", "--draught",
            "mass-kg", "--mass",
            "power-kw", "--power",
            "engine-model", "--engine-model",
            "contact", "--contact");

    @Option(
            names = "--arrangement",
            paramLabel = "WORD",
            required = true,
            description = "How power gets to the water: shaft, saildrive, sterndrive, pod or jet.")
    @Nullable
    Arrangement arrangement;

    @Option(names = "--twin", description = "Two engines, port and starboard.")
    boolean twin;

    @Option(
            names = "--cooling",
            paramLabel = "WORD",
            defaultValue = "fresh-water",
            description = "How the engine is cooled: raw-water, fresh-water or keel; left out: fresh-water.")
    Cooling cooling = Cooling.FRESH_WATER;

    @Option(names = "--name", paramLabel = "NAME", description = "As painted on the stern.")
    @Nullable
    String name;

    @Option(
            names = "--id",
            paramLabel = "ID",
            description = "Short name, also of the file; left out: made from the name.")
    @Nullable
    String id;

    @Option(names = "--owner", paramLabel = "NAME", description = "Whose she is.")
    @Nullable
    String owner;

    @Option(names = "--contact", paramLabel = "TEXT", description = "The owner's telephone or e-mail.")
    @Nullable
    String contact;

    @Option(names = "--berth", paramLabel = "ID", description = "Id of her berth; left out: the yard's first.")
    @Nullable
    String berth;

    @Option(names = "--use", paramLabel = "ID", description = "Id of her kind of use; left out: the yard's first.")
    @Nullable
    String use;

    @Option(
            names = "--winter",
            paramLabel = "WORD",
            defaultValue = "ashore",
            description = "Where she spends the winter: ashore, afloat or in-use; left out: ashore.")
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

    @Option(
            names = "--material",
            paramLabel = "WORD",
            defaultValue = "grp",
            description = "What the hull is made of: grp, steel, aluminium or wood; left out: grp.")
    HullMaterial material = HullMaterial.GRP;

    @Option(names = "--engine-model", paramLabel = "TEXT", description = "As on the plate.")
    @Nullable
    String engineModel;

    @Option(names = "--power", paramLabel = "KW", description = "Rated power of one engine, kW.")
    @Nullable
    Double powerKw;

    @Override
    public boolean writes() {
        return true;
    }

    @Override
    public Integer call() throws IOException {
        NewBoat.Made made = made();
        out().println("Wrote " + program().yard().resolve(made.file()) + ".");
        made.unusual()
                .forEach(o -> out().println("Remark: " + o.found() + "; it is " + o.expected() + " ("
                        + o.source().standing().words() + ")."));
        out().println("Open it and put true figures where it says \"assumed\"; then: sternwright --yard "
                + program().yard() + " due " + shortName());
        return ExitStatus.DONE;
    }

    /** What is wrong with the file to be is told by the options it was made from: nobody has seen the file. */
    private NewBoat.Made made() throws IOException {
        String file = "boats/" + shortName() + ".yaml";
        try {
            return NewBoat.make(program().shelf(), program().latest(), this::known);
        } catch (BadInput wrong) {
            throw new BadInput(wrong.problems().stream()
                    .map(p -> p.file().equals(file) && p.line() > 0 ? byOption(p) : p)
                    .distinct()
                    .toList());
        }
    }

    private static Problem byOption(Problem p) {
        String field = p.field().substring(p.field().lastIndexOf('.') + 1);
        String option = OPTIONS.get(field);
        return option == null ? p : new Problem(option, 0, "", p.found(), p.expected(), p.advice());
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
        String made = id != null ? id : name == null ? "" : ShortName.of(name);
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
}
