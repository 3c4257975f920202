package sternwright.app.api;

import jakarta.annotation.security.RolesAllowed;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import sternwright.app.account.AuditTrail;
import sternwright.app.desk.settings.Overridings;
import sternwright.app.desk.settings.SettingsText;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.shelf.Shelf;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.Part;
import sternwright.boat.PartRef;
import sternwright.finding.Source;
import sternwright.finding.Standing;
import sternwright.service.FigureStep;
import sternwright.service.Half;
import sternwright.service.Interval;
import sternwright.service.IntervalClause;
import sternwright.service.Overriding;
import sternwright.service.Place;
import sternwright.service.Rule;
import sternwright.service.RuleBook;
import sternwright.service.RuleInForce;
import sternwright.service.Scope;
import sternwright.yard.Yard;
import sternwright.yard.resource.Resources;

/** Settings read; the yard's and makers' figures over those of the programmes, put in and taken back. */
@RestController
@RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN", "SURVEYOR"})
public class SettingsApi {
    private final Asked asked;
    private final AuditTrail audit;

    SettingsApi(Asked asked, AuditTrail audit) {
        this.asked = asked;
        this.audit = audit;
    }

    /**
     * A rule in force on a part.
     *
     * @param part installation/part
     * @param rule id of the rule
     * @param work the work
     * @param interval when it falls due, with the figures that hold
     * @param half half of the year
     * @param place where
     * @param minutes working minutes with fair access
     * @param safety whether it is a safety item
     * @param figures where the figures come from, the programme's own first
     */
    public record InForce(
            PartRef part,
            String rule,
            String work,
            Interval interval,
            Half half,
            Place place,
            double minutes,
            boolean safety,
            List<FigureStep> figures) {
        static InForce of(PartRef part, RuleInForce held) {
            Rule r = held.rule();
            return new InForce(
                    part, r.id(), r.work(), r.interval(), r.half(), r.place(), r.minutes(), r.safety(), held.chain());
        }
    }

    /**
     * A figure over that of a rule; what is left out stays as it is.
     *
     * @param rule id of the rule
     * @param scope YARD, ENGINE_MODEL, BOAT or PART; YARD if missing
     * @param target engine model, boat id, or boat/installation/part; empty for the yard
     * @param months every so many months
     * @param hours every so many engine hours
     * @param lifeMonths life of the part, months
     * @param nth every n-th time of the other rule
     * @param drop clauses that do not count here
     * @param half half of the year
     * @param place where
     * @param minutes working minutes with fair access
     * @param applies false switches the rule off
     * @param source where the figure comes from
     */
    public record Figure(
            @Nullable String rule,
            @Nullable Scope scope,
            @Nullable String target,
            @Nullable Integer months,
            @Nullable Double hours,
            @Nullable Integer lifeMonths,
            @Nullable Integer nth,
            @Nullable Set<IntervalClause> drop,
            @Nullable Half half,
            @Nullable Place place,
            @Nullable Double minutes,
            @Nullable Boolean applies,
            @Nullable Source source) {
        Overriding overriding() {
            if (rule == null) {
                throw BadInput.of("rule", "it is missing", "id of a rule", "");
            }
            Overriding o = new Overriding(
                    rule,
                    Objects.requireNonNullElse(scope, Scope.YARD),
                    Objects.requireNonNullElse(target, ""),
                    months,
                    hours,
                    lifeMonths,
                    nth,
                    Objects.requireNonNullElse(drop, Set.of()),
                    half,
                    place,
                    minutes,
                    !Boolean.FALSE.equals(applies),
                    Objects.requireNonNullElse(source, new Source("yard's own rule", "", Standing.YARD)));
            if (o.figures().isEmpty() && o.applies()) {
                throw BadInput.of(
                        "body", "it changes no figure", "one figure at least, a clause to drop, or applies", "");
            }
            return o;
        }
    }

