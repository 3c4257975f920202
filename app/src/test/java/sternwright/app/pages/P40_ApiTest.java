package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sternwright.app.account.Accounts;
import sternwright.app.account.ApiTokens;
import sternwright.app.account.Role;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What other programs ask for, over the wire as they do. */
class P40_ApiTest extends PageTest {
    private static final JsonMapper JSON = new JsonMapper();
    private final HttpClient program = HttpClient.newHttpClient();

    private String token(Role role, ApiTokens.Kind kind) {
        String account =
                desk().part(Accounts.class).byName(role.name()).orElseThrow().id();
        return desk().part(ApiTokens.class).make(account, kind, "a test");
    }

    private HttpRequest.Builder asking(String path, Role role) {
        return HttpRequest.newBuilder(URI.create(desk().address() + path))
                .header("Authorization", "Bearer " + token(role, ApiTokens.Kind.PROGRAM));
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return program.send(request.build(), BodyHandlers.ofString());
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private JsonNode json(String path, Role role) {
        HttpResponse<String> answer = send(asking(path, role));
        assertEquals(200, answer.statusCode(), answer.body());
        return JSON.readTree(answer.body());
    }

    private String firstBoat() {
        return json("api/boats?size=1", Role.SURVEYOR).at("/items/0/boat-id").asString();
    }

    @Test
    void longListsComeInStretches() {
        JsonNode all = json("api/due?size=1000", Role.SURVEYOR);
        JsonNode second = json("api/due?size=5&page=2", Role.SURVEYOR);
        assertEquals(5, second.get("items").size());
        assertEquals(all.get("total").asInt(), second.get("total").asInt());
        assertEquals(all.at("/items/5"), second.at("/items/0"));
        assertTrue(all.at("/items/0/due-on").asString().matches("\\d{4}-\\d\\d-\\d\\d"), "dates by ISO 8601");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "api/due?page=first | page: found \"first\"; expected a whole number.",
                "api/boats?size=99999999999 | size: found \"99999999999\"; expected a whole number.",
                "api/campaign/letters?rule=x&by=31.1.2027 | by: found \"31.1.2027\"; expected a day such as 2027-01-31.",
            })
    void whatIsNoNumberAndNoDayIsToldWithWhatWasExpected(String path, String told) {
        HttpResponse<String> answer = send(asking(path, Role.OFFICE));
        assertEquals(422, answer.statusCode(), answer.body());
        assertEquals(told, JSON.readTree(answer.body()).get("detail").asString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "/history", "/due", "/visits?months=12&seconds=0.2", "/protection", "/file"})
    void everythingOfABoatIsThere(String what) {
        HttpResponse<String> answer = send(asking("api/boats/" + firstBoat() + what, Role.SURVEYOR));
        assertEquals(200, answer.statusCode(), answer.body());
        assertTrue(answer.body().length() > 20, answer.body());
    }

    @Test
    void whoHasNoTokenIsToldWhatIsNeeded() {
        HttpResponse<String> answer = send(HttpRequest.newBuilder(URI.create(desk().address() + "api/boats")));
        assertEquals(401, answer.statusCode());
        assertEquals("Bearer", answer.headers().firstValue("WWW-Authenticate").orElse(""));
        assertEquals(
                "application/problem+json",
                answer.headers().firstValue("Content-Type").orElse(""));
        assertTrue(answer.headers().firstValue("Set-Cookie").isEmpty(), "no session is begun");
    }

    @Test
    void aCalendarsTokenOpensNothingElseAndAProgramsTokenNoCalendar() {
        HttpRequest.Builder wrong = HttpRequest.newBuilder(URI.create(desk().address() + "api/boats"))
                .header("Authorization", "Bearer " + token(Role.MANAGER, ApiTokens.Kind.CALENDAR));
        assertEquals(401, send(wrong).statusCode());
        String boat = firstBoat();
        String programs = token(Role.MANAGER, ApiTokens.Kind.PROGRAM);
        assertEquals(401, calendar(programs, boat).statusCode());
        HttpResponse<String> right = calendar(token(Role.SURVEYOR, ApiTokens.Kind.CALENDAR), boat);
        assertEquals(200, right.statusCode(), right.body());
        assertTrue(right.body().startsWith("BEGIN:VCALENDAR"), right.body());
    }

    private HttpResponse<String> calendar(String secret, String boat) {
        return send(HttpRequest.newBuilder(
                URI.create(desk().address() + "calendar/" + secret + "/boats/" + boat + ".ics")));
    }

