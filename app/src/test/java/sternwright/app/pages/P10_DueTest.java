package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import org.junit.jupiter.api.Test;
import sternwright.app.account.Role;

/** The due list: narrowed, sorted, and asked why. */
class P10_DueTest extends PageTest {
    @Test
    void pageIsInOrder() {
        checkPage("/due", Role.SURVEYOR);
    }

    @Test
    void theListIsNarrowedToWhatCanBeDoneAshoreAndToldWhy() {
        as(Role.OFFICE, page -> {
            open(page, "/due");
            int now = total(page.locator("caption").innerText());
            page.locator("#state").selectOption("all");
            page.locator(".filters button").click();
            int all = total(page.locator("caption").innerText());
            assertTrue(all > now, all + " in all, " + now + " now");

            page.locator(".more summary").click();
            page.getByLabel("Safety items only").check();
            page.locator("#place").selectOption("ashore");
            page.locator(".filters button").click();
            assertTrue(total(page.locator("caption").innerText()) < all);
            Locator works = page.locator("tbody tr");
            assertEquals(works.count(), page.locator("tbody .safety").count());

            works.first().locator("summary").click();
            look(page, "due-why", Screen.DESK_LIGHT);
            assertTrue(works.first().innerText().contains("Figure"));
            assertTrue(works.first().locator("dl").innerText().contains("("), "the source says its standing");
        });
    }

    @Test
    void columnsSortAndNothingFoundSaysSo() {
        as(Role.TECHNICIAN, page -> {
            open(page, "/due?state=all&sort=-boat");
            String last = page.locator("tbody a").first().innerText();
            open(page, "/due?state=all&sort=boat");
            String first = page.locator("tbody a").first().innerText();
            assertTrue(first.compareTo(last) < 0, first + " before " + last);
            open(page, "/due?find=no-such-boat");
            assertTrue(page.locator("main").innerText().contains("Nothing matches"));
            open(page, "/due?state=nonsense&place=nowhere&page=99999&sort=nonsense");
            assertTrue(page.locator("tbody tr").count() > 0);
        });
    }

    private static int total(String caption) {
        return Integer.parseInt(caption.replaceAll("^([0-9,]+).*", "$1").replace(",", ""));
    }
}
