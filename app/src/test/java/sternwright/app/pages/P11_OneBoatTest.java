package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sternwright.app.account.Role;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.desk.register.NewBoat;
import sternwright.app.files.template.BoatTemplate;
import sternwright.boat.Arrangement;
import sternwright.boat.Cooling;
import sternwright.boat.HullMaterial;
import sternwright.boat.Winter;

/** A boat's own pages: her drawing with what is due, her hours with their sense, her history, her file as text. */
class P11_OneBoatTest extends PageTest {
    private static final String OWN = "walkabout";

    @BeforeAll
    static void aBoatOfItsOwn() throws IOException {
        own(OWN);
    }

    /** A boat that no other test looks at. */
    static void own(String id) throws IOException {
        OpenYard yard = desk().part(OpenYard.class);
        NewBoat.make(
                yard.shelf("test"),
                yard.today(),
                files -> new BoatTemplate.Known(
                        id,
                        "Invented " + id,
                        null,
                        files.berths().keySet().iterator().next(),
                        files.yard().uses().get(0).id(),
                        Winter.ASHORE,
                        9.0,
                        null,
                        null,
                        null,
                        HullMaterial.GRP,
                        Arrangement.SAILDRIVE,
                        Cooling.FRESH_WATER,
                        false,
                        null,
                        null));
        yard.changed();
    }

    static String first(Arrangement arrangement) {
        return desk().part(OpenYard.class).files().boats().values().stream()
                .filter(b -> b.installations().get(0).arrangement() == arrangement)
                .filter(b -> !b.id().equals(OWN))
                .findFirst()
                .orElseThrow()
                .id();
    }

    @Test
    void everyPageOfABoatIsInOrder() {
        String id = first(Arrangement.SHAFT);
        checkPage("/boats/" + id, Role.OFFICE);
        checkPage("/boats/" + id + "/hours", Role.TECHNICIAN);
        checkPage("/boats/" + id + "/history", Role.SURVEYOR);
        checkPage("/boats/" + id + "/text", Role.OFFICE);
        checkPage("/boats/" + id + "/facts", Role.OFFICE);
    }

    @Test
    void herPagesLeadToHerVisitsAndToHerProtectionAndBack() {
        as(Role.SURVEYOR, page -> {
            for (String leaf : List.of("Visits", "Protection", "Season")) {
                open(page, "/boats/" + OWN);
                leaves(page).getByText(leaf).click();
                assertTrue(page.locator("h1").innerText().contains("Invented " + OWN), leaf);
                leaves(page).getByText("The boat").click();
                assertEquals("Invented " + OWN, page.locator("h1").innerText(), leaf);
            }
        });
    }

    private static Locator leaves(Page page) {
        return page.locator("nav.leaves");
    }

    @Test
    void whoseSheIsIsChangedInFieldsAndTheRestOfHerFileStays() throws IOException {
        String id = "facts-alone";
        own(id);
        as(Role.OFFICE, page -> {
            open(page, "/boats/" + id);
            page.getByText("Change it").click();
            page.getByLabel("Owner", new Page.GetByLabelOptions().setExact(false))
                    .first()
                    .fill("Ada Invented: \"A\"");
            page.getByLabel("Mass as lifted").fill("four tons");
            page.locator("button.act").click();
            String wrong = page.getByRole(AriaRole.ALERT).innerText();
            assertTrue(wrong.contains("Mass as lifted"), wrong);
            page.getByLabel("Mass as lifted").fill("900000");
            page.locator("button.act").click();
            wrong = page.getByRole(AriaRole.ALERT).innerText();
            assertTrue(wrong.contains("can float"), wrong);
            look(page, "facts-refused", Screen.DESK_LIGHT);
            String before = text(id);
            page.getByLabel("Mass as lifted").fill("4321");
            page.locator("button.act").click();
            assertTrue(page.locator(".notice").innerText().contains("is saved"));
            assertTrue(page.locator(".lead").innerText().startsWith("Ada Invented: \"A\""));
            String after = text(id);
            assertTrue(after.contains("mass-kg: 4321\n"), "measured: assumed no more\n" + after);
            assertTrue(after.matches("(?s).*beam-m: [0-9.]+ # assumed.*"), after);
            assertEquals(before.lines().count(), after.lines().count(), "nothing else has changed");

            open(page, "/boats/" + id + "/facts");
            as(Role.MANAGER, other -> {
                open(other, "/boats/" + id + "/facts");
                other.getByLabel("Beam").fill("3.1");
                other.locator("button.act").click();
                assertTrue(other.locator(".notice").innerText().contains("is saved"));
            });
            page.locator("button.act").click();
            assertEquals("Somebody was quicker", page.locator("h1").innerText());
        });
    }

