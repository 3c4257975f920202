package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.app.account.Role;

/** Every page on every screen, and the list of boats as the example of a list. */
class P02_LooksTest extends PageTest {
    @ParameterizedTest
    @ValueSource(strings = {"/", "/boats", "/settings", "/settings/people", "/settings/people/new", "/settings/audit"})
    void pageIsInOrder(String path) {
        checkPage(path, Role.MANAGER);
    }

    @Test
    void signInIsInOrder() {
        checkOpenPage(desk(), "/sign-in");
        checkOpenPage(desk(), "/sign-in?failed");
    }

    @Test
    void boatsAreFoundAndSorted() {
        as(Role.SURVEYOR, page -> {
            open(page, "/boats");
            Locator names = page.locator("tbody th");
            String first = names.first().innerText();
            page.locator("thead a").first().click();
            assertEquals(first, names.last().innerText());
            page.getByLabel("Name, owner, berth or engine").fill(first);
            page.locator(".filters button").click();
            assertEquals(1, names.count());
            assertTrue(page.url().contains("find="), page.url());
        });
    }

    @Test
    void darkIsChosenOnceAndKept() {
        as(Role.OFFICE, page -> {
            open(page, "/boats");
            page.locator(".look button[value=dark]").click();
            assertTrue(page.url().endsWith("/boats"));
            assertEquals("dark", page.locator("html").getAttribute("data-look"));
            open(page, "/");
            assertEquals("dark", page.locator("html").getAttribute("data-look"));
        });
    }
}
