package sternwright.app.web.boat;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.Role;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;

/** A boat: her installations drawn, what is due on them, and her parts with their ages. */
@Controller
@ForAll
public class BoatPage {
    private final OpenYard yard;

    BoatPage(OpenYard yard) {
        this.yard = yard;
    }

    @GetMapping("/boats/{id}")
    ModelAndView show(Page page, @PathVariable("id") String id) {
        OneBoat one = OneBoat.of(yard.files(), id);
        BoatReading reading = new BoatReading(page, one, yard.dues(id), yard.today());
        BoatSheet.View view = new BoatSheet.View(
                one.head(page, "boat"),
                reading.facts(),
                reading.remarks(),
                reading.engines(),
                page.may(Role.MANAGER, Role.OFFICE, Role.TECHNICIAN),
                page.may(Role.MANAGER, Role.OFFICE));
        return page.show(Section.BOATS, "boat/boat", view);
    }
}
