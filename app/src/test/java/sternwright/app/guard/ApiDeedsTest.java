package sternwright.app.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sternwright.app.account.Role;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A program works through a boat's year as the office does in the pages: from registering her to the recorded card. */
class ApiDeedsTest {
    private static final JsonMapper JSON = JsonMapper.shared();

    private final GuardedDesk desk = GuardedDesk.shared();
    private final Browser program = new Browser(desk.address());
    private final String office = desk.token(Role.OFFICE);

    private HttpRequest.Builder to(String path) {
        return program.to(path).header("Authorization", "Bearer " + office);
    }

    private JsonNode get(String path) {
        HttpResponse<String> answer = program.send(to(path));
        assertEquals(200, answer.statusCode(), path + " " + answer.body());
        return JSON.readTree(answer.body());
    }

    private HttpResponse<String> send(String method, String path, String type, String body) {
        return program.send(to(path).header("Content-Type", type).method(method, BodyPublishers.ofString(body)));
    }

    private JsonNode post(String path, Object said, int status) {
        HttpResponse<String> answer = send("POST", path, "application/json", JSON.writeValueAsString(said));
        assertEquals(status, answer.statusCode(), path + " " + answer.body());
        return answer.body().isEmpty() ? JSON.nullNode() : JSON.readTree(answer.body());
    }

    /** A boat with a planned visit, and that visit. */
    private record Planned(String boat, Map<String, Object> visit) {}

    private Planned planned() {
        for (JsonNode row : get("api/boats?size=100").get("items")) {
            String boat = row.get("boat-id").asString();
            JsonNode plan = get("api/boats/" + boat + "/visits?months=24&seconds=5");
            if (plan.path("visits").size() > 0) {
                JsonNode visit = plan.at("/visits/0");
                String place = visit.get("place").asString().toLowerCase(java.util.Locale.ROOT);
                return new Planned(
                        boat, Map.of("boat", boat, "from", visit.get("from").asString(), "place", place, "months", 24));
            }
        }
        throw new AssertionError("no boat of the yard has a visit planned");
    }

    @Test
    void aBoatIsRegisteredAndAWrongOneIsRefusedInWords() {
        JsonNode made = post("api/boats", Map.of("name", "Programmed", "arrangement", "SAILDRIVE"), 201);
        assertEquals("programmed", made.get("id").asString());
        assertTrue(get("api/boats/programmed/due").size() > 5);
        JsonNode again = post("api/boats", Map.of("name", "Programmed", "arrangement", "SAILDRIVE"), 201);
        assertEquals("programmed-2", again.get("id").asString());
        JsonNode wrong = post("api/boats", Map.of("name", "x", "arrangement", "SAILDRIVE", "berth", "nowhere"), 422);
        assertTrue(wrong.toString().contains("nowhere"), wrong.toString());
    }

    @Test
    void tablesGoOutAndComeInAndAreLookedAtFirst() {
        HttpResponse<String> out = program.send(to("api/tables/hours"));
        assertEquals(200, out.statusCode());
        String head = out.body().lines().findFirst().orElseThrow();
        String row = out.body().lines().skip(1).findFirst().orElseThrow();
        HttpResponse<String> known = send("POST", "api/tables/hours?look=true", "text/csv", head + "\n" + row + "\n");
        assertEquals(200, known.statusCode(), known.body());
        assertEquals(0, JSON.readTree(known.body()).get("added").asInt());
        HttpResponse<String> wrong =
                send("POST", "api/tables/hours", "text/csv", head + "\n" + row.replaceFirst("^[^,]+", "nobody") + "\n");
        assertEquals(422, wrong.statusCode());
        assertTrue(wrong.body().contains("nobody"), wrong.body());
        assertEquals(out.body(), program.send(to("api/tables/hours")).body());
    }

    @Test
    void aVisitIsChangedByHandPricedAndAgreed() {
        Planned planned = planned();
        String path = "api/boats/" + planned.boat() + "/visits/";
        JsonNode same = post(path + "change", Map.of("months", 24), 200);
        assertTrue(same.get("allowed").asBoolean(), same.toString());
        String month = String.valueOf(planned.visit().get("from")).substring(0, 7);
        String at = month + " " + planned.visit().get("place");
        JsonNode dropped =
                post(path + "change", Map.of("changes", List.of(Map.of("what", "drop-visit", "from", at))), 200);
        assertFalse(dropped.get("costs").isEmpty());
        JsonNode unknown = post(path + "change", Map.of("changes", List.of(Map.of("what", "dropvisit"))), 422);
        assertTrue(unknown.toString().contains("drop-visit"), unknown.toString());
        HttpResponse<String> read = program.send(to("api/boats/" + planned.boat() + "/visits?months=24&seconds=5"));
        String tag = read.headers().firstValue("ETag").orElseThrow();
        assertEquals(412, agreed(path, "\"another plan\"").statusCode());
        assertTrue(agreed(path, "\"another plan\"").body().contains("Read it again"));
        assertEquals(0, get(path + "agreed").get("total").asInt());
        assertEquals(200, agreed(path, tag).statusCode());
        assertTrue(get(path + "agreed").get("total").asInt() > 0);
    }

