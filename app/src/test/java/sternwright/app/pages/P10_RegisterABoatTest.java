package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.Test;
import sternwright.app.account.Role;
import sternwright.app.desk.open.OpenYard;

/** A newcomer registers a boat: picks an arrangement, answers what is known, and ends on her page. */
class P10_RegisterABoatTest extends PageTest {
    @Test
    void arrangementsAndFormAreInOrder() {
        checkPage("/boats/new", Role.OFFICE);
        checkPage("/boats/new/saildrive", Role.OFFICE);
    }

    @Test
    void aBoatIsRegisteredWithWhatIsKnownOfHer() {
        as(Role.OFFICE, page -> {
            open(page, "/boats");
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Register a boat"))
                    .click();
            page.locator(".picks a[href$=saildrive]").click();
            assertEquals("A new boat: saildrive", page.locator("h1").innerText());

            page.getByLabel("Length overall").fill("ten");
            page.locator("#fitted-diaphragm-seal").fill("30 April 2019");
            page.locator("button.act").click();
            look(page, "register-refused", Screen.DESK_LIGHT);
            String wrong = page.getByRole(AriaRole.ALERT).innerText();
            assertTrue(wrong.contains("4 things must be put right"), wrong);
            assertEquals("ten", page.getByLabel("Length overall").inputValue());

            page.locator("#name").fill("Dabchick <script>alert(1)</script>");
            page.locator("#berth").selectOption(new com.microsoft.playwright.options.SelectOption().setIndex(1));
            page.getByLabel("Length overall").fill("9,5");
            page.locator("#fitted-diaphragm-seal").fill("2019");
            page.locator("button.act").click();
            assertTrue(page.url().endsWith("/boats/dabchick-script-alert-1-script"), page.url());
            assertEquals(
                    "Dabchick <script>alert(1)</script>", page.locator("h1").innerText());
            String facts = page.locator("dl.pairs").innerText();
            assertTrue(facts.contains("9.5\u00a0m long") && facts.contains("not known"), facts);
        });
    }

    @Test
    void sentTwiceSheIsRegisteredOnce() {
        as(Role.OFFICE, page -> {
            open(page, "/boats/new/shaft");
            page.locator("#name").fill("Twicefold");
            page.locator("#berth").selectOption(new com.microsoft.playwright.options.SelectOption().setIndex(1));
            page.evaluate("() => { const f = document.querySelector('form.entry');"
                    + " return fetch(f.action, {method: 'POST', body: new URLSearchParams(new FormData(f))}); }");
            page.locator("button.act").click();
            assertTrue(page.locator(".notice").innerText().contains("sent twice and registered once"));
            long found = desk().part(OpenYard.class).files().boats().values().stream()
                    .filter(b -> b.name().equals("Twicefold"))
                    .count();
            assertEquals(1, found);
        });
    }

    @Test
    void onlyTheOfficeRegisters() {
        as(Role.TECHNICIAN, page -> open(page, "/boats/new", 403));
        as(Role.OFFICE, page -> open(page, "/boats/new/balloon", 404));
    }
}
