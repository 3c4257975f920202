package sternwright.app.web.programmes;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sternwright.app.files.YardFiles;
import sternwright.app.web.boat.OneBoat;
import sternwright.app.web.page.Page;
import sternwright.boat.Boat;
import sternwright.boat.Installation;
import sternwright.boat.PartKind;
import sternwright.boat.PartRef;
import sternwright.service.EveryNth;
import sternwright.service.Interval;
import sternwright.service.Overriding;
import sternwright.service.Rule;
import sternwright.service.RuleBook;
import sternwright.service.Scope;

/** Rules and the figures over them, in words. */
final class RuleText {
    private final Page page;
    private final YardFiles files;
    private final RuleBook book;

    RuleText(Page page, YardFiles files) {
        this.page = page;
        this.files = files;
        this.book = RuleBook.of(files.generic(), files.programmes(), files.catalogue());
    }

    RuleBook book() {
        return book;
    }

    /** When a rule falls due; whichever comes first. */
    String when(Rule rule) {
        Interval i = rule.interval();
        List<String> words = new ArrayList<>();
        Integer months = i.months();
        Double hours = i.hours();
        Integer life = i.lifeMonths();
        EveryNth nth = i.everyNth();
        if (months != null) {
            words.add(page.say("programmes.when.months", months));
        }
        if (hours != null) {
            words.add(page.say("programmes.when.hours", page.figures().quantity(hours, "h")));
        }
        if (life != null) {
            words.add(page.say("programmes.when.life", life));
        }
        if (nth != null) {
            words.add(page.say("programmes.when.nth", nth.n(), work(nth.ruleId())));
        }
        if (i.occasion() != null) {
            words.add(page.say("programmes.when." + word(i.occasion())));
        }
        i.after().forEach(a -> words.add(after(a)));
        if (i.unlessLastsTo() != null) {
            words.add(page.say("programmes.when.lasts", work(i.unlessLastsTo())));
        }
        if (!rule.triggers().isEmpty()) {
            words.add(page.say("programmes.when.reading"));
        }
        return words.isEmpty() ? page.say("programmes.when.never") : String.join("; ", words);
    }

    private String after(String after) {
        if (after.startsWith("event:")) {
            return page.say(
                    "programmes.when.event", after.substring("event:".length()).replace('-', ' '));
        }
        return after.startsWith("tag:")
                ? page.say(
                        "programmes.when.tag", after.substring("tag:".length()).replace('-', ' '))
                : page.say("programmes.when.after", work(after));
    }

    String work(String ruleId) {
        return book.rule(ruleId).map(Rule::work).orElse(ruleId.replace('-', ' '));
    }

    /** The kinds of part a rule is for. */
    String kinds(Rule rule) {
        return kindsOf(rule).map(PartKind::name).collect(Collectors.joining(", "));
    }

    private Stream<PartKind> kindsOf(Rule rule) {
        return files.catalogue().kinds().stream()
                .filter(k -> rule.appliesTo().kinds().contains(k.id())
                        || k.tags().stream().anyMatch(rule.appliesTo().tags()::contains));
    }

    /** What an overriding says. */
    String figures(Overriding o) {
        String figures = o.figures();
        if (!o.applies()) {
            return page.say("programmes.off");
        }
        return figures.isEmpty() ? page.say("programmes.on") : figures;
    }

    /** For whom figures are. */
    String reach(Scope scope, String target) {
        return switch (scope) {
            case GENERIC, YARD -> page.say("programmes.for.yard");
            case ENGINE_MODEL -> page.say("programmes.for.model", target);
            case BOAT -> page.say("programmes.for.boat", boat(target));
            case PART -> part(target);
        };
    }

    String followers(String programme) {
        return page.say("programmes.for.followers", programme);
    }

    private String boat(String id) {
        Boat boat = files.boats().get(id);
        return boat == null ? id : boat.name();
    }

    private String part(String target) {
        String[] steps = target.split("/", 3);
        Boat boat = files.boats().get(steps[0]);
        return boat == null || steps.length < 3
                ? target
                : page.say(
                        "programmes.for.part",
                        boat.name(),
                        new OneBoat(files, boat).name(page, new PartRef(steps[1], steps[2])));
    }

    /** Engine models of the yard that have a part of the kinds a rule is for, as on their plates. */
    List<String> models(Rule rule) {
        Set<String> kinds = kindsOf(rule).map(PartKind::id).collect(Collectors.toSet());
        return files.boats().values().stream()
                .flatMap(b -> b.installations().stream())
                .filter(i -> i.engineModel() != null && on(i, kinds))
                .map(i -> String.valueOf(i.engineModel()))
                .distinct()
                .sorted()
                .toList();
    }

    private static boolean on(Installation installation, Set<String> kinds) {
        return installation.parts().stream().anyMatch(p -> kinds.contains(p.kind()));
    }

    static String word(Enum<?> one) {
        return one.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