    private static String text(String id) {
        try {
            return desk().part(OpenYard.class)
                    .shelf("test")
                    .text("boats/" + id + ".yaml")
                    .orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void theReasonIsOneClickAwayAndTheDrawingNumbersTheWorks() {
        as(Role.SURVEYOR, page -> {
            open(page, "/boats/" + OWN);
            String leads = page.locator(".elevation-wide a").first().getAttribute("href");
            assertEquals(1, page.locator(leads).count(), "a mark leads to the works on its part");
            assertEquals(0, page.locator("form.one-line").count(), "a surveyor reads");
            page.locator("details.why summary").first().click();
            assertTrue(page.locator("details.why p").first().isVisible());
        });
        as(Role.SURVEYOR, page -> open(page, "/boats/no-such-boat", 404));
    }

    @Test
    void hoursAreSensibleOrKeptAsRead() {
        as(Role.TECHNICIAN, Screen.PHONE_LIGHT, page -> {
            open(page, "/boats/" + OWN);
            hours(page, "1,412.5 h");
            assertTrue(page.locator(".notice").innerText().startsWith("1,412.5"));

            hours(page, "141.2");
            assertEquals(422, status(page));
            look(page, "hours-odd", Screen.PHONE_LIGHT);
            String wrong = page.getByRole(AriaRole.ALERT).innerText();
            assertTrue(wrong.contains("less than the 1412.5 h read"), wrong);
            page.getByLabel("It is as read").check();
            page.locator("button.act").click();
            open(page, "/boats/" + OWN + "/hours");
            assertTrue(page.locator("tbody").innerText().contains("141.2"));
            assertTrue(page.locator("tbody").innerText().contains("Person Invented T"));
        });
        as(Role.SURVEYOR, page -> {
            open(page, "/boats/" + OWN + "/hours");
            assertEquals(0, page.locator("main form").count());
        });
    }

    private static void hours(Page page, String typed) {
        page.locator("#hours-main").fill(typed);
        page.locator("form.one-line button").click();
    }

    private static int status(Page page) {
        return ((Number) page.evaluate("() => performance.getEntriesByType('navigation')[0].responseStatus"))
                .intValue();
    }

    @Test
    void herFileIsProvedAndTheSecondWindowIsTold() {
        as(Role.OFFICE, page -> {
            open(page, "/boats/" + OWN + "/text");
            String before = page.locator("#text").inputValue();
            Page other = page.context().newPage();
            open(other, "/boats/" + OWN + "/text");

            page.locator("#text").fill(before.replace("arrangement: saildrive", "arrangement: balloon"));
            page.locator("button.act").click();
            look(page, "text-refused", Screen.DESK_LIGHT);
            String wrong = page.getByRole(AriaRole.ALERT).innerText();
            assertTrue(wrong.contains("Line ") && wrong.contains("arrangement: balloon"), wrong);

            page.locator("#text").fill(before + "note: first window\n");
            page.locator("button.act").click();
            assertTrue(page.locator(".notice").innerText().contains("is saved"));

            other.locator("#text").fill(before + "note: second window\n");
            other.locator("button.act").click();
            assertEquals(409, status(other));
            look(other, "text-meanwhile", Screen.DESK_LIGHT);
            assertTrue(other.locator("#theirs").inputValue().contains("first window"));
            assertTrue(other.locator("#text").inputValue().contains("second window"));
            assertTrue(kept().contains("first window"), "nothing was lost");
            other.locator("button.act").click();
            assertTrue(kept().contains("second window"));
        });
        as(Role.TECHNICIAN, page -> open(page, "/boats/" + OWN + "/text", 403));
    }

    private static String kept() {
        try {
            return desk().part(OpenYard.class)
                    .shelf("test")
                    .text("boats/" + OWN + ".yaml")
                    .orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
