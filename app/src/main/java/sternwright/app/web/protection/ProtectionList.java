package sternwright.app.web.protection;

import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.desk.find.BoatQuery;
import sternwright.app.desk.find.BoatRow;
import sternwright.app.desk.find.BoatsOfYard;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Pager;
import sternwright.app.web.page.Section;

/** Which boat's protection is to be looked at. */
@Controller
@ForAll
public class ProtectionList {
    private static final int LINES = 100;

    private final BoatsOfYard boats;

    ProtectionList(BoatsOfYard boats) {
        this.boats = boats;
    }

    /**
     * What the page shows.
     *
     * @param boats the boats of the stretch
     * @param pager which stretch
     * @param find the field to look for a boat
     */
    public record View(List<BoatRow> boats, Pager pager, Field find) {
        /** Copies the list. */
        public View {
            boats = List.copyOf(boats);
        }
    }

    @GetMapping("/protection")
    ModelAndView list(
            Page page,
            @RequestParam(name = "find", defaultValue = "") String find,
            @RequestParam(name = Pager.NAME, defaultValue = "1") int number) {
        List<BoatRow> found = boats.index().find(BoatQuery.of(find));
        Pager pager = new Pager(number, LINES, found.size());
        Field field = Field.plain("find", page.say("protection.find"), find)
                .as("search")
                .optional();
        return page.show(Section.PROTECTION, "protection/list", new View(pager.cut(found), pager, field));
    }
}
