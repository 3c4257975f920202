package sternwright.app.web.season;

import java.time.LocalDate;
import java.util.Optional;
import sternwright.app.desk.season.EventWords;
import sternwright.app.files.YardFiles;
import sternwright.app.web.page.Page;
import sternwright.boat.Boat;
import sternwright.season.dated.event.SeasonEvent;
import sternwright.service.Programme;
import sternwright.service.Rule;
import sternwright.yard.resource.CrewMember;
import sternwright.yard.resource.Hoist;
import sternwright.yard.resource.Resources;

/** Words what has happened, with the names people use. */
record EventText(Page page, YardFiles files, Resources resources) {
    /**
     * One thing that has happened.
     *
     * @param word as it stands in an address
     * @param words as it is read
     */
    public record Said(String word, String words) {}

    Said said(SeasonEvent event) {
        return new Said(EventWords.text(event), words(event));
    }

    String words(SeasonEvent event) {
        if (event instanceof SeasonEvent.PersonAway e) {
            return page.say(
                    "season.event.away",
                    person(e.person()),
                    page.figures().dates(e.days().from(), e.days().to()));
        }
        if (event instanceof SeasonEvent.HoistDown e) {
            return page.say(
                    "season.event.hoist",
                    hoist(e.hoist()),
                    page.figures().dates(e.days().from(), e.days().to()));
        }
        if (event instanceof SeasonEvent.PartLate e) {
            return page.say("season.event.part", rule(e.work()), boat(e.boat()), day(e.here()));
        }
        if (event instanceof SeasonEvent.Emergency e) {
            return page.say("season.event.emergency", boat(e.boat()), day(e.from()));
        }
        if (event instanceof SeasonEvent.OwnerWants e) {
            return page.say("season.event.wanted", boat(e.boat()), day(e.by()));
        }
        SeasonEvent.Moved e = (SeasonEvent.Moved) event;
        return page.say("season.event.set", e.name().operation(), boat(e.name().boatId()), day(e.to()));
    }

    private String day(LocalDate day) {
        return page.figures().date(day);
    }

    private String boat(String id) {
        return Optional.ofNullable(files.boats().get(id)).map(Boat::name).orElse(id);
    }

    private String person(String id) {
        return resources.crew().stream()
                .filter(c -> c.id().equals(id))
                .map(CrewMember::name)
                .findFirst()
                .orElse(id);
    }

    private String hoist(String id) {
        return resources.hoists().stream()
                .filter(h -> h.id().equals(id))
                .map(Hoist::name)
                .findFirst()
                .orElse(id);
    }

    private String rule(String id) {
        return java.util.stream.Stream.concat(java.util.stream.Stream.of(files.generic()), files.programmes().stream())
                .map(Programme::rules)
                .flatMap(java.util.List::stream)
                .filter(r -> r.id().equals(id))
                .map(Rule::work)
                .findFirst()
                .orElse(id);
    }
}
