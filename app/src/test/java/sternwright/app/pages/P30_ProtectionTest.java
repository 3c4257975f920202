package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import sternwright.app.account.Role;
import sternwright.app.desk.open.OpenYard;

/** Looks at a boat's protection and asks what readings say. */
class P30_ProtectionTest extends PageTest {
    private static String boat() {
        return desk().part(OpenYard.class).files().boats().keySet().iterator().next();
    }

    @Test
    void thePagesStandOnEveryScreen() {
        checkPage("/protection", Role.SURVEYOR);
        checkPage("/protection/" + boat(), Role.SURVEYOR);
    }

    @Test
    void readingsAreToldWhatTheySayAndWhatToMeasureNext() {
        as(Role.TECHNICIAN, page -> {
            open(page, "/protection/" + boat());
            assertTrue(page.getByText("Nothing is written").isVisible());
            reading(page, 1, "-560", "mV");
            page.getByLabel("Reference electrode").selectOption("Ag/AgCl/sw");
            page.getByText("What do they say?").click();
            Locator said = page.locator("#findings + p");
            assertTrue(said.innerText().length() > 10, said.innerText());
            assertTrue(page.url().contains("value-1=-560"), page.url());
            assertEquals("-560", page.getByLabel("Figure 1").inputValue(), "what was typed stands there again");
            assertTrue(page.getByText("Something else").isVisible());
        });
    }

    @Test
    void aReadingInVoltsThatShouldBeMillivoltsIsTold() {
        as(Role.TECHNICIAN, page -> {
            open(page, "/protection/" + boat());
            reading(page, 1, "-970", "V");
            page.getByLabel("Reference electrode").selectOption("Ag/AgCl/sw");
            page.getByText("What do they say?").click();
            String told = page.locator(".problems").innerText();
            assertTrue(told.contains("Reading 1"), told);
            assertTrue(told.contains("mV"), told);
        });
    }

    @Test
    void whatIsNoNumberIsToldInTheWordsOfThePage() {
        as(Role.TECHNICIAN, page -> {
            open(page, "/protection/" + boat());
            page.getByText("What do they say?").click();
            assertTrue(page.locator(".problems").innerText().contains("at least one figure"));
            reading(page, 1, "nine hundred", "mV");
            page.getByText("What do they say?").click();
            String told = page.locator(".problems").innerText();
            assertTrue(told.contains("Reading 1: “nine hundred” is no number"), told);
            reading(page, 1, "\u2212970,5", "mV");
            page.getByLabel("Reference electrode").selectOption("Ag/AgCl/sw");
            page.getByText("What do they say?").click();
            assertTrue(page.getByText("Something else").isVisible());
        });
    }

    @Test
    void theReportOpensAsPdf() {
        as(Role.SURVEYOR, page -> {
            var answer = page.request().get(desk().address() + "protection/" + boat() + "/report.pdf");
            assertEquals(200, answer.status());
            assertTrue(new String(answer.body(), 0, 5, java.nio.charset.StandardCharsets.US_ASCII).startsWith("%PDF-"));
        });
    }

    private static void reading(Page page, int row, String value, String unit) {
        page.getByLabel("Where " + row).selectOption(new com.microsoft.playwright.options.SelectOption().setIndex(1));
        page.getByLabel("Figure " + row).fill(value);
        page.getByLabel("Unit " + row).selectOption(unit);
    }
}
