package sternwright.app.web.settings;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;

/** The list of what can be set. */
@Controller
@ForAll
public class SettingsPage {
    @GetMapping("/settings")
    ModelAndView show(Page page) {
        return page.show(Section.SETTINGS, "settings/index");
    }
}
