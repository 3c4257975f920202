package sternwright.app.web.settings;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.season.run.SeasonJobs;
import sternwright.app.store.job.SeasonRun;
import sternwright.app.web.access.ForManager;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Pager;
import sternwright.app.web.page.Section;

/** Who changed what, the newest first. */
@Controller
@ForManager
public class AuditPage {
    private static final int LINES = 100;

    private final AuditTrail audit;
    private final OpenYard yard;
    private final SeasonJobs jobs;
    private final ZoneId zone;

    AuditPage(AuditTrail audit, OpenYard yard, SeasonJobs jobs, Clock clock) {
        this.audit = audit;
        this.yard = yard;
        this.jobs = jobs;
        this.zone = clock.getZone();
    }

    /**
     * One line as read.
     *
     * @param at when
     * @param who the person
     * @param deed what was done, in words
     * @param subject to what, by the name people use
     * @param link where that can be looked at, empty for nowhere
     * @param detail more
     * @param address where from
     */
    public record Line(
            String at, String who, String deed, String subject, String link, String detail, String address) {}

    /**
     * What the page shows.
     *
     * @param lines the lines
     * @param pager which stretch of them
     */
    public record View(List<Line> lines, Pager pager) {}

    @GetMapping("/settings/audit")
    ModelAndView show(Page page, @RequestParam(name = Pager.NAME, defaultValue = "1") int number) {
        Pager pager = new Pager(number, LINES, audit.count());
        Map<String, Optional<SeasonRun>> runs = new HashMap<>();
        List<Line> lines = audit.lines(pager.before(), LINES).stream()
                .map(l -> line(l, page, runs))
                .toList();
        return page.show(Section.SETTINGS, "settings/audit", new View(lines, pager));
    }

    private Line line(AuditTrail.Line line, Page page, Map<String, Optional<SeasonRun>> runs) {
        String deed = page.words().find("audit." + line.deed()).orElse(line.deed());
        Subject subject = line.deed().startsWith("season.")
                ? runs.computeIfAbsent(line.subject(), jobs::one)
                        .map(run -> new Subject(
                                page.say("settings.audit.run", at(run.at(), page), run.by()),
                                "/season/runs/" + run.id()))
                        .orElseGet(() -> boat(line.subject()))
                : line.deed().startsWith("account.") ? Subject.plain(line.subject()) : boat(line.subject());
        return new Line(
                at(line.at(), page),
                line.who(),
                deed,
                subject.name(),
                subject.link(),
                detail(line, page),
                line.address());
    }

    private record Subject(String name, String link) {
        static Subject plain(String name) {
            return new Subject(name, "");
        }
    }

    /** Many a subject is a boat; she is called by her name, not by what she is filed under. */
    private Subject boat(String id) {
        return Optional.ofNullable(yard.files().boats().get(id))
                .map(b -> new Subject(b.name(), "/boats/" + id))
                .orElse(Subject.plain(id));
    }

    private static String detail(AuditTrail.Line line, Page page) {
        return switch (line.deed()) {
            case "account.added" ->
                page.words()
                        .find("desk.role." + line.detail().toLowerCase(Locale.ROOT))
                        .orElse(line.detail());
            case "visits.agreed" -> page.say("settings.audit.visits", line.detail());
            default -> line.detail();
        };
    }

    private String at(Instant at, Page page) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .withLocale(page.locale())
                .format(at.atZone(zone));
    }
}
