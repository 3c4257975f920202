package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.AriaRole;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import sternwright.app.account.Role;
import sternwright.app.account.SecretWords;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.issued.IssuedEstimates;
import sternwright.history.Outcome;

/** An estimate goes from the plan to the owner by a private link, is answered line by line, and comes back. */
class P12_EstimateTest extends PageTest {
    private static void press(Page page, String name) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name))
                .first()
                .click();
    }

    /** Makes an estimate of the first visit of a boat that has safety items, and a link to it. */
    private static String[] sent() {
        String[] made = new String[2];
        as(Role.OFFICE, page -> {
            open(page, "/visits");
            page.locator("tbody a").first().click();
            press(page, "Estimate of visit 1");
            made[0] = page.url().replaceAll("^https?://[^/]+", "");
            press(page, "Make a link for the owner");
            look(page, "estimate-link", Screen.DESK_LIGHT);
            made[1] = page.locator("code.secret").innerText();
        });
        return made;
    }

    @Test
    void anOwnerAnswersLineByLineAndARefusedSafetyItemIsOnRecord() {
        String[] made = sent();
        checkPage(made[0], Role.OFFICE);
        String[] refused = new String[1];
        for (Screen screen : List.of(Screen.DESK_DARK, Screen.PHONE_LIGHT)) {
            try (BrowserContext window = desk().window(screen)) {
                Page page = window.newPage();
                assertEquals(200, page.navigate(made[1]).status());
                look(page, "estimate-owner", screen);
                assertEquals(0, page.locator("nav a").count(), "nothing else of the yard is reachable");
            }
        }
        try (BrowserContext window = desk().window(Screen.PHONE_LIGHT)) {
            Page page = window.newPage();
            page.navigate(made[1]);
            Locator safety = page.locator(".offer:has(.safety)").first();
            refused[0] = safety.locator("legend").innerText();
            safety.getByLabel("No", new Locator.GetByLabelOptions().setExact(true))
                    .check();
            page.locator("#name").fill("Greta <i>Invented</i>");
            press(page, "Say yes to every line not answered, and send");
            assertTrue(page.getByRole(AriaRole.ALERT).innerText().contains("tick the statement"));
            look(page, "estimate-owner-wrong", Screen.PHONE_LIGHT);
            safety = page.locator(".offer:has(.safety)").first();
            assertTrue(safety.locator(".refusing").innerText().contains("safety item"));
            safety.locator(".refusing input").check();
            press(page, "Send my answer");
            assertTrue(page.locator(".notice").innerText().contains("Thank you, Greta <i>Invented</i>"));
            assertEquals(0, page.locator("input[type=radio]").count(), "an answer is given once");
            look(page, "estimate-answered", Screen.PHONE_LIGHT);
        }
        as(Role.OFFICE, page -> {
            open(page, made[0]);
            assertTrue(page.locator("main").innerText().contains("partly declined"));
            assertTrue(page.locator("main").innerText().contains("Answered by Greta"));
            open(page, "/estimates");
            assertTrue(page.locator("tbody").innerText().contains("partly declined"));
        });
        assertTrue(
                desk().part(OpenYard.class).files().histories().values().stream()
                        .flatMap(h -> h.entries().stream())
                        .anyMatch(e -> e.outcome() == Outcome.REFUSED
                                && e.who().startsWith("Greta")
                                && refused[0]
                                        .toLowerCase(java.util.Locale.ROOT)
                                        .contains(e.part().partId().substring(0, 3))),
                refused[0]);
        checkPage("/estimates", Role.OFFICE);
    }

    @Test
    void anAnsweredLinkIsNotAnsweredTwice() {
        String[] made = sent();
        try (BrowserContext one = desk().window(Screen.DESK_LIGHT);
                BrowserContext two = desk().window(Screen.DESK_LIGHT)) {
            Page first = one.newPage();
            Page second = two.newPage();
            first.navigate(made[1]);
            second.navigate(made[1]);
            first.locator("#name").fill("First");
            press(first, "Say yes to every line not answered, and send");
            second.locator("#name").fill("Second");
            Response answer = second.waitForResponse(
                    r -> r.request().method().equals("POST"),
                    () -> press(second, "Say yes to every line not answered, and send"));
            assertEquals(409, answer.status());
            assertTrue(second.locator("main").innerText().contains("Answered by First"));
        }
    }

    @Test
    void linksThatAreUnknownWithdrawnOrOverSaySoAndShowNothing() {
        String[] made = sent();
        String id = made[0].substring(made[0].lastIndexOf('/') + 1);
        try (BrowserContext window = desk().window(Screen.DESK_LIGHT)) {
            Page page = window.newPage();
            assertEquals(
                    404,
                    page.navigate(made[1].substring(0, made[1].length() - 4) + "AAAA")
                            .status());

            desk().part(IssuedEstimates.class).withdraw(id);
            gone(page, made[1], "withdrawn");
            look(page, "estimate-dead", Screen.DESK_LIGHT);

            String secret = SecretWords.make();
            assertTrue(desk().part(IssuedEstimates.class)
                    .link(id, SecretWords.hash(secret), Instant.parse("2026-01-02T00:00:00Z")));
            gone(page, desk().address() + "estimate/" + secret, "ended on");
            assertEquals(404, page.navigate(made[1]).status(), "the older link is unknown now");
            assertTrue(page.navigate(desk().address() + "estimates/" + id).url().contains("sign-in"));
        }
        as(Role.TECHNICIAN, page -> open(page, made[0], 403));
    }

    private static void gone(Page page, String link, String why) {
        assertEquals(410, page.navigate(link).status());
        String says = page.locator("main").innerText();
        assertTrue(says.contains(why), says);
        assertFalse(says.contains("€"), "no price is shown any more");
    }
}
