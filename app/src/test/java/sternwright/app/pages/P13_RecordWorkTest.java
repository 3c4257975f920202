package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sternwright.app.account.Role;
import sternwright.app.desk.open.OpenYard;
import sternwright.history.ServiceEntry;

/** A technician records several works of a visit; readings are judged as typed; nothing is written twice. */
class P13_RecordWorkTest extends PageTest {
    private static final String OWN = "workabout";
    private static final String TWO = "/record?work=main/engine:change-engine-oil&work=main/coolant:test-coolant";

    @BeforeAll
    static void aBoatOfItsOwn() throws IOException {
        P11_OneBoatTest.own(OWN);
    }

    private static List<ServiceEntry> entries() {
        return desk().part(OpenYard.class).files().history(OWN).entries();
    }

    @Test
    void bothPagesAreInOrder() {
        checkPage("/boats/" + OWN + "/record", Role.TECHNICIAN);
        as(Role.TECHNICIAN, Screen.PHONE_LIGHT, page -> {
            open(page, "/boats/" + OWN + TWO);
            look(page, "record-two", Screen.PHONE_LIGHT);
        });
    }

    @Test
    void severalWorksAreJudgedAsTypedAndWrittenOnce() {
        as(Role.TECHNICIAN, page -> {
            open(page, "/boats/" + OWN + "/record");
            page.locator("button.act").click();
            assertEquals(
                    "Tick at least one work.", page.getByRole(AriaRole.ALERT).innerText());
            page.locator("main details summary").first().click();
            page.locator("input[value='main/engine:change-engine-oil']").check();
            page.locator("input[value='main/coolant:test-coolant']").check();
            page.locator("button.act").click();

            String freeze = "input[id$='coolant-freeze-point']";
            page.locator(freeze).fill("-40");
            page.locator(freeze).blur();
            assertTrue(page.locator(".said .state").first().innerText().contains("fine"));

            page.locator(freeze).fill("-10 bar");
            page.locator("button.act").click();
            String wrong = page.getByRole(AriaRole.ALERT).innerText();
            assertTrue(wrong.contains("bar"), wrong);
            look(page, "record-refused", Screen.DESK_LIGHT);
            assertEquals(0, entries().size(), "nothing was written");

            page.locator(freeze).fill("-10");
            page.locator("main button[name=look]").click();
            assertTrue(page.locator(".said").first().innerText().contains("act"));
            look(page, "record-looked-at", Screen.DESK_LIGHT);
            page.locator("#hours-main").fill("312");
            page.evaluate("() => { const f = document.querySelector('form.entry');"
                    + " return fetch(f.action, {method: 'POST', body: new URLSearchParams(new FormData(f))}); }");
            page.locator("button.act").click();
            assertTrue(page.locator(".notice").innerText().contains("sent before"));
            assertEquals(2, entries().size(), "written once");
            assertEquals("Person Invented T", entries().get(0).who());
            assertEquals(312.0, entries().get(0).hours());
            assertTrue(page.locator("tbody").innerText().contains("act"));
        });
        as(Role.SURVEYOR, page -> open(page, "/boats/" + OWN + "/record", 403));
    }

    @Test
    void aGroundingIsWrittenDown() {
        as(Role.OFFICE, page -> {
            open(page, "/boats/" + OWN + "/record");
            page.locator("#what").selectOption("grounding");
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Write down that it happened today"))
                    .click();
            assertTrue(page.locator("tbody").innerText().contains("grounding"));
        });
    }
}
