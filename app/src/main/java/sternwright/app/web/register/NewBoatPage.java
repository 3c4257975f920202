package sternwright.app.web.register;

import jakarta.validation.Valid;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SentOnce;
import sternwright.app.desk.derived.OfYard;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.register.NewBoat;
import sternwright.app.desk.register.ShortName;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.template.BoatTemplate;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.app.web.page.TypedNumber;
import sternwright.boat.Arrangement;
import sternwright.boat.Owner;
import sternwright.measure.unit.Unit;
import sternwright.measure.unit.YardUnits;

/** A boat is registered: first her arrangement, then what its template cannot know. */
@Controller
@ForOffice
public class NewBoatPage {
    private static final String PATH = "/boats/new";
    /** Addresses under /boats that are not boats. */
    private static final Set<String> ADDRESSES = Set.of("new", "import", "find");

    /** Fields of the form by the fields of a boat's file. */
    private static final Map<String, String> FIELDS = Map.of(
            "length-m", "lengthM",
            "beam-m", "beamM",
            "draught-m", "draughtM",
            "mass-kg", "massKg",
            "power-kw", "powerKw",
            "berth", "berth",
            "use", "use");

    private final OpenYard yard;
    private final AuditTrail audit;
    private final SentOnce once;
    /** The drawings by what is said of them: drawing five arrangements takes longer than all the rest of the page. */
    private final OfYard<Map<String, String>> drawings;

    NewBoatPage(OpenYard yard, AuditTrail audit, SentOnce once) {
        this.yard = yard;
        this.audit = audit;
        this.once = once;
        this.drawings = new OfYard<>(yard, y -> new ConcurrentHashMap<>());
    }

    /**
     * One arrangement to pick.
     *
     * @param id as addresses have it
     * @param name in words
     * @param what how to tell it
     * @param drawing its side elevation
     */
    public record Choice(String id, String name, String what, String drawing) {}

    /**
     * The arrangements.
     *
     * @param choices the arrangements
     */
    public record Choices(List<Choice> choices) {}

    @GetMapping(PATH)
    ModelAndView choose(Page page) {
        List<Choice> choices =
                Arrays.stream(Arrangement.values()).map(a -> choice(page, a)).toList();
        return page.show(Section.BOATS, "register/choose", new Choices(choices));
    }

    private Choice choice(Page page, Arrangement arrangement) {
        String id = arrangement.name().toLowerCase(Locale.ROOT);
        String name = page.say("boats.arrangement." + id);
        String drawing = drawings.get()
                .computeIfAbsent(
                        page.say("register.drawing", name),
                        alt -> UsualBoat.drawing(yard.files().catalogue(), arrangement, alt));
        return new Choice(id, name, page.say("register.tell." + id), drawing);
    }

    @GetMapping(PATH + "/{arrangement}")
    ModelAndView blank(Page page, @PathVariable("arrangement") String asked) {
        Arrangement arrangement = arrangement(asked);
        YardFiles files = yard.files();
        NewBoatForm.View view = NewBoatForm.view(
                page, files, yard.today(), asked, UsualBoat.ageing(page, files, arrangement), Optional.empty());
        return page.show(Section.BOATS, "register/form", view);
    }

    @PostMapping(PATH + "/{arrangement}")
    ModelAndView register(
            Page page,
            @PathVariable("arrangement") String asked,
            @Valid @ModelAttribute("typed") NewBoatForm.Typed typed,
            BindingResult errors,
            @RequestParam(name = "once", defaultValue = "") String key)
            throws IOException {
        Arrangement arrangement = arrangement(asked);
        YardFiles files = yard.files();
        // A choice that is none of those offered leaves nothing to look through; all other faults are told together.
        if (typed != null) {
            figures(typed, errors, files);
        }
        List<NewBoatForm.Ageing> ageing = UsualBoat.ageing(page, files, arrangement);
        Optional<Map<String, LocalDate>> fitted = NewBoatForm.fitted(page, yard.today(), ageing);
        if (errors.hasErrors() || fitted.isEmpty()) {
            NewBoatForm.View view = NewBoatForm.view(page, files, yard.today(), asked, ageing, Optional.of(errors));
            return page.wrong(Section.BOATS, "register/form", view);
        }
        try {
            Optional<Registered> made =
                    once.take(key, page.whoId(), () -> write(page, arrangement, typed, fitted.get()));
            return made.map(r ->
                            page.go("/boats/" + r.id(), r.key(), typed.name().strip(), r.unusual()))
                    .orElseGet(() ->
                            page.go("/boats", "register.again", typed.name().strip()));
        } catch (BadInput bad) {
            refused(bad, errors);
            NewBoatForm.View view = NewBoatForm.view(page, files, yard.today(), asked, ageing, Optional.of(errors));
            return page.wrong(Section.BOATS, "register/form", view);
        }
    }

