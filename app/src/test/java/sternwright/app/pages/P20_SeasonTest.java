package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import java.util.List;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import sternwright.app.account.Role;

/** The season: planned while it is watched, stopped, published; a mark dragged to another day; planned again after somebody fell ill. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class P20_SeasonTest extends PageTest {
    /** A plan of a small yard takes a moment, on a busy machine a longer one. */
    private static final Locator.WaitForOptions PLANNED = new Locator.WaitForOptions().setTimeout(120_000);

    @Test
    @Order(1)
    void aPlanIsWatchedStoppedKeptAndPublished() {
        as(Role.OFFICE, page -> {
            open(page, "/season");
            page.getByText("No plan is published yet").waitFor();
            page.locator("main").getByText("Plan the season").click();
            page.locator("#seconds").selectOption("300");
            press(page, "Plan");
            page.locator("dt").getByText("Best plan costs").waitFor(PLANNED);
            String first = page.locator("dl.pairs").innerText();
            assertTrue(first.contains("No plan can cost less than"), first);
            look(page, "season-run", Screen.DESK_LIGHT);
            String address = page.url();
            open(page, "/boats");
            page.navigate(address);
            press(page, "Stop and keep the best plan");
            page.getByText("stopped, the best plan kept").waitFor(PLANNED);
            String cost = page.locator("dl.pairs dd").nth(1).innerText();
            assertEquals(cost, page.locator("tr.sum td").last().innerText(), "what is shown is the plan that was kept");
            press(page, "Publish this plan");
            assertTrue(page.locator(".notice").first().innerText().contains("The plan is published"));
            page.getByText("every date of it can be kept").waitFor(PLANNED);
            assertEquals(cost, page.locator("tr.sum td").last().innerText(), "and the plan that was published");
            page.navigate(address);
            page.getByText("This is the plan the yard works by").waitFor();
        });
        checkPage("/season", Role.OFFICE);
    }

    @Test
    @Order(2)
    void aMarkIsDraggedByMouseAndByKeyboardAndKept() {
        as(Role.OFFICE, page -> {
            open(page, "/season?from=2027-03-01&to=2027-05-31");
            Locator launch = page.locator(".b-held[data-operation=launch]").first();
            String boat = launch.getAttribute("data-name");
            launch.scrollIntoViewIfNeeded();
            BoundingBox box = launch.boundingBox();
            page.mouse().move(box.x + box.width / 2, box.y + box.height / 2);
            page.mouse().down();
            page.mouse()
                    .move(
                            box.x + 60,
                            box.y + box.height / 2,
                            new com.microsoft.playwright.Mouse.MoveOptions().setSteps(5));
            assertTrue(page.locator(".dragged").innerText().contains("launch of " + boat));
            page.mouse().up();
            page.locator("h1").getByText("Another day for " + boat).waitFor();
            page.locator("#answer:not([hx-get])").waitFor(PLANNED);
            look(page, "season-dragged", Screen.DESK_LIGHT);

            open(page, "/season?from=2027-03-01&to=2027-05-31");
            page.locator(".names a", new Page.LocatorOptions().setHasText(boat))
                    .first()
                    .focus();
            page.keyboard().press("ArrowRight");
            page.keyboard().press("Escape");
            page.keyboard().press("ArrowLeft");
            page.keyboard().press("Shift+ArrowRight");
            assertFalse(page.locator(".dragged").innerText().isEmpty());
            page.keyboard().press("Enter");
            page.locator("#answer:not([hx-get])").waitFor(PLANNED);
            if (page.locator("#keep").count() == 0) {
                assertTrue(page.getByText("That day cannot be").isVisible());
                page.getByLabel("Set it on").fill("2027-05-11");
                press(page, "See what moves");
                page.locator("#answer:not([hx-get])").waitFor(PLANNED);
            }
            String day = page.getByLabel("Set it on").inputValue();
            press(page, "Keep it and publish");
            assertTrue(page.locator(".notice").first().innerText().contains("that day is kept from now on"), day);
        });
    }

    @Test
    @Order(3)
    void somebodyFallsIllAndTheSeasonIsPlannedAgain() {
        as(Role.OFFICE, page -> {
            open(page, "/season/happened");
            page.getByText("Somebody is away").click();
            page.locator("#away-who").selectOption(new com.microsoft.playwright.options.SelectOption().setIndex(1));
            page.locator("#away-from").fill("2027-04-05");
            page.locator("#away-to").fill("2027-04-01");
            press(page, "Add");
            assertTrue(page.getByRole(AriaRole.ALERT).first().innerText().contains("Fill in every field"));
            page.locator("#away-to").fill("2027-04-23");
            press(page, "Add");
            assertTrue(page.getByText("is away").first().isVisible());
            look(page, "season-happened", Screen.DESK_LIGHT);
            page.locator("#seconds").selectOption("20");
            press(page, "Plan again after this");
            page.locator("#run:not([hx-get])").waitFor(PLANNED);
            assertEquals(
                    List.of("Plan in force", "This plan"),
                    page.locator("table.sums th.num").allInnerTexts());
            assertTrue(page.getByText("Promised dates that move").first().isVisible());
            look(page, "season-replanned", Screen.DESK_LIGHT);
            look(page, "season-replanned", Screen.DESK_LIGHT);
            String address = page.url();
            as(Role.MANAGER, other -> {
                other.navigate(address);
                press(other, "Publish this plan");
                assertTrue(other.locator(".notice").first().innerText().contains("published"));
            });
            press(page, "Publish this plan");
            assertEquals("Somebody was quicker", page.locator("h1").innerText());
        });
    }

    @Test
    @Order(4)
    void aTechnicianReadsAndTakesAway() {
        as(Role.TECHNICIAN, page -> {
            open(page, "/season");
            assertEquals(0, page.locator(".b-held").count());
            open(page, "/season/runs", 403);
            open(page, "/season/papers");
            assertTrue(page.locator("main a[href$='.ics']").count() > 5);
            String ics = page.request()
                    .get(desk().address() + "season/boats/"
                            + page.locator("main a[href*='/season/boats/']")
                                    .first()
                                    .getAttribute("href")
                                    .replaceAll(".*/", ""))
                    .text();
            assertTrue(ics.startsWith("BEGIN:VCALENDAR"), ics);
            String csv =
                    page.request().get(desk().address() + "season/season.csv").text();
            assertTrue(csv.startsWith("boat-id,boat,visit,operation"), csv);
            byte[] pdf =
                    page.request().get(desk().address() + "season/board.pdf").body();
            assertEquals("%PDF", new String(pdf, 0, 4, java.nio.charset.StandardCharsets.US_ASCII));
        });
    }

    private static void press(Page page, String name) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(name).setExact(true))
                .first()
                .click();
    }
}
