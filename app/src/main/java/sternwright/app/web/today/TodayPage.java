package sternwright.app.web.today;

import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.due.Due;
import sternwright.due.DueState;

/** What presses today: safety items past their time. */
@Controller
@ForAll
public class TodayPage {
    private static final int MOST = 20;

    private final OpenYard yard;

    TodayPage(OpenYard yard) {
        this.yard = yard;
    }

    /**
     * One work that presses.
     *
     * @param boat the boat's name
     * @param boatId the boat
     * @param work what is to be done
     * @param since the day it should have been done
     */
    public record Pressing(String boat, String boatId, String work, String since) {}

    /**
     * What the page shows.
     *
     * @param today the day
     * @param boats how many boats there are
     * @param count how many safety items are past their time
     * @param first the first of them
     */
    public record View(String today, int boats, long count, List<Pressing> first) {}

    @GetMapping("/")
    ModelAndView show(Page page) {
        var boats = yard.files().boats();
        List<Due> late = yard.dues().stream()
                .filter(d -> d.state() == DueState.OVERDUE && d.rule().safety())
                .toList();
        List<Pressing> first = late.stream()
                .limit(MOST)
                .map(d -> new Pressing(
                        java.util.Objects.requireNonNull(boats.get(d.boatId())).name(),
                        d.boatId(),
                        d.rule().work(),
                        page.figures().shortDate(d.lastSensible())))
                .toList();
        View view = new View(page.figures().date(yard.today()), boats.size(), late.size(), first);
        return page.show(Section.TODAY, "today/today", view);
    }
}
