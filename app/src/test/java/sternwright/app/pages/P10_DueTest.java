package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.AriaRole;
import java.nio.charset.StandardCharsets;
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

    @Test
    void everySealOverFiveYearsBecomesASheetAndLetters() {
        as(Role.OFFICE, page -> {
            open(page, "/due");
            page.getByText("Campaigns").click();
            page.locator("#rule").selectOption("renew-diaphragm-seal");
            page.locator("#years").fill("five");
            page.locator(".filters button").first().click();
            assertTrue(page.getByRole(AriaRole.ALERT).innerText().contains("a number of years"));
            page.locator("#years").fill("5");
            page.locator(".filters button").first().click();
            int parts = page.locator("tbody tr").count();
            assertTrue(parts > 0);
            look(page, "due-campaign-asked", Screen.DESK_LIGHT);
            APIResponse sheet = page.request()
                    .get(desk().address()
                            + page.locator("a[href*='.csv']")
                                    .getAttribute("href")
                                    .substring(1));
            assertEquals(parts + 1, sheet.text().strip().split("\\R").length);
            String letters = desk().address() + "due/campaign.pdf?rule=renew-diaphragm-seal&years=5&by=2027-01-15";
            APIResponse pdf = page.request().get(letters);
            assertEquals(200, pdf.status());
            assertTrue(new String(pdf.body(), 0, 5, StandardCharsets.US_ASCII).startsWith("%PDF-"));
            assertEquals(
                    422, page.request().get(letters.replace("2027", "1999")).status());
        });
        checkPage("/due/campaign", Role.MANAGER);
        as(Role.TECHNICIAN, page -> open(page, "/due/campaign", 403));
    }

    private static int total(String caption) {
        return Integer.parseInt(caption.replaceAll("^([0-9,]+).*", "$1").replace(",", ""));
    }
}
