package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sternwright.app.account.Role;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.recording.RecordWork;
import sternwright.app.desk.recording.TypedWork;
import sternwright.history.BoatHistory;

/** The office strikes a wrong line: it is seen first what that moves, and the line stays to be seen. */
class P16_StruckHistoryTest extends PageTest {
    private static final String OWN = "struckabout";

    @BeforeAll
    static void aBoatWithAWork() throws IOException {
        P11_OneBoatTest.own(OWN);
        OpenYard yard = desk().part(OpenYard.class);
        LocalDate today = yard.today();
        TypedWork.Typed oil = new TypedWork.Typed(
                List.of("change-engine-oil"), null, today, null, "A. Person", List.of(), "", false, null, null);
        RecordWork.record(
                yard.shelf("test"), OWN, TypedWork.said(yard.shelf("test"), OWN, oil, today), today, today, false);
        yard.changed();
    }

    private static BoatHistory history() {
        return desk().part(OpenYard.class).files().history(OWN);
    }

    @Test
    void aWrongLineIsStruck() {
        as(Role.TECHNICIAN, page -> {
            open(page, "/boats/" + OWN + "/history");
            assertEquals(0, page.locator("a[href*='/strike/']").count());
        });
        as(Role.OFFICE, page -> {
            open(page, "/boats/" + OWN + "/history");
            page.getByRole(AriaRole.LINK)
                    .filter(new com.microsoft.playwright.Locator.FilterOptions().setHasText("Strike"))
                    .first()
                    .click();
            String path = page.url().substring(desk().address().length() - 1);
            assertTrue(page.locator("tbody").innerText().contains("not known when last done"), "what moves is told");
            assertEquals(1, history().entries().size(), "looking writes nothing");
            checkPage(path, Role.OFFICE);
            page.locator("button.act").click();
            assertTrue(page.getByText("Fill this in.").isVisible());
            page.locator("#why").fill("on the other boat");
            page.locator("button.act").click();
            assertTrue(page.locator(".notice").innerText().contains("struck"));
            String row = page.locator("tbody tr").first().innerText();
            assertTrue(row.contains("Struck by Person Invented O") && row.contains("on the other boat"), row);
            assertEquals(1, page.locator("tbody del").count());
            assertEquals(0, history().entries().size());
            open(page, path, 404);
        });
        checkPage("/boats/" + OWN + "/history", Role.OFFICE);
    }
}
