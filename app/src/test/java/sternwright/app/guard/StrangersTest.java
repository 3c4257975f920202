package sternwright.app.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import sternwright.app.account.Accounts;
import sternwright.app.account.Role;
import sternwright.app.desk.open.OpenYard;

/** What comes from outside: owners' links, files, paths that climb, and names that are code. */
class StrangersTest {
    private static final Pattern LINK = Pattern.compile("/estimate/([A-Za-z0-9_-]{20,})");

    private final GuardedDesk desk = GuardedDesk.shared();

    private record Sent(String id, String secret) {}

    /** An estimate of the first visit of a boat's plan, with its link. */
    private Sent estimate(Browser office, String boat) throws InterruptedException {
        HttpResponse<String> made = Crawl.sendOfVisits(office, boat, "/estimates");
        assertEquals(303, made.statusCode(), made.body());
        String path =
                URI.create(made.headers().firstValue("Location").orElseThrow()).getPath();
        HttpResponse<String> linked = office.post(path + "/link", path, Map.of());
        Matcher m = LINK.matcher(linked.body());
        assertTrue(m.find(), linked.body());
        return new Sent(path.substring(path.lastIndexOf('/') + 1), m.group(1));
    }

    @Test
    void anOwnersLinkIsAnsweredOnceAndWorksNoLongerThanSaid() throws InterruptedException {
        Browser office = desk.as(Role.OFFICE);
        Sent sent = estimate(office, desk.boat());
        Browser owner = new Browser(desk.address());
        String page = "/estimate/" + sent.secret();
        assertEquals(200, owner.get(page).statusCode());
        assertEquals(
                422, owner.post(page, page, Map.of("name", "An Owner")).statusCode(), "every line wants an answer");
        assertEquals(
                303,
                owner.post(page, page, Map.of("name", "An Owner", "all", "yes")).statusCode());
        HttpResponse<String> again = owner.post(page, page, Map.of("name", "Somebody Else", "all", "yes"));
        assertEquals(409, again.statusCode());
        assertTrue(again.body().contains("An Owner"), "the first answer stands");
        assertFalse(again.body().contains("Somebody Else"));

        desk.part(JdbcClient.class)
                .sql("update estimate set expires_at = 1 where id = ?")
                .param(sent.id())
                .update();
        assertEquals(410, owner.get(page).statusCode());
        assertEquals(410, owner.get(page + "/pdf").statusCode());
        assertEquals(
                410,
                owner.post(page, "sign-in", Map.of("name", "x", "all", "yes")).statusCode());
    }

    @Test
    void aWithdrawnLinkAnOldOneAndAGuessedOneOpenNothing() throws InterruptedException {
        Browser office = desk.as(Role.OFFICE);
        String boat =
                List.copyOf(desk.part(OpenYard.class).files().boats().keySet()).get(1);
        Sent first = estimate(office, boat);
        String path = "/estimates/" + first.id();
        Matcher m = LINK.matcher(office.post(path + "/link", path, Map.of()).body());
        assertTrue(m.find());
        Browser owner = new Browser(desk.address());
        assertEquals(404, owner.get("/estimate/" + first.secret()).statusCode(), "a new link ends the old one");
        assertEquals(200, owner.get("/estimate/" + m.group(1)).statusCode());
        assertEquals(303, office.post(path + "/withdraw", path, Map.of()).statusCode());
        int gone = owner.get("/estimate/" + m.group(1)).statusCode();
        assertTrue(gone == 410 || gone == 404, "withdrawn: " + gone);
        assertEquals(302, owner.get("/estimates/" + first.id()).statusCode(), "the yard's side asks who it is");
        for (int i = 0; i < 20; i++) {
            owner.get("/estimate/guess" + i);
        }
        HttpResponse<String> slowed = owner.get("/estimate/guess");
        assertEquals(429, slowed.statusCode());
        assertTrue(Long.parseLong(slowed.headers().firstValue("Retry-After").orElse("0")) > 0);
        desk.part(JdbcClient.class).sql("delete from sign_in_count").update();
    }

