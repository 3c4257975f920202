package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import sternwright.app.account.Role;
import sternwright.app.desk.open.OpenYard;
import sternwright.boat.Arrangement;
import sternwright.due.DueState;
import sternwright.service.Rule;

/** Boats are found by what people remember of them, and by what is due. */
class P12_FindBoatsTest extends PageTest {
    @Test
    void byArrangementAndByAWorkThatIsDue() {
        long drives = desk().part(OpenYard.class).files().boats().values().stream()
                .filter(b -> b.installations().stream().anyMatch(i -> i.arrangement() == Arrangement.SHAFT))
                .count();
        Rule late = desk().part(OpenYard.class).dues().stream()
                .filter(d -> d.state() == DueState.OVERDUE)
                .findFirst()
                .orElseThrow()
                .rule();
        as(Role.TECHNICIAN, page -> {
            open(page, "/boats");
            page.locator("#arrangement").selectOption("SHAFT");
            page.locator(".filters button").click();
            assertEquals(drives, page.locator("tbody tr").count());
            open(page, "/boats?work=" + late.id() + "&state=OVERDUE");
            assertTrue(page.locator("tbody tr").count() > 0);
            page.locator("tbody th a").first().click();
            assertTrue(page.locator("main").innerText().contains(late.work()), late.work());
        });
    }
}
