package sternwright.app.desk.season;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sternwright.app.files.YardFiles;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.problem.Problem;
import sternwright.season.dated.event.SeasonEvent;
import sternwright.service.Programme;
import sternwright.service.Rule;
import sternwright.yard.resource.CrewMember;
import sternwright.yard.resource.Hoist;
import sternwright.yard.resource.Resources;

/** Whether the people, hoists, boats and rules of events are there. */
final class EventNames {
    private final List<Problem> problems = new ArrayList<>();

    private EventNames() {}

    static void require(List<SeasonEvent> events, YardFiles yard, Resources resources) {
        EventNames names = new EventNames();
        Set<String> crew = resources.crew().stream().map(CrewMember::id).collect(Collectors.toSet());
        Set<String> hoists = resources.hoists().stream().map(Hoist::id).collect(Collectors.toSet());
        Set<String> rules = Stream.concat(Stream.of(yard.generic()), yard.programmes().stream())
                .map(Programme::rules)
                .flatMap(List::stream)
                .map(Rule::id)
                .collect(Collectors.toSet());
        for (SeasonEvent event : events) {
            if (event instanceof SeasonEvent.PersonAway e) {
                names.known("one of the crew", e.person(), crew);
            } else if (event instanceof SeasonEvent.HoistDown e) {
                names.known("hoist", e.hoist(), hoists);
            } else if (event instanceof SeasonEvent.PartLate e) {
                names.known("boat", e.boat(), yard.boats().keySet());
                names.known("rule", e.work(), rules);
            } else if (event instanceof SeasonEvent.Emergency e) {
                names.known("boat", e.boat(), yard.boats().keySet());
            } else if (event instanceof SeasonEvent.OwnerWants e) {
                names.known("boat", e.boat(), yard.boats().keySet());
            } else if (event instanceof SeasonEvent.Moved e) {
                names.known("boat", e.name().boatId(), yard.boats().keySet());
            }
        }
        if (!names.problems.isEmpty()) {
            throw new BadInput(names.problems);
        }
    }

    private void known(String what, String written, Collection<String> known) {
        if (!known.contains(written)) {
            problems.add(new Problem(
                    "what has happened",
                    0,
                    "",
                    "there is no " + what + " \"" + written + "\"",
                    "",
                    KnownNames.advice(written, known)));
        }
    }
}