    @Test
    void filesAreKnownByTheirContentAndTooLargeOnesAreRefused() {
        Browser crew = desk.as(Role.TECHNICIAN);
        String boat = desk.boat();
        String page = "/boats/" + boat + "/documents";
        Map<String, byte[]> wrong = Map.of(
                "program.pdf", new byte[] {'M', 'Z', 0, 1, 2, 3, 0, 0},
                "archive.jpg", new byte[] {'P', 'K', 3, 4, 0, 0, 0, 0},
                "nothing.txt", new byte[0]);
        wrong.forEach((name, content) -> {
            HttpResponse<String> refused = Upload.send(crew, boat, name, "application/pdf", content);
            assertEquals(422, refused.statusCode(), name);
            assertTrue(refused.body().contains("PDF, JPEG, PNG"), refused.body());
        });
        String html = "<html><script>alert(1)</script></html>";
        assertEquals(
                303, Upload.send(crew, boat, "../../x.html", "text/html", html).statusCode());
        String path = crew.get(page).body().replaceFirst("(?s).*?href=\"(/boats/[^\"]+/documents/[^\"]+)\".*", "$1");
        HttpResponse<String> got = crew.get(path);
        assertTrue(got.headers().firstValue("Content-Type").orElse("").startsWith("text/plain"));
        assertEquals(
                "nosniff", got.headers().firstValue("X-Content-Type-Options").orElse(""));
        assertTrue(got.headers().firstValue("Content-Disposition").orElse("").startsWith("attachment"));
        assertTrue(
                got.headers().firstValue("Content-Security-Policy").orElse("").contains("sandbox"));
        assertFalse(got.headers().firstValue("Content-Disposition").orElse("").contains("/"));

        byte[] large = new byte[22 * 1024 * 1024];
        new Random(1).nextBytes(large);
        HttpResponse<String> refused = Upload.send(crew, boat, "large.jpg", "image/jpeg", large);
        assertEquals(413, refused.statusCode());
        assertTrue(refused.body().contains("20 MB"), refused.body());
        assertEquals(
                400,
                crew.postWith(page, crew.csrf(page), List.of(Map.entry("file", "no file")))
                        .statusCode(),
                "a form without its file");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/assets/../application.properties",
                "/assets/..%2f..%2fapplication.properties",
                "/assets/%2e%2e/%2e%2e/db/account/V100__accounts.sql",
                "/assets/..;/application.properties",
                "/assets//../application.properties",
                "/assets/..\\application.properties",
                "/assets/%5c..%5capplication.properties",
                "/assets/./../../../../application.properties",
                "/font/../../../../application.properties",
                "/font/%252e%252e/application.properties",
                "/assets/x%00.css",
                "/phone/../settings/people",
                "/sign-in/../settings/people",
                "/assets/..;/settings/people",
                "/sign-in;/../settings/people",
                "//settings/people",
                "/SETTINGS/PEOPLE",
                "/settings/people/",
                "/settings/people%2f",
                "/settings%2fpeople",
                "/estimate/x/../../settings/people",
                "/boats/..%2f..%2fetc%2fpasswd",
                "/calendar/../api/boats",
                "http://evil.example/settings/people",
                "/WEB-INF/web.xml",
                "/META-INF/MANIFEST.MF",
                "/actuator/env",
                "/h2-console",
                "/.desk/accounts.db",
                "/error"
            })
    void aPathThatClimbsLeadsNowhere(String path) throws IOException {
        String answer = raw(path);
        String status = answer.substring(9, 12);
        assertTrue(
                List.of("400", "401", "302", "404", "301").contains(status),
                path + " was answered " + answer.split("\r\n")[0]);
        assertFalse(answer.contains("spring."), answer);
        assertFalse(answer.contains("create table"), answer);
        assertFalse(answer.contains("manager@") || answer.contains("Manda Invented"), answer);
        assertFalse(answer.contains("Apache Tomcat") || answer.contains("Exception"), answer);
        assertFalse(answer.toLowerCase(java.util.Locale.ROOT).contains("location: http://evil"), answer);
    }

    /** A request as no client library would send it. */
    private String raw(String path) throws IOException {
        URI at = URI.create(desk.address());
        try (Socket socket = new Socket(at.getHost(), at.getPort())) {
            socket.setSoTimeout(10_000);
            socket.getOutputStream()
                    .write(("GET " + path + " HTTP/1.1\r\nHost: " + at.getAuthority() + "\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.ISO_8859_1));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void aNameOfAnotherHostIsRefused() throws IOException {
        URI at = URI.create(desk.address());
        try (Socket socket = new Socket(at.getHost(), at.getPort())) {
            socket.getOutputStream()
                    .write("GET /sign-in HTTP/1.1\r\nHost: evil.example\r\nConnection: close\r\n\r\n"
                            .getBytes(StandardCharsets.ISO_8859_1));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(answer.startsWith("HTTP/1.1 400"), answer);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "'; drop table account; --",
                "' or '1'='1",
                "${7*7}{0}%s",
                "&lt;b&gt; {{7*7}}"
            })
    void aNameThatIsCodeStaysAName(String name) {
        Browser manager = desk.as(Role.MANAGER);
        long before = desk.part(Accounts.class).all().size();
        String signIn = "n" + Integer.toHexString(name.hashCode());
        HttpResponse<String> made = manager.post(
                "settings/people/new",
                "settings/people/new",
                Map.of("fullName", name, "name", signIn, "role", "TECHNICIAN"));
        assertEquals(200, made.statusCode(), made.body());
        var person = desk.part(Accounts.class).byName(signIn).orElseThrow();
        assertEquals(name, person.fullName());
        assertEquals(before + 1, desk.part(Accounts.class).all().size());
        for (String path : List.of("settings/people", "settings/people/" + person.id(), "settings/audit")) {
            Sound.check(path, manager.get(path));
        }
        desk.part(Accounts.class).setPassword(person.id(), GuardedDesk.PASSWORD);
        Browser self = desk.as(signIn);
        HttpResponse<String> page = self.get("boats");
        Sound.check("boats", page);
        assertTrue(org.jsoup.Jsoup.parse(page.body()).text().contains(name), "the name is shown as it was typed");
        Browser guesser = new Browser(desk.address());
        assertTrue(guesser.signIn(name, name)
                .headers()
                .firstValue("Location")
                .orElse("")
                .endsWith("failed"));
        desk.part(JdbcClient.class).sql("delete from sign_in_count").update();
    }

    @Test
    void aBoatWhoseNameIsCodeIsShownAsNamedOnEveryPage() {
        Browser office = desk.as(Role.OFFICE);
        String name = "<script>alert(1)</script>";
        String boat =
                List.copyOf(desk.part(OpenYard.class).files().boats().keySet()).get(2);
        String page = "/boats/" + boat + "/text";
        HttpResponse<String> read = office.get(page);
        var form = org.jsoup.Jsoup.parse(read.body());
        String text = form.expectFirst("textarea")
                .wholeText()
                .replaceFirst("(?m)^name:.*$", "name: \"" + name + "\"")
                .replaceFirst("^\n", "");
        String version = form.expectFirst("input[name=version]").attr("value");
        HttpResponse<String> kept = office.post(page, page, Map.of("text", text, "version", version));
        assertEquals(303, kept.statusCode(), kept.body());
        assertEquals(
                name,
                Objects.requireNonNull(desk.part(OpenYard.class).files().boats().get(boat))
                        .name());
        Crawl crawl = new Crawl(office);
        crawl.from("/boats/" + boat);
        assertTrue(
                crawl.pages().size() > 10, "pages looked at: " + crawl.pages().size());
    }
}
