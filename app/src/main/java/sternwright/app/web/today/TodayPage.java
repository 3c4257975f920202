package sternwright.app.web.today;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.today.DayAtYard;
import sternwright.app.desk.today.TodayAtYard;
import sternwright.app.files.SeasonFolder;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;

/** The yard's day: jobs by person, boats in the hoist and ashore, parts not here, promises and works at risk. */
@Controller
@ForAll
public class TodayPage {
    private final OpenYard yard;

    @Nullable
    private volatile Known known;

    /** The day as it was worked out, good as long as nothing in the yard changes. */
    private record Known(String state, DayAtYard day) {}

    TodayPage(OpenYard yard) {
        this.yard = yard;
    }

    @GetMapping("/")
    ModelAndView show(Page page) {
        TodaySheet.View view = TodaySheet.of(page, day(), yard.files().boats().size());
        return page.show(Section.TODAY, "today/today", view);
    }

    private DayAtYard day() {
        String state = yard.state() + " " + yard.today();
        Known now = known;
        if (now == null || !now.state().equals(state)) {
            DayAtYard day = TodayAtYard.of(
                    yard.files(), SeasonFolder.read(yard.shelf(""), yard.today()), yard.dues(), yard.today());
            now = new Known(state, day);
            known = now;
        }
        return now.day();
    }
}
