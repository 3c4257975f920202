package sternwright.app.web.today;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.desk.derived.OfYard;
import sternwright.app.desk.derived.SeasonOfYard;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.today.DayAtYard;
import sternwright.app.desk.today.TodayAtYard;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Pager;
import sternwright.app.web.page.Section;

/** The yard's day: jobs by person, boats in the hoist and ashore, parts not here, promises and works at risk. */
@Controller
@ForAll
public class TodayPage {
    private final OpenYard yard;
    private final OfYard<DayAtYard> day;

    TodayPage(OpenYard yard, SeasonOfYard season) {
        this.yard = yard;
        this.day = new OfYard<>(yard, y -> TodayAtYard.of(y.files(), season.files(), y.dues(), y.today()));
    }

    @GetMapping("/")
    ModelAndView show(Page page, @RequestParam(name = Pager.NAME, defaultValue = "1") int number) {
        TodaySheet.View view =
                TodaySheet.of(page, day.get(), yard.files().boats().size(), number);
        return page.show(Section.TODAY, "today/today", view);
    }
}
