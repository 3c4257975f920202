package sternwright.app.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import javax.net.ssl.SSLContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.account.Accounts;
import sternwright.app.account.AuditTrail;
import sternwright.app.certificate.YardAuthority;
import sternwright.app.demo.InventedFolder;
import sternwright.app.serve.Serve;
import sternwright.app.serve.ServeAsk;

/** With a proxy in front its word on name, protocol and sender counts; without one nobody's does. */
class BehindProxyTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final String PASSWORD = "three lanterns on the slip";

    @TempDir
    Path folder;

    private Serve start(boolean behindProxy, List<String> names) throws Exception {
        Path yard = folder.resolve("yard");
        new InventedFolder(InventedFolder.Where.NORTH).write(yard, 2, TODAY, 1);
        Serve serve = Serve.start(new ServeAsk(yard, "127.0.0.1", 0, names, behindProxy, TODAY.toString()), "");
        serve.part(Accounts.class).first("ada", "Ada Invented", PASSWORD);
        return serve;
    }

    @Test
    void linksCookiesAndTheAuditKnowTheWorldInFrontOfTheProxy() throws Exception {
        Serve serve = start(true, List.of("yard.example"));
        YardAuthority authority = YardAuthority.in(folder.resolve("https"), "", List.of(), Clock.systemUTC());
        SSLContext shows = Trust.shows(authority.issue(Set.of("127.0.0.1")));
        try (SmallProxy proxy = new SmallProxy(serve.address(), "yard.example", shows)) {
            Browser outside = new Browser(proxy.address(), Trust.in(authority.root()));
            HttpResponse<String> page = outside.get("sign-in");
            assertEquals(200, page.statusCode(), page.body());
            assertEquals(302, outside.signIn("ada", PASSWORD).statusCode());
            assertTrue(outside.cookies().stream().anyMatch(c -> c.getName().equals("sternwright") && c.getSecure()));

            HttpResponse<String> boats = outside.get("boats");
            assertEquals(200, boats.statusCode(), boats.body());
            assertTrue(boats.headers().firstValue("Strict-Transport-Security").isPresent());
            HttpResponse<String> token = outside.post(
                    "settings/tokens", "settings/tokens", Map.of("name", "a calendar", "kind", "CALENDAR"));
            assertTrue(token.body().contains("https://yard.example/calendar/"), token.body());
            assertEquals(
                    "203.0.113.9",
                    serve.part(AuditTrail.class).lines(0, 1).get(0).address());
            try (SmallProxy other = new SmallProxy(serve.address(), "evil.example", shows)) {
                Browser led = new Browser(other.address(), Trust.in(authority.root()));
                assertEquals(400, led.get("sign-in").statusCode(), "a name that was not given");
            }
        } finally {
            serve.close();
        }
    }

    @Test
    void withoutAProxyForgedHeadersChangeNothing() throws Exception {
        Serve serve = start(false, List.of());
        try {
            Browser forger = new Browser(serve.address());
            String csrf = forger.csrf("sign-in");
            for (int i = 0; i < 21; i++) {
                forged(forger, "name" + i, csrf, "198.51.100." + i);
            }
            HttpResponse<String> slowed = forged(forger, "another", csrf, "198.51.100.77");
            assertEquals(429, slowed.statusCode(), "the real sender is counted, whatever he says");
            HttpResponse<String> page = forger.send(forger.to("sign-in")
                    .header("X-Forwarded-Proto", "https")
                    .header("X-Forwarded-Host", "evil.example")
                    .header("Forwarded", "for=198.51.100.1;proto=https;host=evil.example"));
            assertFalse(page.body().contains("evil.example"), page.body());
            assertTrue(page.headers().firstValue("Strict-Transport-Security").isEmpty());
            assertTrue(forger.cookies().stream().noneMatch(c -> c.getSecure()));
            assertTrue(Stream.of("Location", "Set-Cookie")
                    .flatMap(h -> page.headers().allValues(h).stream())
                    .noneMatch(v -> v.contains("evil") || v.contains("Secure")));
        } finally {
            serve.close();
        }
    }

    private static HttpResponse<String> forged(Browser forger, String name, String csrf, String from) {
        return forger.send(forger.to("sign-in")
                .header("X-Forwarded-For", from)
                .header("Forwarded", "for=" + from)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(java.net.http.HttpRequest.BodyPublishers.ofString(Browser.encoded(List.of(
                        Map.entry("name", name),
                        Map.entry("password", "wrong wrong wrong"),
                        Map.entry("_csrf", csrf))))));
    }
}