    private HttpResponse<String> agreed(String path, String tag) {
        return program.send(to(path + "agree")
                .header("If-Match", tag)
                .header("Content-Type", "application/json")
                .POST(java.net.http.HttpRequest.BodyPublishers.ofString("{\"months\":24}")));
    }

    @Test
    void anEstimateIsMadeSentAnsweredAndWithdrawn() {
        JsonNode made = post("api/estimates", planned().visit(), 201);
        String path = "api/estimates/" + made.at("/estimate/id").asString();
        String link = post(path + "/link", Map.of(), 201).get("address").asString();
        String page = URI.create(link).getPath();
        Browser owner = new Browser(desk.address());
        assertEquals(
                303,
                owner.post(page, page, Map.of("name", "An Owner", "all", "yes")).statusCode());
        JsonNode answered = get(path);
        assertEquals("An Owner", answered.at("/estimate/answered-by").asString());
        assertTrue(answered.at("/works/0/accepted").asBoolean());
        assertEquals(409, send("POST", path + "/link", "application/json", "{}").statusCode());
        assertEquals(
                204, send("POST", path + "/record", "application/json", "{}").statusCode());
        assertTrue(get("api/estimates").get("total").asInt() >= 1);
        HttpResponse<String> pdf = program.send(to(path + "/pdf"));
        assertTrue(pdf.statusCode() == 200 && pdf.body().startsWith("%PDF"), "status " + pdf.statusCode());
    }

    @Test
    void aCardIsIssuedWrittenOnAndRecorded() {
        JsonNode card = post("api/cards", planned().visit(), 201);
        String path = "api/cards/" + card.at("/card/id").asString();
        HttpResponse<String> early = send("POST", path + "/finish", "application/json", "{}");
        assertEquals(422, early.statusCode());
        assertTrue(early.body().contains("not answered"), early.body());
        HttpResponse<String> wrong = send("PATCH", path + "/notes", "application/json", "{\"w1.anser\":\"done\"}");
        assertEquals(422, wrong.statusCode());
        assertTrue(wrong.body().contains("w1.answer"), wrong.body());
        Map<String, String> notes = new java.util.HashMap<>();
        notes.put("day", GuardedDesk.TODAY.toString());
        notes.put("who", "A Technician");
        List<String> works = new ArrayList<>();
        card.get("works").forEach(w -> works.add(w.get("number").asString()));
        works.forEach(n -> {
            notes.put("w" + n + ".answer", "done");
            notes.put("w" + n + ".remark", "as it should be, not measured");
        });
        HttpResponse<String> kept = send("PATCH", path + "/notes", "application/json", JSON.writeValueAsString(notes));
        assertEquals(200, kept.statusCode(), kept.body());
        JsonNode done = post(path + "/finish", Map.of(), 200);
        assertFalse(done.at("/card/finished-at").isNull(), done.toString());
        assertEquals(
                409, send("POST", path + "/finish", "application/json", "{}").statusCode());
        String boat = done.at("/card/boat-id").asString();
        assertTrue(get("api/boats/" + boat + "/history").toString().contains("A Technician"));
    }

    @Test
    void documentsComeInGoOutAndAreTakenAway() {
        String path = "api/boats/" + desk.boat() + "/documents";
        HttpResponse<String> made = send("POST", path + "?name=plan.txt", "application/octet-stream", "port side");
        assertEquals(201, made.statusCode(), made.body());
        String one = path + "/" + JSON.readTree(made.body()).get("id").asString();
        assertEquals("port side", program.send(to(one)).body());
        HttpResponse<String> wrong = send("POST", path + "?name=x", "application/octet-stream", "MZ\u0000\u0001\u0002");
        assertEquals(422, wrong.statusCode());
        assertEquals(204, program.send(to(one).DELETE()).statusCode());
        assertEquals(404, program.send(to(one)).statusCode());
    }

    @Test
    void theYardsDayItsCampaignsReadingsAndAuditAreThere() {
        assertTrue(get("api/today").has("people"));
        JsonNode parts = get("api/campaign?rule=change-engine-oil&months=1&size=1000");
        assertTrue(parts.get("total").asInt() > 0);
        HttpResponse<String> nothing = program.send(to("api/campaign"));
        assertEquals(422, nothing.statusCode());
        assertTrue(nothing.body().contains("rule or a kind"), nothing.body());
        String boat = desk.boat();
        JsonNode plain = get("api/boats/" + boat + "/protection");
        assertFalse(plain.isEmpty());
        JsonNode wrong =
                post("api/boats/" + boat + "/protection/diagnosis", Map.of("readings", List.of("nowhere=-900mV")), 422);
        assertTrue(wrong.toString().contains("nowhere"), wrong.toString());
        assertEquals(403, program.send(to("api/audit")).statusCode(), "the office is not the manager");
        String manager = desk.token(Role.MANAGER);
        HttpResponse<String> audit =
                program.send(program.to("api/audit?size=5").header("Authorization", "Bearer " + manager));
        assertEquals(200, audit.statusCode());
        assertFalse(JSON.readTree(audit.body()).get("items").isEmpty(), audit.body());
    }
}
