package sternwright.app.web.crew;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.Role;
import sternwright.app.desk.derived.OfYard;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.settings.SettingsText;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.Shipped;
import sternwright.app.files.shelf.EditConflict;
import sternwright.app.files.shelf.Writing;
import sternwright.app.web.access.ForManager;
import sternwright.app.web.access.ForOffice;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.measure.Money;
import sternwright.season.dated.Away;
import sternwright.yard.resource.Absence;
import sternwright.yard.resource.CrewMember;
import sternwright.yard.resource.HighWater;
import sternwright.yard.resource.Hoist;
import sternwright.yard.resource.Resources;
import sternwright.yard.resource.StandingClass;
import sternwright.yard.resource.TidalDock;

/** What a season is planned with: who works, what lifts, where boats stand, and the tide. */
@Controller
@ForOffice
public class ResourcesPage {
    private static final String PATH = "/settings/resources";

    private final OpenYard yard;
    private final AuditTrail audit;
    private final OfYard<Known> known;

    ResourcesPage(OpenYard yard, AuditTrail audit) {
        this.yard = yard;
        this.audit = audit;
        this.known = new OfYard<>(yard, ResourcesPage::read);
    }

    /** What the yard's texts say of its resources; null before there are any. */
    private record Known(@Nullable Resources resources, List<Away> away, List<HighWater> tides) {}

    private static Known read(OpenYard yard) {
        var shelf = yard.shelf("");
        try {
            return new Known(
                    SettingsText.RESOURCES
                            .open(shelf, yard.today())
                            .map(SettingsText.Opened::value)
                            .orElse(null),
                    SeasonFolder.away(shelf),
                    TidesPage.table(shelf, yard.today()));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + shelf.place(), e);
        }
    }

    /**
     * A line of one of the lists.
     *
     * @param path where it is changed
     * @param name what it is called
     * @param facts its columns
     */
    public record Line(String path, String name, List<String> facts) {
        /** Copies the list. */
        public Line {
            facts = List.copyOf(facts);
        }
    }

    /**
     * The page.
     *
     * @param there whether the yard has such a file yet
     * @param crew the engineers
     * @param hoists what lifts
     * @param places where boats stand
     * @param tides how far the tide table reaches
     * @param writes whether the reader changes them
     */
    public record View(
            boolean there, List<Line> crew, List<Line> hoists, List<Line> places, String tides, boolean writes) {
        /** Copies the lists. */
        public View {
            crew = List.copyOf(crew);
            hoists = List.copyOf(hoists);
            places = List.copyOf(places);
        }
    }

    @GetMapping(PATH)
    ModelAndView show(Page page) {
        Known now = known.get();
        boolean writes = page.may(Role.MANAGER);
        Resources r = now.resources();
        if (r == null) {
            View empty = new View(false, List.of(), List.of(), List.of(), "", writes);
            return page.show(Section.SETTINGS, "crew/resources", empty);
        }
        View view = new View(
                true,
                r.crew().stream().map(m -> crew(page, m, now.away())).toList(),
                r.hoists().stream().map(h -> hoist(page, h)).toList(),
                r.standing().stream().map(p -> place(page, p)).toList(),
                TidesPage.reach(page, now.tides()),
                writes);
        return page.show(Section.SETTINGS, "crew/resources", view);
    }

    private Line crew(Page page, CrewMember m, List<Away> away) {
        List<Absence> days = new java.util.ArrayList<>(m.away());
        away.stream().filter(a -> a.who().equals(m.id())).map(Away::days).forEach(days::add);
        LocalDate today = yard.today();
        String next = days.stream()
                .filter(a -> !a.to().isBefore(today))
                .sorted(Comparator.comparing(Absence::from))
                .map(a -> page.figures().dates(a.from(), a.to()) + (a.why().isEmpty() ? "" : " (" + a.why() + ")"))
                .collect(Collectors.joining("; "));
        String overtime = m.overtimeHoursAWeek() == 0
                ? page.say("crew.overtime.none")
                : page.say(
                        "crew.overtime.said",
                        page.figures().quantity(m.overtimeHoursAWeek(), "h"),
                        page.figures()
                                .money(Money.of(
                                        m.overtimePerHour(), yard.files().yard().currency())));
        return new Line(
                "/settings/crew/" + m.id(),
                m.name(),
                List.of(
                        m.skills().stream()
                                .sorted()
                                .map(s -> s.replace('-', ' '))
                                .collect(Collectors.joining(", ")),
                        days(page, m),
                        next,
                        overtime));
    }

    private static String days(Page page, CrewMember m) {
        return m.workingDays().stream()
                .sorted()
                .map((DayOfWeek d) -> d.getDisplayName(TextStyle.SHORT_STANDALONE, page.locale()))
                .collect(Collectors.joining(" "));
    }

    private static Line hoist(Page page, Hoist h) {
        TidalDock dock = h.tidal();
        return new Line(
                "/settings/hoists/" + h.id(),
                h.name(),
                List.of(
                        page.figures().quantity(h.maxMassKg(), "kg"),
                        page.figures().quantity(h.maxBeamM(), "m"),
                        Integer.toString(h.liftsADay()),
                        dock == null
                                ? page.say("hoists.any")
                                : page.say(
                                        dock.depthM() < 0 ? "hoists.dries" : "hoists.needs",
                                        page.figures().quantity(Math.abs(dock.depthM()), "m"),
                                        page.figures().quantity(dock.clearanceM(), "m"))));
    }

    private static Line place(Page page, StandingClass p) {
        return new Line(
                "/settings/places/" + p.id(),
                p.name(),
                List.of(page.figures().quantity(p.upToLengthM(), "m"), Integer.toString(p.places())));
    }

    @ForManager
    @PostMapping(PATH)
    ModelAndView start(Page page) throws IOException {
        try (Writing writing = yard.shelf(page.who()).write("season resources begun")) {
            writing.put(SeasonFolder.RESOURCES, Shipped.seasonResources(), "");
            writing.commit();
        } catch (EditConflict conflict) {
            return page.conflict(Section.SETTINGS, PATH, page.say("settings.resources"));
        }
        yard.changed();
        audit.note("settings.changed", page.say("settings.resources"), "");
        return page.go(PATH, "settings.kept", page.say("settings.resources"));
    }
}
