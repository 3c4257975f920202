package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import sternwright.app.account.Accounts;
import sternwright.app.account.ApiTokens;
import sternwright.app.account.Role;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The season: planned while it is watched, stopped, published; a mark dragged to another day; planned again after somebody fell ill. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class P20_SeasonTest extends PageTest {
    private static final JsonMapper JSON = new JsonMapper();

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
            page.navigate(address + "/board");
            page.getByText("Not published: this is how the season would be").waitFor();
            page.navigate(address);
            press(page, "Publish this plan");
            assertTrue(page.locator(".notice").first().innerText().contains("The plan is published"));
            page.getByText("every date of it can be kept").waitFor(PLANNED);
            assertEquals(cost, page.locator("tr.sum td").last().innerText(), "and the plan that was published");
            page.navigate(address);
            page.getByText("This is the plan the yard works by").waitFor();
            page.navigate(address + "/board");
            page.getByText("This is the plan the yard works by").waitFor();
        });
        as(Role.MANAGER, page -> {
            open(page, "/settings/audit");
            Locator published = page.locator("tbody tr", new Page.LocatorOptions().setHasText("Season published"))
                    .first();
            assertTrue(published.innerText().contains("asked for by Person Invented O"), published.innerText());
            published.locator("a").click();
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
            String boat = launch.locator("..").getAttribute("data-name");
            String id = launch.locator("..").getAttribute("data-boat");
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
            page.locator("h1").getByText("Another day for " + boat).waitFor();

            open(page, "/season/boats/" + id);
            page.getByLabel("Another day for Launch").last().click();
            LocalDate was = LocalDate.parse(page.getByLabel("Set it on").inputValue());
            page.getByLabel("Set it on")
                    .fill(was.with(TemporalAdjusters.next(DayOfWeek.WEDNESDAY)).toString());
            press(page, "See what moves");
            page.locator("#answer:not([hx-get])").waitFor(PLANNED);
            press(page, "Keep it and publish");
            assertTrue(page.locator(".notice").first().innerText().contains("that day is kept from now on"));
        });
    }

    @Test
    @Order(3)
    void somebodyFallsIllAndTheSeasonIsPlannedAgain() {
        as(Role.OFFICE, page -> {
            // Two plans are compared only once the one in force has been judged.
            open(page, "/season");
            page.getByText("every date of it can be kept").waitFor(PLANNED);
            open(page, "/season/happened");
            page.getByText("Somebody is away").click();
            page.locator("#away-who").selectOption(new com.microsoft.playwright.options.SelectOption().setIndex(1));
            page.locator("#away-from").fill("2027-04-12");
            page.locator("#away-to").fill("2027-04-08");
            press(page, "Add");
            assertTrue(page.getByRole(AriaRole.ALERT).first().innerText().contains("Fill in every field"));
            page.locator("#away-to").fill("2027-05-07");
            press(page, "Add");
            assertTrue(page.getByText("is away").first().isVisible());
            boatsAreTypedByName(page);
            look(page, "season-happened", Screen.DESK_LIGHT);
            press(page, "Plan again after this");
            page.locator("dt").getByText("Best plan costs").waitFor(PLANNED);
            press(page, "Stop and keep the best plan");
            page.locator("#run:not([hx-get])").waitFor(PLANNED);
            assertEquals(
                    List.of("Plan in force", "This plan"),
                    page.locator("table.sums th.num").allInnerTexts());
            assertTrue(page.getByText("Promised dates that move").first().isVisible());
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

    /** A boat is typed by her name; one that is not there is told, and what was said before stays. */
    private static void boatsAreTypedByName(Page page) {
        page.locator("summary").getByText("A boat must come out at once").click();
        page.locator("#emergency-who").fill("No Such Boat");
        page.locator("form[aria-label='A boat must come out at once'] button").click();
        assertTrue(page.getByRole(AriaRole.ALERT).first().innerText().contains("no boat called No Such Boat"));
        String name = (String) page.evaluate("() => document.querySelector('#boats option').value");
        page.locator("#emergency-who").fill(name);
        page.locator("form[aria-label='A boat must come out at once'] button").click();
        assertEquals(2, page.getByText("take back").count());
        page.getByText("take back").last().click();
        assertEquals(1, page.getByText("take back").count());
    }

    @Test
    @Order(3)
    void whereNoHoistWorksThePageSaysWhatClashesAndWhereToChangeIt() {
        as(Role.OFFICE, page -> {
            open(page, "/season/happened");
            List<?> hoists = (List<?>) page.evaluate(
                    "() => [...document.querySelectorAll('#hoist-who option')].map(o => o.value).filter(v => v)");
            StringBuilder path = new StringBuilder("/season/happened?");
            hoists.forEach(h -> path.append("e=hoist-down:").append(h).append(":2026-11-25:2027-08-31&"));
            open(page, path.toString());
            press(page, "Plan again after this");
            page.locator("#run:not([hx-get])").waitFor(PLANNED);
            page.getByText("no plan is possible").waitFor();
            assertFalse(page.getByRole(AriaRole.ALERT).first().innerText().isEmpty());
            look(page, "season-refused", Screen.DESK_LIGHT);
            page.locator("#run a[href*=happened]").click();
            assertEquals(hoists.size(), page.getByText("take back").count());
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

    @Test
    @Order(5)
    void anotherProgramReadsPlansStopsAndPublishes() throws Exception {
        String token = desk().part(ApiTokens.class)
                .make(
                        desk().part(Accounts.class)
                                .byName("OFFICE")
                                .orElseThrow()
                                .id(),
                        ApiTokens.Kind.PROGRAM,
                        "a test");
        HttpResponse<String> season = send(token, "api/season?size=1000", null, "");
        String tag = season.headers().firstValue("ETag").orElseThrow();
        JsonNode board = until(
                token, "api/season/board", b -> !b.get("standing").asString().equals("JUDGING"));
        assertEquals("Manda Invented", board.get("published-by").asString());
        assertEquals("HOLDS", board.get("standing").asString());
        int operations = JSON.readTree(season.body()).get("total").asInt();
        assertEquals(operations, board.get("total").asInt());
        JsonNode last = JSON.readTree(send(token, "api/season/board?size=7&page=" + (operations / 7 + 1), null, "")
                .body());
        assertEquals(operations % 7, last.at("/season/operations").size());
        assertEquals(422, send(token, "api/season/board?size=0", null, "").statusCode());

        HttpResponse<String> wrong = send(token, "api/season/runs", "{\"events\":[\"awy:p1\"]}", "");
        assertEquals(422, wrong.statusCode(), wrong.body());
        // Somebody away may leave the plan as it is, to the letter; an emergency never does.
        String emergency =
                JSON.readTree(season.body()).at("/items/0/name/boat-id").asString();
        HttpResponse<String> asked = send(
                token,
                "api/season/runs",
                "{\"seconds\":600,\"events\":[\"away:p1:2027-05-03:2027-05-03\",\"emergency:%s\"]}"
                        .formatted(emergency),
                "");
        assertEquals(201, asked.statusCode(), asked.body());
        String run = asked.headers().firstValue("Location").orElseThrow().substring(1);
        until(token, run, r -> !r.get("cost").isNull());
        assertEquals(202, send(token, run + "/stop", "", "").statusCode());
        JsonNode stopped = until(token, run, r -> r.get("state").asString().equals("STOPPED"));
        JsonNode plan = JSON.readTree(send(token, run + "/plan", null, "").body());
        assertEquals(
                stopped.get("cost").asDouble(), plan.at("/season/cost/total").asDouble(), 0.01);
        assertEquals(200, send(token, run + "/moves", null, "").statusCode());
        assertEquals(428, send(token, run + "/publish", "", "").statusCode());
        assertEquals(412, send(token, run + "/publish", "", "\"old\"").statusCode());
        HttpResponse<String> published = send(token, run + "/publish", "", tag);
        assertEquals(204, published.statusCode(), published.body());
        assertNotEquals(tag, published.headers().firstValue("ETag").orElseThrow());
        assertEquals(412, send(token, run + "/publish", "", tag).statusCode());

        JsonNode launch = JSON.readTree(
                        send(token, "api/season?size=1000", null, "").body())
                .get("items")
                .valueStream()
                .filter(o -> o.at("/name/operation").asString().equals("launch"))
                .reduce((a, b) -> b)
                .orElseThrow();
        HttpResponse<String> sunday = send(
                token,
                "api/season/moves",
                "{\"boat\":\"%s\",\"visit\":\"%s\",\"operation\":\"launch\",\"to\":\"2027-05-02\"}"
                        .formatted(
                                launch.at("/name/boat-id").asString(),
                                launch.at("/name/visit").asString()),
                "");
        assertEquals(200, sunday.statusCode(), sunday.body());
        assertFalse(JSON.readTree(sunday.body()).get("possible").asBoolean());
        assertTrue(sunday.body().contains("does not work"), sunday.body());
    }

    private static JsonNode until(String token, String run, Predicate<JsonNode> there) throws Exception {
        JsonNode now = JSON.readTree(send(token, run, null, "").body());
        for (int i = 0; i < 1200 && !there.test(now); i++) {
            TimeUnit.MILLISECONDS.sleep(100);
            now = JSON.readTree(send(token, run, null, "").body());
        }
        assertTrue(there.test(now), now.toString());
        return now;
    }

    /** Sends a body if there is one, with an entity tag if there is one. */
    private static HttpResponse<String> send(String token, String path, @Nullable String body, String tag)
            throws Exception {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create(desk().address() + path)).header("Authorization", "Bearer " + token);
        if (!tag.isEmpty()) {
            request.header("If-Match", tag);
        }
        if (body != null) {
            request.header("Content-Type", "application/json").POST(HttpRequest.BodyPublishers.ofString(body));
        }
        return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private static void press(Page page, String name) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(name).setExact(true))
                .first()
                .click();
    }
}
