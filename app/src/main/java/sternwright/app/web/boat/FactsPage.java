package sternwright.app.web.boat;

import java.io.IOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.register.ChangeBoat;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.EditConflict;
import sternwright.app.files.shelf.Kept;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.entry.Entered;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.boat.Boat;
import sternwright.boat.Hull;
import sternwright.boat.HullMaterial;
import sternwright.boat.Owner;
import sternwright.boat.Winter;

/** What is known of a boat as a whole, in fields: whose she is, where she lies, how large she is. Her parts stand in her file. */
@Controller
@ForOffice
public class FactsPage {
    private static final String PATH = "/boats/{id}/facts";
    private static final String NOT_KNOWN = "not known";

    private static final int LONGEST = 200;

    /** Fields of the form by the end of the path in her file, the longer ends first. */
    private static final Map<String, String> FIELDS = fields();

    private final OpenYard yard;
    private final AuditTrail audit;

    FactsPage(OpenYard yard, AuditTrail audit) {
        this.yard = yard;
        this.audit = audit;
    }

    private static Map<String, String> fields() {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("owner.name", "owner");
        fields.put("owner.contact", "contact");
        fields.put("length-m", "lengthM");
        fields.put("beam-m", "beamM");
        fields.put("draught-m", "draughtM");
        fields.put("mass-kg", "massKg");
        fields.put("berth", "berth");
        fields.put("use", "use");
        fields.put("name", "name");
        return fields;
    }

    /**
     * The page.
     *
     * @param head head of the boat's pages
     * @param form the form, with what is wrong
     * @param fields its fields
     * @param version the version her file was read in
     */
    public record View(BoatSheet.Head head, Entered form, List<Field> fields, String version) {
        /** Copies the list. */
        public View {
            fields = List.copyOf(fields);
        }
    }

    @GetMapping(PATH)
    ModelAndView show(Page page, @PathVariable("id") String id) throws IOException {
        OneBoat one = OneBoat.of(yard.files(), id);
        Kept kept = yard.shelf(page.who()).kept(FolderLayout.boat(id)).orElseThrow(() -> new Missing("boat.one"));
        Entered form = Entered.stands(page, "facts", stands(one.boat()));
        return page.show(Section.BOATS, "boat/facts", view(page, one, form, kept.version()));
    }

    private static Map<String, String> stands(Boat boat) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("name", boat.name());
        values.put(
                "owner",
                boat.owner().name().equals(NOT_KNOWN) ? "" : boat.owner().name());
        values.put("contact", Objects.requireNonNullElse(boat.owner().contact(), ""));
        values.put("berth", boat.berthId());
        values.put("winter", boat.winter().name());
        values.put("use", boat.use());
        values.put("lengthM", Entered.plain(boat.hull().lengthM()));
        values.put("beamM", Entered.plain(boat.hull().beamM()));
        values.put("draughtM", Entered.plain(boat.hull().draughtM()));
        values.put("massKg", Entered.plain(boat.hull().massKg()));
        values.put("material", boat.hull().material().name());
        return values;
    }

    @PostMapping(PATH)
    ModelAndView change(Page page, @PathVariable("id") String id) throws IOException {
        OneBoat one = OneBoat.of(yard.files(), id);
        Entered form = Entered.sent(page, "facts");
        Boat after = said(one.boat(), form);
        for (String free : List.of("owner", "contact")) {
            if (form.text(free).length() > LONGEST) {
                form.wrong(free, page.say("field.Size", LONGEST));
            }
        }
        if (form.good()) {
            try {
                ChangeBoat.facts(yard.shelf(page.who()), after, form.text("version"), yard.today());
                yard.changed();
                audit.note("boat.changed", id, "");
                return page.go("/boats/" + id, "facts.done", after.name());
            } catch (EditConflict theirs) {
                return page.conflict(
                        Section.BOATS, "/boats/" + id + "/facts", one.boat().name());
            } catch (BadInput bad) {
                form.refused(bad, FIELDS);
            }
        }
        return page.wrong(Section.BOATS, "boat/facts", view(page, one, form, form.text("version")));
    }

    private static Boat said(Boat boat, Entered form) {
        String owner = form.text("owner");
        String contact = form.text("contact");
        return new Boat(
                boat.id(),
                form.needed("name"),
                new Owner(owner.isEmpty() ? NOT_KNOWN : owner, contact.isEmpty() ? null : contact),
                form.needed("berth"),
                form.needed("use"),
                one(Winter.values(), form, "winter", boat.winter()),
                new Hull(
                        form.figure("lengthM"),
                        form.figure("beamM"),
                        form.figure("draughtM"),
                        form.figure("massKg"),
                        one(HullMaterial.values(), form, "material", boat.hull().material())),
                boat.installations(),
                boat.bonds(),
                boat.programme(),
                boat.note());
    }

    private static <E extends Enum<E>> E one(E[] all, Entered form, String field, E otherwise) {
        return Arrays.stream(all)
                .filter(e -> e.name().equals(form.text(field)))
                .findFirst()
                .orElse(otherwise);
    }

    private View view(Page page, OneBoat one, Entered form, String version) {
        String metre = page.say("register.unit.m");
        List<Field> fields = List.of(
                form.field("name"),
                form.field("owner").optional(),
                form.field("contact").optional(),
                form.field("berth")
                        .of(one.files().berths().values().stream()
                                .map(b -> new Field.Choice(b.id(), b.name()))
                                .toList()),
                form.field("winter").of(choices(page, "winter", Winter.values())),
                form.field("use")
                        .of(one.files().yard().uses().stream()
                                .map(u -> new Field.Choice(u.id(), u.name()))
                                .toList()),
                form.field("lengthM").as("number").in(metre),
                form.field("beamM").as("number").in(metre),
                form.field("draughtM").as("number").in(metre),
                form.field("massKg").as("number").in(page.say("register.unit.kg")),
                form.field("material").of(choices(page, "material", HullMaterial.values())));
        return new View(one.head(page, "boat"), form, fields, version);
    }

    private static List<Field.Choice> choices(Page page, String what, Enum<?>... all) {
        return Arrays.stream(all)
                .map(e -> new Field.Choice(e.name(), page.say("boats." + what + "." + OneBoat.word(e))))
                .toList();
    }
}
