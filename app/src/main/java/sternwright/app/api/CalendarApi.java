package sternwright.app.api;

import jakarta.annotation.security.RolesAllowed;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import sternwright.app.desk.derived.MadeOnce;
import sternwright.app.desk.derived.SeasonOfYard;
import sternwright.app.files.SeasonFiles;
import sternwright.app.files.YardFiles;
import sternwright.app.paper.calendar.PublishedCalendar;
import sternwright.boat.Boat;
import sternwright.season.dated.Published;
import sternwright.yard.resource.StayTimes;

/**
 * The published season as calendars (RFC 5545) that calendar programs fetch by themselves. The token stands in the address, since such
 * programs send no header; it opens calendars alone.
 */
@RestController
@RolesAllowed({"MANAGER", "OFFICE", "TECHNICIAN", "SURVEYOR"})
public class CalendarApi {
    private static final String CALENDAR = "text/calendar;charset=UTF-8";

    private final Asked asked;
    private final SeasonOfYard season;
    private final MadeOnce made;

    CalendarApi(Asked asked, SeasonOfYard season, MadeOnce made) {
        this.made = made;
        this.asked = asked;
        this.season = season;
    }

    /** Every operation one person does. */
    @GetMapping(value = "/calendar/{token}/people/{name}.ics", produces = CALENDAR)
    String person(@PathVariable("token") String token, @PathVariable("name") String name) {
        byte[] text = made.of("calendar of " + name + " " + asked.now(), () -> {
            SeasonFiles now = season.files();
            Set<String> people = new TreeSet<>();
            now.published().forEach(p -> people.addAll(names(p)));
            if (!people.contains(name)) {
                throw new NotThere("person in the published season", name, people);
            }
            return calendar(name, now, p -> names(p).contains(name)).getBytes(StandardCharsets.UTF_8);
        });
        return new String(text, StandardCharsets.UTF_8);
    }

    /** Every operation on one boat. */
    @GetMapping(value = "/calendar/{token}/boats/{id}.ics", produces = CALENDAR)
    String boat(@PathVariable("token") String token, @PathVariable("id") String id) {
        Boat boat = asked.boat(id);
        return calendar(boat.name(), season.files(), p -> p.name().boatId().equals(id));
    }

    private String calendar(String title, SeasonFiles now, Predicate<Published> wanted) {
        YardFiles files = asked.yard().files();
        StayTimes times = now.resources().times();
        Duration day = Duration.ofMinutes(Math.round(times.hoursADay() * 60));
        LocalDateTime stamp = asked.yard().today().atStartOfDay();
        return new PublishedCalendar(files.yard().name(), times.begins(), day, stamp)
                .text(title, now.published().stream().filter(wanted).toList(), id -> {
                    Boat boat = files.boats().get(id);
                    return boat == null ? id : boat.name();
                });
    }

    private static List<String> names(Published operation) {
        return Arrays.stream(operation.people().split(","))
                .map(String::strip)
                .filter(n -> !n.isEmpty())
                .toList();
    }
}
