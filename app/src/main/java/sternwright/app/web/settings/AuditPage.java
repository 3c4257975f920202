package sternwright.app.web.settings;

import java.time.Clock;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.AuditTrail;
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
    private final ZoneId zone;

    AuditPage(AuditTrail audit, Clock clock) {
        this.audit = audit;
        this.zone = clock.getZone();
    }

    /**
     * One line as read.
     *
     * @param at when
     * @param who the person
     * @param deed what was done, in words
     * @param subject to what
     * @param detail more
     * @param address where from
     */
    public record Line(String at, String who, String deed, String subject, String detail, String address) {}

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
        List<Line> lines = audit.lines(pager.before(), LINES).stream()
                .map(l -> line(l, page))
                .toList();
        return page.show(Section.SETTINGS, "settings/audit", new View(lines, pager));
    }

    private Line line(AuditTrail.Line line, Page page) {
        DateTimeFormatter times = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .withLocale(page.locale());
        String deed = page.words().find("audit." + line.deed()).orElse(line.deed());
        return new Line(
                times.format(line.at().atZone(zone)), line.who(), deed, line.subject(), line.detail(), line.address());
    }
}
