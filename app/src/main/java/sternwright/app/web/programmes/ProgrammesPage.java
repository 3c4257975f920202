package sternwright.app.web.programmes;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.Role;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.settings.Overridings;
import sternwright.app.paper.Words;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.service.Rule;
import sternwright.service.Scope;

/** Every rule with its figures and their sources, and the yard's own figures over them. */
@Controller
@ForAll
public class ProgrammesPage {
    private static final String PATH = "/settings/programmes";

    private final OpenYard yard;

    ProgrammesPage(OpenYard yard) {
        this.yard = yard;
    }

    /**
     * A rule in the list.
     *
     * @param id by which it is looked at
     * @param work the work
     * @param kinds on which kinds of part
     * @param when when it falls due
     * @param source where its figures come from
     * @param safety whether it is a safety item
     */
    public record Line(String id, String work, String kinds, String when, String source, boolean safety) {}

    /**
     * The list.
     *
     * @param find the field to look for words
     * @param own figures over those of the rules
     * @param rules the rules
     * @param writes whether the reader changes figures
     */
    public record View(Field find, List<Own> own, List<Line> rules, boolean writes) {
        /** Copies the lists. */
        public View {
            own = List.copyOf(own);
            rules = List.copyOf(rules);
        }
    }

    /**
     * One rule.
     *
     * @param title the work as a heading
     * @param line its line of the list
     * @param why what it is good for
     * @param facts half, place, minutes
     * @param modifiers circumstances that change its interval
     * @param own figures over its own
     * @param reaches for whom a figure can be given, each with where
     * @param writes whether the reader changes figures
     */
    public record One(
            String title,
            Line line,
            String why,
            List<String> facts,
            List<String> modifiers,
            List<Own> own,
            List<Field.Choice> reaches,
            boolean writes) {
        /** Copies the lists. */
        public One {
            facts = List.copyOf(facts);
            modifiers = List.copyOf(modifiers);
            own = List.copyOf(own);
            reaches = List.copyOf(reaches);
        }
    }

    @GetMapping(PATH)
    ModelAndView list(Page page, @RequestParam(name = "find", defaultValue = "") String find) throws IOException {
        RuleText text = new RuleText(page, yard.files());
        String sought = find.strip().toLowerCase(Locale.ROOT);
        List<Line> rules = text.book().rules().stream()
                .map(r -> line(text, r))
                .filter(l -> sought.isEmpty()
                        || (l.work() + " " + l.kinds() + " " + l.source())
                                .toLowerCase(Locale.ROOT)
                                .contains(sought))
                .toList();
        Field field = Field.plain("find", page.say("programmes.find"), find)
                .as("search")
                .optional();
        return page.show(
                Section.SETTINGS,
                "programmes/list",
                new View(field, own(page, text, ""), rules, page.may(Role.MANAGER)));
    }

    private static Line line(RuleText text, Rule r) {
        return new Line(
                r.id(), r.work(), text.kinds(r), text.when(r), r.source().line(), r.safety());
    }

    private List<Own> own(Page page, RuleText text, String ruleId) throws IOException {
        return Overridings.of(yard.shelf(page.who()), yard.today()).all().stream()
                .filter(w -> ruleId.isEmpty() || w.overriding().ruleId().equals(ruleId))
                .map(w -> Own.of(text, w))
                .toList();
    }

    @GetMapping(PATH + "/{rule}")
    ModelAndView one(Page page, @PathVariable("rule") String id) throws IOException {
        RuleText text = new RuleText(page, yard.files());
        Rule rule = text.book().rule(id).orElseThrow(() -> new Missing("programmes.one"));
        List<String> facts = List.of(
                page.say("programmes.half." + RuleText.word(rule.half())),
                page.say("programmes.place." + RuleText.word(rule.place())),
                page.say("programmes.minutes", page.figures().time(rule.minutes())));
        List<Field.Choice> reaches = Stream.concat(
                        Stream.of(reach(text, id, Scope.YARD, "")),
                        text.models(rule).stream().map(m -> reach(text, id, Scope.ENGINE_MODEL, m)))
                .toList();
        One view = new One(
                Words.sentence(rule.work()),
                line(text, rule),
                rule.why(),
                facts,
                rule.modifiers().stream()
                        .map(m -> page.say(
                                "programmes.modifier",
                                m.why(),
                                m.months() == null ? 0 : m.months(),
                                page.figures().number(m.factor()),
                                m.source().line()))
                        .toList(),
                own(page, text, id),
                reaches,
                page.may(Role.MANAGER));
        return page.show(Section.SETTINGS, "programmes/rule", view);
    }

    private static Field.Choice reach(RuleText text, String rule, Scope scope, String target) {
        return new Field.Choice(
                Own.path(new Overridings.Key(rule, scope, target), "figures"), text.reach(scope, target));
    }
}
