package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import sternwright.app.account.Role;
import sternwright.app.desk.open.OpenYard;
import sternwright.history.Outcome;
import sternwright.history.ServiceEntry;

/** A job card is issued, worked through on a phone, and recorded once. */
class P13_CardTest extends PageTest {
    private static void press(Page page, String name) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name))
                .first()
                .click();
    }

    private static String issued() {
        String[] path = new String[1];
        as(Role.TECHNICIAN, page -> {
            open(page, "/visits");
            page.locator("tbody a").last().click();
            press(page, "Job card of visit 1");
            path[0] = page.url().replaceAll("^https?://[^/]+", "");
        });
        return path[0];
    }

    private static long recorded(String boat) {
        return desk().part(OpenYard.class).files().history(boat).entries().stream()
                .filter(e -> e.outcome() == Outcome.DONE && e.date().equals(RunningDesk.TODAY))
                .map(ServiceEntry::who)
                .filter("Person Invented T"::equals)
                .count();
    }

    @Test
    void aCardIsWorkedThroughOnAPhoneAndRecordedOnce() {
        String path = issued();
        String boat = path.replaceAll("^/cards/(.*)-[0-9]{4}-[0-9]{2}-[0-9]{2}.*$", "$1");
        checkPage(path, Role.TECHNICIAN);
        as(Role.TECHNICIAN, Screen.PHONE_LIGHT, page -> {
            open(page, path);
            assertTrue(
                    page.locator("#cautions").boundingBox().y
                            < page.locator(".job").first().boundingBox().y,
                    "cautions come first");
            judged(page);
            press(page, "Record the work");
            assertTrue(page.getByRole(AriaRole.ALERT).innerText().contains("say whether it is done"));
            look(page, "card-refused", Screen.PHONE_LIGHT);
            int works = page.locator(".job").count();
            for (Locator job : page.locator(".job").all()) {
                job.locator("input[value=done]").check();
                job.locator("input[name$=remark]").fill("tried in a test");
            }
            page.getByLabel("Time spent").fill("2,5");
            recordTwice(page, path);
            assertEquals(works, recorded(boat));
            look(page, "card-recorded", Screen.PHONE_LIGHT);
            assertEquals(0, page.locator("button.act").count(), "a recorded card is not written on");
            photo(page, "MZ\u0000program".getBytes(StandardCharsets.ISO_8859_1));
            assertTrue(page.getByRole(AriaRole.ALERT).innerText().contains("none of the kinds kept"));
            photo(page, P15_DocumentsTest.PICTURE);
            assertEquals(1, page.locator("img.photo").count());
            look(page, "card-with-photo", Screen.PHONE_LIGHT);
            open(page, "/boats/" + boat + "/documents");
            page.getByText("From a job card").click();
            assertTrue(page.url().endsWith(path), "it stands with the boat, too");
        });
        checkPage("/cards", Role.SURVEYOR);
    }

    private static void photo(Page page, byte[] content) {
        page.locator("#file").setInputFiles(new FilePayload("bellows.png", "image/png", content));
        press(page, "Put it on the card");
    }

    /** A reading is judged as it is typed, with its limit and why, and kept. */
    private static void judged(Page page) {
        Locator reading = page.locator(".reading:has(input[inputmode])").first();
        String field = reading.locator("input").getAttribute("name");
        Locator verdict = reading.locator(".verdict");
        reading.locator("input").fill("nonsense");
        verdict.getByText("cannot be read").waitFor();
        page.waitForResponse(
                r -> r.url().contains("/note"), () -> reading.locator("input").fill("1"));
        verdict.locator("text=/Limit:/").waitFor();
        String says = verdict.innerText();
        assertTrue(says.matches("(?s).*(fine|watch|act|unsafe).*Limit: .*"), says);
        page.reload();
        assertEquals("1", page.locator("[name='" + field + "']").inputValue());
        assertTrue(page.locator(".verdict").allInnerTexts().contains(says), "the verdict stands without script, too");
    }

    /** Two windows hold the same card; the second is told that it is recorded already. */
    private static void recordTwice(Page page, String path) {
        try (BrowserContext window = desk().window(Screen.PHONE_DARK, Role.TECHNICIAN)) {
            Page second = window.newPage();
            second.navigate(desk().address() + path.substring(1));
            press(page, "Record the work");
            assertTrue(page.locator(".notice").first().innerText().contains("is recorded"), "recorded");
            Response again = second.waitForResponse(
                    r -> r.request().method().equals("POST") && r.url().endsWith("/finish"),
                    () -> press(second, "Record the work"));
            assertEquals(303, again.status());
            assertTrue(second.locator(".notice").first().innerText().contains("nothing was written twice"));
        }
    }

    @Test
    void nothingButTheFieldsOfACardIsWrittenOnIt() {
        String path = issued();
        as(Role.TECHNICIAN, page -> {
            open(page, path);
            Object status = page.evaluate(
                    "async path => (await fetch(path + '/note?field=w999.step0', {method: 'POST',"
                            + " headers: {'X-CSRF-TOKEN': document.querySelector('[name=_csrf]').value}})).status",
                    path);
            assertEquals(400, ((Number) status).intValue());
        });
        as(Role.SURVEYOR, page -> {
            open(page, path);
            assertEquals(0, page.locator("button.act").count(), "a surveyor reads");
            open(page, "/cards/no-such-card", 404);
        });
    }
}
