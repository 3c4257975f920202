package sternwright.app.web.sign;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.web.access.OpenToAnyone;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;

/** Asks who it is; what is typed is judged by the guard of all pages. */
@Controller
@OpenToAnyone
public class SignInPage {
    /**
     * What the page shows.
     *
     * @param failed whether the last try was wrong
     */
    public record View(boolean failed) {}

    @GetMapping("/sign-in")
    ModelAndView show(Page page, @RequestParam(name = "failed", required = false) String failed) {
        return page.show(Section.NONE, "sign/in", new View(failed != null));
    }
}
