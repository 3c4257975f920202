package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import sternwright.app.account.Role;

/** From the first start to the owner's account, and on to a second person. */
class P01_FirstStartTest extends PageTest {
    @Test
    void nobodysPagesAskForTheOwnersAccountOnce() throws IOException {
        RunningDesk fresh = RunningDesk.fresh(RunningDesk.ask(RunningDesk.yard(2)), "ABCD-EFGH-JKMN");
        try (BrowserContext window = fresh.window(Screen.DESK_LIGHT)) {
            checkOpenPage(fresh, "/first-start");
            Page page = window.newPage();
            page.navigate(fresh.address() + "boats");
            assertTrue(page.url().endsWith("/first-start"), page.url());

            fill(page, "WRONG", "short", "other");
            look(page, "first-start-refused", Screen.DESK_LIGHT);
            assertTrue(page.getByRole(com.microsoft.playwright.options.AriaRole.ALERT)
                    .innerText()
                    .contains("2 things must be put right"));
            assertEquals("Ada Invented", page.getByLabel("Your name").inputValue());

            fill(page, "abcd efgh jkmn", RunningDesk.PASSWORD, RunningDesk.PASSWORD);
            assertTrue(page.url().endsWith("/sign-in"), page.url());
            fresh.signIn(page, "ADA", RunningDesk.PASSWORD);
            assertEquals("Today", page.locator("h1").innerText());

            page.navigate(fresh.address() + "first-start");
            assertTrue(!page.url().endsWith("/first-start"), "the owner's account is made once");
        } finally {
            fresh.close();
        }
    }

    private static void fill(Page page, String code, String password, String again) {
        page.getByLabel("Code").fill(code);
        page.getByLabel("Your name").fill("Ada Invented");
        page.getByLabel("Name to sign in with").fill("Ada");
        page.locator("#password").fill(password);
        page.locator("#again").fill(again);
        page.locator("form[action='/first-start'] button").click();
    }

    @Test
    void aSecondPersonSetsAPasswordByALinkThatWorksOnce() {
        String[] link = new String[1];
        as(Role.MANAGER, page -> {
            open(page, "/settings/people/new");
            page.getByLabel("Name", new Page.GetByLabelOptions().setExact(true)).fill("Bo <b>Invented</b>");
            page.getByLabel("Name to sign in with").fill("bo");
            page.locator("#role").selectOption("TECHNICIAN");
            page.locator("form[action='/settings/people/new'] button").click();
            look(page, "person-link", Screen.DESK_LIGHT);
            link[0] = page.locator("code.secret").innerText();
        });
        try (BrowserContext window = desk().window(Screen.PHONE_LIGHT)) {
            Page page = window.newPage();
            page.navigate(link[0]);
            look(page, "set-password", Screen.PHONE_LIGHT);
            page.locator("#password").fill(RunningDesk.PASSWORD);
            page.locator("#again").fill(RunningDesk.PASSWORD);
            page.locator("main form button").click();
            desk().signIn(page, "bo", RunningDesk.PASSWORD);
            assertEquals("Today", page.locator("h1").innerText());
            page.navigate(link[0]);
            assertEquals("This link does not work any more", page.locator("h1").innerText());
        }
        as(Role.MANAGER, page -> {
            open(page, "/settings/audit");
            assertTrue(page.locator("tbody").innerText().contains("Password set"));
        });
    }
}