    /** The yard: rates, tariff, tax, year, kinds of use, stores, units. */
    @GetMapping("/api/settings/yard")
    @RolesAllowed({"MANAGER", "OFFICE"})
    ResponseEntity<Yard> yard() throws IOException {
        return tagged(SettingsText.YARD);
    }

    /** What a season is planned with: engineers, hoists, places, times, prices. */
    @GetMapping("/api/settings/resources")
    @RolesAllowed({"MANAGER", "OFFICE"})
    ResponseEntity<Resources> resources() throws IOException {
        return tagged(SettingsText.RESOURCES);
    }

    private <T> ResponseEntity<T> tagged(SettingsText<T> text) throws IOException {
        SettingsText.Opened<T> opened = text.open(asked.shelf(), asked.yard().today())
                .orElseThrow(() -> new NotThere("file", text.name(), List.of()));
        return ResponseEntity.ok()
                .header(HttpHeaders.ETAG, '"' + opened.version() + '"')
                .body(opened.value());
    }

    /** Every rule as its programme writes it. */
    @GetMapping("/api/programmes/rules")
    Stretch<Rule> rules(
            @RequestParam(name = "page", defaultValue = "1") int page,
            @RequestParam(name = "size", defaultValue = "100") int size) {
        return Stretch.of(List.copyOf(book().rules()), page, size, r -> r);
    }

    /** Every figure over that of a rule, with the file it stands in; among equals the later one leads. */
    @GetMapping("/api/programmes/figures")
    List<Overridings.Written> figures() throws IOException {
        return Overridings.of(asked.shelf(), asked.yard().today()).all();
    }

    /** The rules in force on each part of a boat, with where each figure comes from. */
    @GetMapping("/api/boats/{id}/rules")
    List<InForce> inForce(@PathVariable("id") String id) {
        Boat boat = asked.boat(id);
        RuleBook book = book();
        List<InForce> rules = new ArrayList<>();
        for (Installation i : boat.installations()) {
            for (Part p : i.parts()) {
                PartRef ref = new PartRef(i.id(), p.id());
                book.forPart(boat, i, p).forEach(held -> rules.add(InForce.of(ref, held)));
            }
        }
        return rules;
    }

    private RuleBook book() {
        var files = asked.yard().files();
        return RuleBook.of(files.generic(), files.programmes(), files.catalogue());
    }

    /** Puts a figure in, in the place of the one for the same rule and reach if there is one. */
    @PutMapping("/api/programmes/figures")
    @RolesAllowed("MANAGER")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void put(@RequestBody Figure said) throws IOException {
        Overriding figure = said.overriding();
        keep(all().put(figure), "figures.changed", figure.target() + " " + figure.figures());
    }

    /** Takes a figure back: what is wider holds again. */
    @DeleteMapping("/api/programmes/figures")
    @RolesAllowed("MANAGER")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void takeBack(
            @RequestParam("rule") String rule,
            @RequestParam(name = "scope", defaultValue = "yard") String scope,
            @RequestParam(name = "target", defaultValue = "") String target)
            throws IOException {
        Scope reach;
        try {
            reach = Scope.valueOf(scope.toUpperCase(Locale.ROOT).replace('-', '_'));
        } catch (IllegalArgumentException unknown) {
            throw BadInput.of("scope", "found \"" + scope + "\"", "YARD, ENGINE_MODEL, BOAT or PART", "");
        }
        keep(all().takeBack(new Overridings.Key(rule, reach, target)), "figures.taken-back", target);
    }

    private Overridings all() throws IOException {
        return Overridings.of(asked.shelf(), asked.yard().today());
    }

    private void keep(Overridings.Change change, String deed, String what) throws IOException {
        Shelf shelf = asked.shelf();
        Overridings.write(
                shelf, asked.yard().files(), change, null, asked.yard().today());
        asked.yard().changed();
        audit.note(deed, change.key().ruleId(), what.strip());
    }
}
