package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.Test;
import sternwright.app.account.Role;

/** The visits of a boat: planned at once, proved while they are read, argued about. */
class P11_VisitsTest extends PageTest {
    @Test
    void listIsInOrder() {
        checkPage("/visits", Role.TECHNICIAN);
    }

    @Test
    void aPlanIsProvedWhileItIsReadAndArguedAbout() {
        String[] path = new String[1];
        as(Role.OFFICE, page -> {
            open(page, "/visits");
            page.locator("tbody a").first().click();
            path[0] = page.url().replaceAll("^https?://[^/]+", "");
            Locator proof = page.locator("#plan > p[role=status]");
            assertTrue(proof.innerText().matches("(?s)(A plan at once|Proved|It weighs).*"), proof.innerText());
            page.locator("#plan:not([hx-get])").waitFor();
            assertTrue(proof.innerText().matches("(?s)(Proved|It weighs).*"), proof.innerText());
            assertTrue(page.locator(".visit").count() > 0);
            assertTrue(page.locator(".visit summary").first().isVisible());
            assertEquals(2, page.locator(".chapters dt").count());

            page.locator("#left").selectOption(new com.microsoft.playwright.options.SelectOption().setIndex(1));
            page.getByLabel("Left until").fill("2027-10-01");
            page.getByRole(AriaRole.BUTTON, new com.microsoft.playwright.Page.GetByRoleOptions().setName("Work it out"))
                    .click();
            page.locator("#plan:not([hx-get])").waitFor();
            String answer = page.locator("#plan .notice").innerText();
            assertTrue(answer.matches("(?s).*(in money|cannot be left).*"), answer);
            look(page, "visits-argued", Screen.DESK_LIGHT);
        });
        checkPage(path[0], Role.SURVEYOR);
    }

    @Test
    void aBoatThatIsNotThereSaysSo() {
        as(Role.OFFICE, page -> open(page, "/visits/no-such-boat", 404));
    }
}
