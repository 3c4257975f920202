package sternwright.app.web.programmes;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.Role;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.settings.Overridings;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.boat.BoatSheet;
import sternwright.app.web.boat.OneBoat;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.service.FigureStep;
import sternwright.service.Overriding;
import sternwright.service.RuleInForce;
import sternwright.service.Scope;

/** The rules in force for a boat, and where each figure comes from. */
@Controller
@ForAll
public class BoatRulesPage {
    private final OpenYard yard;

    BoatRulesPage(OpenYard yard) {
        this.yard = yard;
    }

    /**
     * A rule in force on a part.
     *
     * @param rule by which it is looked at
     * @param work the work
     * @param part on which part
     * @param when when it falls due
     * @param sources where the figures come from, the programme's own first
     * @param ofBoat where a figure for the boat is given
     * @param ofPart where a figure for the part is given
     */
    public record Line(
            String rule, String work, String part, String when, List<String> sources, String ofBoat, String ofPart) {
        /** Copies the list. */
        public Line {
            sources = List.copyOf(sources);
        }
    }

    /**
     * An installation with its rules.
     *
     * @param name what it is called
     * @param id its short name
     * @param lines the rules
     */
    public record Engine(String name, String id, List<Line> lines) {
        /** Copies the list. */
        public Engine {
            lines = List.copyOf(lines);
        }
    }

    /**
     * The page.
     *
     * @param head head of the boat's pages
     * @param programme the programme she follows
     * @param own figures that are for her, for her parts or her engine models
     * @param find the field to look for words
     * @param engines her installations
     * @param writes whether the reader changes figures
     */
    public record View(
            BoatSheet.Head head, String programme, List<Own> own, Field find, List<Engine> engines, boolean writes) {
        /** Copies the lists. */
        public View {
            own = List.copyOf(own);
            engines = List.copyOf(engines);
        }
    }

    @GetMapping("/boats/{id}/rules")
    ModelAndView show(
            Page page, @PathVariable("id") String id, @RequestParam(name = "find", defaultValue = "") String find)
            throws IOException {
        OneBoat one = OneBoat.of(yard.files(), id);
        RuleText text = new RuleText(page, yard.files());
        String sought = find.strip().toLowerCase(Locale.ROOT);
        List<Engine> engines = one.boat().installations().stream()
                .map(i -> engine(page, one, text, i, sought))
                .filter(e -> !e.lines().isEmpty())
                .toList();
        List<Own> own = Overridings.of(yard.shelf(page.who()), yard.today()).all().stream()
                .filter(w -> reaches(w.overriding(), one.boat()))
                .map(w -> Own.of(text, w))
                .toList();
        Field field = Field.plain("find", page.say("programmes.find"), find)
                .as("search")
                .optional();
        String programme = text.book().programmeOf(one.boat()).name();
        return page.show(
                Section.BOATS,
                "programmes/boat",
                new View(one.head(page, "rules"), programme, own, field, engines, page.may(Role.MANAGER)));
    }

    private static boolean reaches(Overriding o, Boat boat) {
        return switch (o.scope()) {
            case BOAT -> o.target().equals(boat.id());
            case PART -> o.target().startsWith(boat.id() + "/");
            case ENGINE_MODEL ->
                boat.installations().stream()
                        .map(Installation::engineModel)
                        .flatMap(m -> Optional.ofNullable(m).stream())
                        .anyMatch(m -> m.strip().equalsIgnoreCase(o.target().strip()));
            case GENERIC, YARD -> false;
        };
    }

    private static Engine engine(Page page, OneBoat one, RuleText text, Installation installation, String sought) {
        List<Line> lines = new ArrayList<>();
        for (Part part : installation.parts()) {
            for (RuleInForce held : text.book().forPart(one.boat(), installation, part)) {
                Line line = line(one, text, installation, part, held);
                if (sought.isEmpty()
                        || (line.work() + " " + line.part() + " " + String.join(" ", line.sources()))
                                .toLowerCase(Locale.ROOT)
                                .contains(sought)) {
                    lines.add(line);
                }
            }
        }
        return new Engine(one.name(page, installation), installation.id(), lines);
    }

    private static Line line(OneBoat one, RuleText text, Installation installation, Part part, RuleInForce held) {
        String rule = held.rule().id();
        String boat = one.boat().id();
        String ref = boat + "/" + installation.id() + "/" + part.id();
        return new Line(
                rule,
                held.rule().work(),
                one.name(installation, part),
                text.when(held.rule()),
                held.chain().stream().map(FigureStep::line).toList(),
                Own.path(new Overridings.Key(rule, Scope.BOAT, boat), "figures"),
                Own.path(new Overridings.Key(rule, Scope.PART, ref), "figures"));
    }
}
