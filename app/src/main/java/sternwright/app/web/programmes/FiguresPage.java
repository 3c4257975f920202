package sternwright.app.web.programmes;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SentOnce;
import sternwright.app.desk.derived.EachOfYard;
import sternwright.app.desk.due.DueMove;
import sternwright.app.desk.due.DueWork;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.settings.Overridings;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.EditConflict;
import sternwright.app.paper.Words;
import sternwright.app.web.access.ForManager;
import sternwright.app.web.boat.Effect;
import sternwright.app.web.entry.Entered;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.boat.Boat;
import sternwright.finding.Standing;
import sternwright.service.Half;
import sternwright.service.IntervalClause;
import sternwright.service.Overriding;
import sternwright.service.Place;
import sternwright.service.Rule;
import sternwright.service.Scope;

/** A figure over that of a rule, for the yard, an engine model, a boat or a part: seen first, then kept, or taken back. */
@Controller
@ForManager
public class FiguresPage {
    private static final String PATH = "/settings/programmes/{rule}/figures";
    private static final int TRIED = 3;
    private static final String BACK = "/settings/programmes/{rule}/take-back";
    private static final String LIST = "/settings/programmes";

    private final OpenYard yard;
    private final AuditTrail audit;
    private final SentOnce once;
    private final EachOfYard<Overridings.Change, Tried> effects;

    /** What a change would make of the yard, and what of the due list moves by it. */
    private record Tried(YardFiles then, List<DueMove> moves) {}

    FiguresPage(OpenYard yard, AuditTrail audit, SentOnce once) {
        this.yard = yard;
        this.audit = audit;
        this.once = once;
        this.effects = new EachOfYard<>(yard, TRIED);
    }

    /**
     * The page.
     *
     * @param rule the rule
     * @param work the work
     * @param safety whether it is a safety item
     * @param reach for whom
     * @param when when the rule falls due by its programme
     * @param source where that comes from
     * @param scope as addresses have it
     * @param target as addresses have it
     * @param there whether there is a figure already
     * @param back where it is taken back
     * @param form the fields
     * @param drops clauses that can be taken out
     * @param nth whether the rule counts another one
     * @param halves halves of the year
     * @param places places
     * @param standings what a figure can rest on
     * @param effect what the change would do, if it was asked
     * @param version the version of the text
     */
    public record View(
            String rule,
            String work,
            boolean safety,
            String reach,
            String when,
            String source,
            String scope,
            String target,
            boolean there,
            String back,
            Entered form,
            List<Field> drops,
            boolean nth,
            List<Field.Choice> halves,
            List<Field.Choice> places,
            List<Field.Choice> standings,
            Effect effect,
            String version) {}

    /**
     * The page that takes a figure back.
     *
     * @param own the figure
     * @param effect what that would do
     * @param version the version of the text
     */
    public record Back(Own own, Effect effect, String version) {}

    /** What an address asks for. */
    private record Asked(RuleText text, Rule rule, Overridings.Key key, Overridings all) {}

    private Asked asked(Page page, String ruleId, String scope, String target) throws IOException {
        RuleText text = new RuleText(page, yard.files());
        Rule rule = text.book().rule(ruleId).orElseThrow(() -> new Missing("programmes.one"));
        Scope reach = Arrays.stream(Scope.values())
                .filter(s -> s != Scope.GENERIC && RuleText.word(s).equals(scope))
                .findFirst()
                .orElseThrow(() -> new Missing("programmes.whom"));
        if ((reach == Scope.YARD) != target.isBlank()) {
            throw new Missing("programmes.whom");
        }
        Overridings all = Overridings.of(yard.shelf(page.who()), yard.today());
        return new Asked(text, rule, new Overridings.Key(ruleId, reach, target.strip()), all);
    }

    @GetMapping(PATH)
    ModelAndView show(
            Page page,
            @PathVariable("rule") String rule,
            @RequestParam(name = "scope", defaultValue = "yard") String scope,
            @RequestParam(name = "target", defaultValue = "") String target)
            throws IOException {
        Asked asked = asked(page, rule, scope, target);
        Optional<Overriding> there = asked.all.leading(asked.key).map(Overridings.Written::overriding);
        Entered form = Entered.stands(page, "programmes", FiguresForm.stands(page, there));
        return page.show(
                Section.SETTINGS,
                "programmes/figures",
                view(page, asked, form, Effect.NONE, asked.all.version(asked.key)));
    }

