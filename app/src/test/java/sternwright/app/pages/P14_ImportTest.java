package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sternwright.app.account.Role;
import sternwright.app.desk.open.OpenYard;

/** A table is looked at first; with one wrong row nothing comes in; taken in twice it is there once. */
class P14_ImportTest extends PageTest {
    private static final String OWN = "tableabout";
    private static final String HEAD = "boat,date,installation,hours\n";

    @BeforeAll
    static void aBoatOfItsOwn() throws IOException {
        P11_OneBoatTest.own(OWN);
    }

    private static void send(Page page, String csv) {
        open(page, "/boats/import");
        page.locator("#kind").selectOption("HOURS");
        page.locator("#file")
                .setInputFiles(new FilePayload("../h<b>.csv", "text/csv", csv.getBytes(StandardCharsets.UTF_8)));
        page.locator("button.act").click();
    }

    private static int readings() {
        return desk().part(OpenYard.class).files().history(OWN).meter().size();
    }

    @Test
    void aTableIsLookedAtAndTakenInWhole() {
        checkPage("/boats/import", Role.OFFICE);
        as(Role.OFFICE, page -> {
            send(page, HEAD + OWN + ",2026-03-01,main,100\nnobody,2026-03-01,main,5\n" + OWN + ",2026-04-01,main,x\n");
            look(page, "import-refused", Screen.DESK_LIGHT);
            String wrong = page.getByRole(AriaRole.ALERT).innerText();
            assertTrue(wrong.contains("line 3") && wrong.contains("line 4"), wrong);

            send(page, HEAD + OWN + ",2026-03-01,main,100\n" + OWN + ",2026-04-01,main,120\n");
            look(page, "import-preview", Screen.DESK_LIGHT);
            assertTrue(page.locator(".lead").innerText().startsWith("2 lines would be added to one boat"));
            assertEquals(0, readings(), "looking writes nothing");
            page.evaluate("() => { const f = document.querySelector('main form');"
                    + " return fetch(f.action, {method: 'POST', body: new URLSearchParams(new FormData(f))}); }");
            assertEquals(2, readings());
            page.locator("button.act").click();
            assertTrue(page.locator(".notice").innerText().contains("taken in already"));
            assertEquals(2, readings());
        });
        as(Role.TECHNICIAN, page -> open(page, "/boats/import", 403));
    }
}
