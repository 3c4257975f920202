package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sternwright.app.account.Role;
import sternwright.app.desk.open.OpenYard;

/** The manager changes rates, units, people and figures in the pages; the yard's files keep what people wrote in them. */
class P17_SettingsTest extends PageTest {
    private static final String OWN = "settledabout";

    @BeforeAll
    static void aBoatOfItsOwn() throws IOException {
        P11_OneBoatTest.own(OWN);
    }

    private static String text(String name) {
        try {
            return desk().part(OpenYard.class).shelf("").text(name).orElse("");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void keep(Page page) {
        page.locator("main button.act").click();
    }

    @Test
    void aRateIsChangedInItsLineAndTheSecondWindowIsTold() {
        String before = text("yard.yaml");
        checkPage("/settings/rates", Role.OFFICE);
        as(Role.MANAGER, page -> {
            open(page, "/settings/rates");
            String labour = page.locator("#labour").inputValue();
            page.locator("#labour").fill("91,5");
            page.locator("#tax").fill("200");
            page.locator("#up-to-0").fill("soon");
            keep(page);
            assertEquals(1, page.locator(".field.wrong").count());
            page.locator("#up-to-0").fill("8");
            keep(page);
            assertTrue(page.locator("#tax-error").innerText().contains("0 to 100"), "told by the reader of the file");
            assertEquals(before, text("yard.yaml"), "nothing was written");
            page.locator("#tax").fill("20");
            try (BrowserContext other = desk().window(Screen.DESK_LIGHT, Role.MANAGER)) {
                Page second = other.newPage();
                open(second, "/settings/rates");
                keep(page);
                assertTrue(page.locator(".notice").innerText().contains("kept"));
                second.locator("#callOut").fill("1");
                keep(second);
                assertEquals("Somebody was quicker", second.locator("h1").innerText());
            }
            String after = text("yard.yaml");
            assertTrue(after.contains("labour-per-hour: 91.5"), after);
            assertEquals(
                    before.lines().filter(l -> l.contains("#")).toList(),
                    after.lines().filter(l -> l.contains("#")).toList(),
                    "comments stay");
            open(page, "/settings/audit");
            assertTrue(page.locator("tbody tr").first().innerText().contains("91.5"));
            open(page, "/settings/rates");
            page.locator("#labour").fill(labour);
            keep(page);
            open(page, "/settings/stores");
            look(page, "settings-stores", Screen.DESK_LIGHT);
            String oil = page.locator("#price-engine-oil").inputValue();
            page.locator("#price-engine-oil").fill("-1");
            keep(page);
            assertTrue(page.locator("#price-engine-oil-error").innerText().contains("at least 0"));
            page.locator("#price-engine-oil").fill("11.25");
            keep(page);
            assertTrue(text("yard.yaml").contains("11.25"));
            page.locator("#price-engine-oil").fill(oil);
            keep(page);
        });
    }

    @Test
    void figuresFollowTheYardsUnits() {
        as(Role.MANAGER, page -> {
            open(page, "/settings/units");
            look(page, "settings-units", Screen.DESK_LIGHT);
            page.locator("#temperature").selectOption("°F");
            keep(page);
            open(page, "/boats/" + OWN + "/record?work=main/coolant:test-coolant");
            String freeze = page.locator("input[id$='coolant-freeze-point']")
                    .locator("..")
                    .innerText();
            assertTrue(freeze.contains("°F"), freeze);
            open(page, "/settings/units");
            page.locator("#temperature").selectOption("°C");
            keep(page);
            open(page, "/settings/calendar");
            look(page, "settings-calendar", Screen.DESK_LIGHT);
            page.locator("#layUpFrom").fill("8-1");
            page.locator("#holidays").fill("2026-12-25\n2027-02-30");
            keep(page);
            assertEquals(2, page.locator(".field.wrong").count());
            page.locator("#layUpFrom").fill("08-01");
            page.locator("#layUpTo").fill("03-15");
            page.locator("#holidays").fill("2026-12-25");
            keep(page);
            assertTrue(page.locator("#recommissionFrom-error").innerText().contains("share days"));
            page.locator("#layUpTo").fill("09-30");
            page.locator("#holidays").fill("2026-12-25");
            page.locator("main button[name=look]").click();
            assertTrue(page.locator(".effect").innerText().contains("due list move"));
        });
    }

    @Test
    void anEngineerComesAndGoes() {
        checkPage("/settings/resources", Role.OFFICE);
        String before = text("resources.yaml");
        as(Role.MANAGER, page -> {
            open(page, "/settings/crew/new");
            page.locator("#name").fill("Newcomer Invented");
            page.locator("#skill-drive").check();
            page.locator("#from-0").fill("2026-12-21");
            page.locator("#to-0").fill("2026-12-20");
            keep(page);
            assertTrue(page.locator("#to-0-error").innerText().contains("before the first day"));
            page.locator("#to-0").fill("2026-12-23");
            page.locator("#why-0").fill("course");
            look(page, "settings-crew", Screen.DESK_LIGHT);
            keep(page);
            Page.GetByRoleOptions one = new Page.GetByRoleOptions().setName("Newcomer Invented");
            assertTrue(page.locator("tbody").first().innerText().contains("course"));
            page.getByRole(AriaRole.LINK, one).click();
            page.locator("#gone").check();
            keep(page);
            assertFalse(page.getByRole(AriaRole.LINK, one).isVisible());
            assertEquals(before, text("resources.yaml"), "letter by letter");
            open(page, "/settings/tides");
            look(page, "settings-tides", Screen.DESK_LIGHT);
            open(page, "/settings/times");
            page.locator("#begins").fill("noon");
            page.locator("#hoursADay").fill("30");
            keep(page);
            assertEquals(1, page.locator(".field.wrong").count());
            page.locator("#begins").fill("07:30");
            keep(page);
            assertTrue(page.locator("#hoursADay-error").innerText().contains("16"));
            look(page, "settings-times", Screen.DESK_LIGHT);
        });
        as(Role.TECHNICIAN, page -> {
            open(page, "/settings/resources", 403);
            open(page, "/settings/crew/new", 403);
        });
    }

    @Test
    void aFigureForABoatIsSeenKeptAndTakenBack() {
        checkPage("/boats/" + OWN + "/rules", Role.MANAGER);
        String figures = "/settings/programmes/change-engine-oil/figures?scope=boat&target=" + OWN;
        String[] before = {""};
        as(Role.MANAGER, page -> {
            before[0] = text("programmes/own.yaml");
            open(page, "/boats/" + OWN + "/rules?find=engine oil");
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Other figure for the boat"))
                    .first()
                    .click();
            page.locator("#months").fill("0");
            keep(page);
            assertTrue(page.locator("#months-error").innerText().contains("at least 1"));
            page.locator("#months").fill("1");
            page.locator("#dropHours").check();
            page.locator("#sourceTitle").fill("Manual K-40");
            page.locator("#standing").selectOption("MAKER");
            page.locator("main button[name=look]").click();
            assertTrue(page.locator(".effect").innerText().length() > 0);
            assertEquals(before[0], text("programmes/own.yaml"), "looking writes nothing");
            keep(page);
            assertTrue(page.locator(".notice").innerText().contains("kept"));
            assertTrue(
                    page.locator("tbody").innerText().contains("1 month, no hours"),
                    page.locator("tbody").innerText());
            open(page, "/boats/" + OWN + "/rules?find=engine oil");
            String chain = page.locator("td[data-label='Figures come from'] .step")
                    .last()
                    .innerText();
            assertTrue(chain.startsWith("rule for this boat: 1 month, no hours; Manual K-40"), chain);
        });
        checkPage(figures, Role.MANAGER);
        as(Role.MANAGER, page -> {
            open(page, figures);
            page.getByText("Take this figure back").click();
            look(page, "settings-take-back", Screen.DESK_LIGHT);
            keep(page);
            assertEquals(before[0], text("programmes/own.yaml"), "letter by letter");
            open(page, "/settings/programmes");
            look(page, "settings-programmes", Screen.DESK_LIGHT);
            open(page, "/settings");
            look(page, "settings", Screen.DESK_LIGHT);
        });
        as(Role.TECHNICIAN, page -> {
            open(page, figures, 403);
            open(page, "/settings/programmes/change-engine-oil");
            look(page, "settings-rule", Screen.DESK_LIGHT);
        });
    }
}