    private static View view(Page page, Asked asked, Entered form, Effect effect, String version) {
        List<Field> drops = new ArrayList<>();
        var i = asked.rule.interval();
        Map<IntervalClause, Boolean> has = Map.of(
                IntervalClause.MONTHS, i.months() != null,
                IntervalClause.HOURS, i.hours() != null,
                IntervalClause.LIFE_MONTHS, i.lifeMonths() != null);
        for (IntervalClause clause : IntervalClause.values()) {
            String field = FiguresForm.drop(clause);
            if (Boolean.TRUE.equals(has.get(clause)) || form.ticked(field)) {
                drops.add(form.field(field).as("check"));
            }
        }
        return new View(
                asked.rule.id(),
                Words.sentence(asked.rule.work()),
                asked.rule.safety(),
                asked.text.reach(asked.key.scope(), asked.key.target()),
                asked.text.when(asked.rule),
                asked.rule.source().line(),
                RuleText.word(asked.key.scope()),
                asked.key.target(),
                asked.all.leading(asked.key).isPresent(),
                Own.path(asked.key, "take-back"),
                form,
                drops,
                i.everyNth() != null,
                FiguresForm.choices(page, "programmes.half", Half.values()),
                FiguresForm.choices(page, "programmes.place", Place.values()),
                FiguresForm.choices(page, "programmes.standing", Standing.values()),
                effect,
                version);
    }

    @PostMapping(PATH)
    ModelAndView change(
            Page page,
            @PathVariable("rule") String ruleId,
            @RequestParam(name = "scope", defaultValue = "yard") String scope,
            @RequestParam(name = "target", defaultValue = "") String target)
            throws IOException {
        Asked asked = asked(page, ruleId, scope, target);
        Entered form = Entered.sent(page, "programmes");
        Overriding typed = FiguresForm.typed(page, form, asked.key);
        String version = form.text("version");
        try {
            if (form.good()) {
                Overridings.Change change = asked.all.put(typed);
                if (!form.text("look").isEmpty()) {
                    View view = view(page, asked, form, effect(page, change), version);
                    return page.show(Section.SETTINGS, "programmes/figures", view);
                }
                String what = asked.text.reach(asked.key.scope(), asked.key.target()) + ": " + asked.text.figures(typed)
                        + "; " + typed.source().line();
                return keep(page, change, form.text("once"), version, "figures.changed", what);
            }
        } catch (BadInput bad) {
            form.refused(bad, FiguresForm.FIELDS);
        }
        return page.wrong(Section.SETTINGS, "programmes/figures", view(page, asked, form, Effect.NONE, version));
    }

    private Effect effect(Page page, Overridings.Change change) {
        Tried tried = effects.of(change, () -> tried(change));
        return Effect.of(page, tried.then(), tried.moves());
    }

    private Tried tried(Overridings.Change change) {
        YardFiles then = Overridings.whatIf(yard.shelf(""), yard.files(), change, yard.today());
        Optional<Boat> boat = change.key().boat().map(then.boats()::get);
        List<DueMove> moves = boat.isPresent()
                ? DueMove.between(
                        yard.dues(boat.get().id()),
                        new DueWork(then).of(boat.get(), then.history(boat.get().id()), yard.today()))
                : DueMove.between(yard.dues(), yard.duesIf(then));
        return new Tried(then, moves);
    }

    private ModelAndView keep(
            Page page, Overridings.Change change, String key, String version, String deed, String what)
            throws IOException {
        String rule = change.key().ruleId();
        try {
            Optional<Boolean> kept = once.take(key, page.whoId(), () -> {
                Overridings.write(yard.shelf(page.who()), yard.files(), change, version, yard.today());
                yard.changed();
                audit.note(deed, rule, what);
                return true;
            });
            String said = deed.equals("figures.changed") ? "programmes.kept" : "programmes.taken-back";
            return page.go(
                    LIST + "/" + rule,
                    kept.isEmpty() ? "settings.again" : said,
                    new RuleText(page, yard.files()).work(rule));
        } catch (EditConflict conflict) {
            return page.conflict(Section.SETTINGS, LIST + "/" + rule, change.file());
        }
    }

    @GetMapping(BACK)
    ModelAndView look(
            Page page,
            @PathVariable("rule") String rule,
            @RequestParam(name = "scope", defaultValue = "yard") String scope,
            @RequestParam(name = "target", defaultValue = "") String target)
            throws IOException {
        Asked asked = asked(page, rule, scope, target);
        Overridings.Written there = asked.all.leading(asked.key).orElseThrow(() -> new Missing("programmes.own"));
        Effect effect = effect(page, asked.all.takeBack(asked.key));
        return page.show(
                Section.SETTINGS,
                "programmes/back",
                new Back(Own.of(asked.text, there), effect, asked.all.version(asked.key)));
    }

    @PostMapping(BACK)
    ModelAndView takeBack(
            Page page,
            @PathVariable("rule") String ruleId,
            @RequestParam(name = "scope", defaultValue = "yard") String scope,
            @RequestParam(name = "target", defaultValue = "") String target)
            throws IOException {
        Asked asked = asked(page, ruleId, scope, target);
        Overridings.Written there = asked.all.leading(asked.key).orElseThrow(() -> new Missing("programmes.own"));
        Entered form = Entered.sent(page, "programmes");
        String what =
                asked.text.reach(asked.key.scope(), asked.key.target()) + ": " + asked.text.figures(there.overriding());
        return keep(
                page,
                asked.all.takeBack(asked.key),
                form.text("once"),
                form.text("version"),
                "figures.taken-back",
                what);
    }
}