    @Test
    void whatIsNotThereIsAnsweredWithTheNearestName() {
        String boat = firstBoat();
        HttpResponse<String> answer = send(asking("api/boats/" + boat + "x", Role.OFFICE));
        assertEquals(404, answer.statusCode());
        assertTrue(answer.body().contains(boat), answer.body());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hours | {\"instalation\":\"main\",\"hours\":3} | 400 | installation",
                "hours | {\"installation\":\"main\",\"hours\":\"many\"} | 400 | hours",
                "hours | {\"installation\":\"main\" | 400 | JSON",
                "hours | {\"installation\":\"nowhere\",\"hours\":3} | 422 | nowhere",
                "hours | {\"hours\":3} | 422 | installation",
                "works | {\"works\":[\"chang-engine-oil\"]} | 422 | change-engine-oil",
                "works | {\"works\":[\"change-engine-oil\"],\"date\":\"2999-01-01\"} | 422 | future",
                "history/strike | {\"rule\":\"change-engine-oil\",\"date\":\"1999-01-01\",\"why\":\"twice\"} | 422 | no line that holds",
                "history/strike | {\"rule\":\"change-engine-oil\",\"date\":\"1999-01-01\"} | 422 | why is missing"
            })
    void whatCannotBeTakenIsToldInWords(String deed, String body, int status, String word) {
        HttpResponse<String> answer = send(asking("api/boats/" + firstBoat() + "/" + deed, Role.OFFICE)
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(body)));
        assertEquals(status, answer.statusCode(), answer.body());
        assertEquals(
                "application/problem+json",
                answer.headers().firstValue("Content-Type").orElse(""));
        assertTrue(answer.body().contains(word), answer.body());
        assertFalse(answer.body().contains("Exception"), answer.body());
    }

    @Test
    void aSurveyorReadsAndDoesNotWrite() {
        HttpResponse<String> answer = send(asking("api/boats/" + firstBoat() + "/works", Role.SURVEYOR)
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString("{\"works\":[\"change-engine-oil\"]}")));
        assertEquals(403, answer.statusCode(), answer.body());
    }

    @Test
    void aChangeOfAnOldVersionIsRefusedAndNothingIsLost() {
        String path = "api/boats/" + firstBoat() + "/file";
        HttpResponse<String> read = send(asking(path, Role.OFFICE));
        String tag = read.headers().firstValue("ETag").orElseThrow();
        String changed = "# Looked through.\n" + read.body();
        assertEquals(428, put(path, changed, "").statusCode());
        assertEquals(204, put(path, changed, tag).statusCode());
        HttpResponse<String> late = put(path, "# Mine.\n" + read.body(), tag);
        assertEquals(412, late.statusCode(), late.body());
        HttpResponse<String> now = send(asking(path, Role.OFFICE));
        assertEquals(changed, now.body());
        String wrong = changed.replaceFirst("name:", "nane:");
        HttpResponse<String> refused =
                put(path, wrong, now.headers().firstValue("ETag").orElseThrow());
        assertEquals(422, refused.statusCode(), refused.body());
        assertTrue(refused.body().contains("nane"), refused.body());
    }

    @Test
    void aFigureIsPutInReadAndTakenBack() {
        String boat = firstBoat();
        String figures = "api/programmes/figures";
        int before = json(figures, Role.SURVEYOR).size();
        String figure = "{\"rule\":\"change-engine-oil\",\"scope\":\"BOAT\",\"target\":\"" + boat + "\",\"months\":5}";
        assertEquals(403, figure(figure, Role.OFFICE).statusCode(), "figures are the manager's");
        HttpResponse<String> none = figure(figure.replace("months\":5", "months\":0"), Role.MANAGER);
        assertEquals(422, none.statusCode(), none.body());
        assertTrue(none.body().contains("months"), none.body());
        assertEquals(204, figure(figure, Role.MANAGER).statusCode());
        assertEquals(before + 1, json(figures, Role.SURVEYOR).size());
        JsonNode rules = json("api/boats/" + boat + "/rules", Role.SURVEYOR);
        JsonNode oil = StreamSupport.stream(rules.spliterator(), false)
                .filter(r -> r.get("rule").asString().equals("change-engine-oil"))
                .findFirst()
                .orElseThrow();
        assertEquals(5, oil.at("/interval/months").asInt());
        assertTrue(oil.get("figures").size() > 1, "the programme's own figure first, then the boat's");
        String taken = figures + "?rule=change-engine-oil&scope=boat&target=" + boat;
        assertEquals(204, send(asking(taken, Role.MANAGER).DELETE()).statusCode());
        assertEquals(422, send(asking(taken, Role.MANAGER).DELETE()).statusCode(), "it is taken back already");
        assertEquals(before, json(figures, Role.SURVEYOR).size());
        assertTrue(json("api/settings/yard", Role.OFFICE).get("labour-per-hour").asDouble() > 0);
        assertTrue(json("api/settings/resources", Role.OFFICE).get("crew").size() > 0);
    }

    private HttpResponse<String> figure(String body, Role role) {
        return send(asking("api/programmes/figures", role)
                .header("Content-Type", "application/json")
                .PUT(BodyPublishers.ofString(body)));
    }

    private HttpResponse<String> put(String path, String text, String tag) {
        HttpRequest.Builder request = asking(path, Role.OFFICE).header("Content-Type", "application/yaml");
        return send((tag.isEmpty() ? request : request.header("If-Match", tag)).PUT(BodyPublishers.ofString(text)));
    }

    @Test
    void theDescriptionIsOpenApi31AndNamesEveryAddress() {
        JsonNode described = json("api/openapi", Role.SURVEYOR);
        assertTrue(
                described.get("openapi").asString().startsWith("3.1"),
                described.get("openapi").asString());
        for (String path : new String[] {"/api/boats", "/api/due", "/api/boats/{id}/works", "/api/season"}) {
            assertTrue(described.get("paths").has(path), path);
        }
    }

    @Test
    void aPersonMakesATokenAndWithdrawsIt() {
        checkPage("/settings/tokens", Role.OFFICE);
        as(Role.OFFICE, page -> {
            page.navigate(desk().address() + "settings/tokens");
            page.getByLabel("What for").fill("the office’s spreadsheet");
            page.getByLabel("Opens").selectOption("PROGRAM");
            page.getByText("Make a token").click();
            String secret = page.locator("code.secret").first().innerText();
            HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(desk().address() + "api/boats"))
                    .header("Authorization", "Bearer " + secret);
            assertEquals(200, send(request).statusCode());
            page.getByText("All tokens").click();
            page.getByLabel("Withdraw the token for the office’s spreadsheet").click();
            assertTrue(page.getByText("works no more").isVisible());
            assertEquals(401, send(request).statusCode());
        });
    }
}
