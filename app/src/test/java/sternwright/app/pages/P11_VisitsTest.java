package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.SelectOption;
import org.junit.jupiter.api.Test;
import sternwright.app.account.Role;

/** The visits of a boat: planned at once, proved while they are read, argued about. */
class P11_VisitsTest extends PageTest {
    /** A proof and both alternatives may take their whole time on a busy machine. */
    private static final Locator.WaitForOptions PROOF = new Locator.WaitForOptions().setTimeout(90_000);

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
            assertTrue(proof.innerText().matches("(?s)(A plan at once|Proved|It costs).*"), proof.innerText());
            page.locator("#plan:not([hx-get])").waitFor(PROOF);
            assertTrue(proof.innerText().matches("(?s)(Proved|It costs).*"), proof.innerText());
            assertTrue(page.locator(".visit").count() > 0);
            assertTrue(page.locator(".visit summary").first().isVisible());
            assertEquals(2, page.locator(".chapters dt").count());

            page.locator("#left").selectOption(new SelectOption().setIndex(1));
            page.getByLabel("Left until").fill("2027-10-01");
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Work it out"))
                    .click();
            page.locator("#plan:not([hx-get])").waitFor(PROOF);
            String answer = page.locator("#plan .notice").innerText();
            assertTrue(answer.matches("(?s).*(in money|cannot be left).*"), answer);
            look(page, "visits-argued", Screen.DESK_LIGHT);
        });
        checkPage(path[0], Role.SURVEYOR);
    }

    @Test
    void aPlanIsChangedByHandPricedRefusedWhereItMustNotBeAndAccepted() {
        String[] path = new String[1];
        as(Role.OFFICE, page -> {
            open(page, "/visits?sort=-boat");
            page.locator("tbody a").first().click();
            page.locator("#plan:not([hx-get])").waitFor(PROOF);
            page.getByText("Change by hand, or accept").click();
            Locator visits = page.locator("section.visit");
            int before = visits.count();
            page.locator("#visit").selectOption(new SelectOption().setIndex(1));
            page.locator("#visit-to").selectOption("none");
            press(page, "Move the visit");
            page.getByText("Beside the plan it begins from").waitFor();
            look(page, "visits-by-hand", Screen.DESK_LIGHT);
            assertEquals(before - 1, visits.count());
            page.getByText("Take back the last change").click();
            page.getByText("Nothing is changed yet").waitFor();
            assertEquals(before, visits.count());
            String looked =
                    page.locator("form[action$=accept] input[name=plan]").getAttribute("value");
            page.evaluate("() => document.querySelector('form[action$=accept] input[name=plan]').value = 'ffff'");
            press(page, "Accept these visits");
            assertEquals("Somebody was quicker", page.locator("h1").innerText());
            page.goBack();
            assertEquals(
                    looked,
                    page.locator("form[action$=accept] input[name=plan]").getAttribute("value"));
            page.reload();
            press(page, "Accept these visits");
            assertTrue(page.locator(".notice").innerText().contains("accepted and written down"));
            assertEquals(before, visits.count());
            path[0] = page.url().replaceAll("^https?://[^/]+", "");
            page.locator(".lead a").click();
            assertTrue(page.locator("#plan .notice").innerText().contains("Agreed by Person Invented O"));
        });
        checkPage(path[0], Role.OFFICE);
        as(Role.OFFICE, page -> {
            open(page, path[0] + "&c=visit:1999-01.ashore:none", 422);
            assertTrue(page.getByRole(AriaRole.ALERT).innerText().contains("There is no visit"));
            open(page, path[0] + "&c=%7Bnonsense%7D", 422);
        });
    }

    private static void press(Page page, String name) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name))
                .first()
                .click();
    }

    @Test
    void aBoatThatIsNotThereSaysSo() {
        as(Role.OFFICE, page -> open(page, "/visits/no-such-boat", 404));
    }
}