    /** What came of it: her id, and what of her hull is unusual. */
    private record Registered(String id, String unusual) {
        String key() {
            return unusual.isEmpty() ? "register.done" : "register.done.unusual";
        }
    }

    /** What is wrong with the file that would have been is said beside the field it came from. */
    private static void refused(BadInput bad, BindingResult errors) {
        for (Problem problem : bad.problems()) {
            String end = problem.field().substring(problem.field().lastIndexOf('.') + 1);
            String field = FIELDS.getOrDefault(end, "name");
            errors.rejectValue(field, "refused", new Object[] {problem.found(), problem.expected()}, null);
        }
    }

    private static void figures(NewBoatForm.Typed typed, BindingResult errors, YardFiles files) {
        for (String name : NewBoatForm.FIGURES) {
            String text =
                    Optional.ofNullable((String) errors.getRawFieldValue(name)).orElse("");
            if (!text.isBlank() && TypedNumber.of(text).isEmpty()) {
                errors.rejectValue(name, "number");
            } else if (!text.isBlank() && TypedNumber.of(text).getAsDouble() <= 0) {
                errors.rejectValue(name, "Positive");
            }
        }
        Double length = typed.figure("lengthM");
        if (!errors.hasFieldErrors("lengthM")
                && length != null
                && files.yard().tariff().lift(length).isEmpty()) {
            errors.rejectValue("lengthM", "band");
        }
        if (!errors.hasFieldErrors("berth") && !files.berths().containsKey(typed.berth())) {
            errors.rejectValue("berth", "gone");
        }
        if (!errors.hasFieldErrors("use") && files.yard().use(typed.use()).isEmpty()) {
            errors.rejectValue("use", "gone");
        }
    }

    private Registered write(Page page, Arrangement arrangement, NewBoatForm.Typed typed, Map<String, LocalDate> fitted)
            throws IOException {
        String[] id = new String[1];
        NewBoat.Made made = NewBoat.make(
                yard.shelf(page.who()),
                yard.today(),
                files -> {
                    Set<String> taken = new HashSet<>(yard.files().boats().keySet());
                    taken.addAll(ADDRESSES);
                    id[0] = ShortName.free(typed.name(), taken);
                    return known(id[0], arrangement, typed);
                },
                boat -> UsualBoat.fitted(boat, fitted));
        yard.changed();
        audit.note("boat.registered", id[0], typed.name().strip());
        String unusual = made.unusual().stream()
                .map(o -> page.say("register.unusual", o.found(), o.expected()))
                .collect(Collectors.joining(" "));
        return new Registered(id[0], unusual);
    }

    private BoatTemplate.Known known(String id, Arrangement arrangement, NewBoatForm.Typed typed) {
        String owner = text(typed.owner());
        return new BoatTemplate.Known(
                id,
                typed.name().strip(),
                owner == null ? null : new Owner(owner, text(typed.contact())),
                typed.berth(),
                typed.use(),
                typed.winter(),
                typed.figure("lengthM"),
                typed.figure("beamM"),
                typed.figure("draughtM"),
                typed.figure("massKg"),
                typed.material(),
                arrangement,
                typed.cooling(),
                typed.twin(),
                text(typed.engineModel()),
                kilowatts(yard.files().yard().units(), typed.figure("powerKw")));
    }

    /** Power is typed in the unit that stands beside the field. */
    private static @Nullable Double kilowatts(YardUnits units, @Nullable Double typed) {
        return typed == null ? null : Double.valueOf(Math.rint(units.power().to(Unit.KILOWATT, typed) * 100) / 100);
    }

    private static @Nullable String text(@Nullable String typed) {
        return typed == null || typed.isBlank() ? null : typed.strip();
    }

    private static Arrangement arrangement(String asked) {
        return Arrays.stream(Arrangement.values())
                .filter(a -> a.name().toLowerCase(Locale.ROOT).equals(asked))
                .findFirst()
                .orElseThrow(() -> new Missing("register.one"));
    }
}
