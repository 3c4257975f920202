package sternwright.app.guard;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.net.ssl.SSLHandshakeException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.certificate.YardAuthority;
import sternwright.app.demo.InventedFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.serve.Serve;
import sternwright.app.serve.ServeAsk;
import sternwright.app.web.access.OwnHttps;

/** Https with the yard's own certificate authority, as a phone comes to it: a client that trusts that root and no other. */
class HttpsTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final String PASSWORD = "three lanterns on the slip";

    @TempDir
    Path folder;

    @TempDir
    static Path shared;

    @org.jspecify.annotations.Nullable
    private static Serve running;

    @BeforeAll
    static void start() throws Exception {
        Path yard = shared.resolve("yard");
        new InventedFolder(InventedFolder.Where.NORTH).write(yard, 2, TODAY, 1);
        running = Serve.start(
                new ServeAsk(yard, "127.0.0.1", 0, List.of("slip.test"), false, 0, TODAY.toString()), "ABCD-EFGH-JKMN");
    }

    @AfterAll
    static void end() {
        serve().close();
    }

    private static Serve serve() {
        return Objects.requireNonNull(running);
    }

    @Test
    void aPhoneFetchesTheRootByPlainHttpAndThenTrustsThePages() throws Exception {
        OwnHttps own = serve().part(OwnHttps.class);
        String plain = own.plainAddress().replace("/phone", "/");
        Browser before = new Browser(plain);
        HttpResponse<String> page = before.get("phone");
        assertEquals(200, page.statusCode());
        String[] pairs = own.fingerprint().split(":");
        assertEquals(32, pairs.length);
        assertTrue(page.body().contains(String.join(" ", List.of(pairs).subList(0, 8))), page.body());
        assertEquals(List.of(), before.cookies(), "no session begins in the clear");
        assertFalse(page.body().contains("<form"), "nothing is typed in the clear");

        byte[] root = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(plain + "phone/root.crt"))
                                .build(),
                        BodyHandlers.ofByteArray())
                .body();
        assertArrayEquals(own.root(), root);
        Browser phone = new Browser(serve().address(), Trust.in(root));
        assertTrue(serve().address().startsWith("https://"), serve().address());
        signUpAndIn(phone);
        HttpResponse<String> phones = phone.get("settings/phones");
        assertEquals(200, phones.statusCode());
        assertTrue(phones.body().contains(own.plainAddress()), "the picture's address is said too");
        assertTrue(phone.cookies().stream()
                .filter(c -> c.getName().equals("__Host-sternwright"))
                .allMatch(c -> c.getSecure() && c.isHttpOnly()));
        assertFalse(phone.session().isEmpty());
    }

    private static void signUpAndIn(Browser phone) {
        HttpResponse<String> made = phone.post(
                "first-start",
                "first-start",
                Map.of(
                        "code",
                        "ABCDEFGHJKMN",
                        "fullName",
                        "Ada",
                        "name",
                        "ada",
                        "password",
                        PASSWORD,
                        "again",
                        PASSWORD));
        assertEquals(303, made.statusCode(), made.body());
        assertEquals(302, phone.signIn("ada", PASSWORD).statusCode());
        HttpResponse<String> boats = phone.get("boats");
        assertEquals(200, boats.statusCode());
        assertTrue(
                boats.headers()
                        .firstValue("Strict-Transport-Security")
                        .orElse("")
                        .startsWith("max-age=31536000"),
                boats.headers().toString());
    }

    @Test
    void plainHttpHandsOutNothingElse() throws Exception {
        Browser plain = new Browser(serve().part(OwnHttps.class).plainAddress().replace("/phone", "/"));
        HttpResponse<String> led = plain.get("boats?find=x");
        assertEquals(302, led.statusCode());
        assertEquals(
                serve().address() + "boats?find=x",
                led.headers().firstValue("Location").orElse(""));
        HttpResponse<String> typed = plain.postWith("sign-in", "", List.of(Map.entry("name", "ada")));
        assertEquals(403, typed.statusCode());
        assertEquals(302, plain.get("api/boats").statusCode());
        assertEquals(List.of(), plain.cookies());
    }

    @Test
    void whoDoesNotTrustTheRootIsNotLetThrough() throws Exception {
        Browser stranger = new Browser(serve().address());
        UncheckedIOException refused = assertThrows(UncheckedIOException.class, () -> stranger.get("sign-in"));
        assertTrue(refused.getCause() instanceof SSLHandshakeException, refused.toString());
    }

    @Test
    void theRootIsMadeOnceAndItsKeyIsItsOwnersAlone() throws Exception {
        Path place = folder.resolve("https");
        YardAuthority first = YardAuthority.in(place, "Yard", List.of("slip.test"), Clock.systemUTC());
        YardAuthority second = YardAuthority.in(place, "Yard", List.of("other.test"), Clock.systemUTC());
        assertEquals(first.fingerprint(), second.fingerprint());
        assertEquals("rw-------", permissions(place.resolve("root-key.pem")));
        assertEquals("rwx------", permissions(place));
        first.check(List.of("slip.test", "pc.slip.test", "hall.local", "192.168.4.20", "[fd00::7]"));
        BadInput beyond = assertThrows(BadInput.class, () -> second.check(List.of("other.test")));
        assertTrue(String.valueOf(beyond.getMessage()).contains("other.test"), beyond.getMessage());
        assertThrows(BadInput.class, () -> second.check(List.of("8.8.8.8")));
    }

    private static String permissions(Path path) throws Exception {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
    }

    @Test
    void aDamagedRootIsSaidInWords() throws Exception {
        Path place = Files.createDirectories(folder.resolve("https"));
        Files.writeString(place.resolve("root.pem"), "not a certificate");
        Files.writeString(place.resolve("root-key.pem"), "not a key");
        BadInput bad =
                assertThrows(BadInput.class, () -> YardAuthority.in(place, "Yard", List.of(), Clock.systemUTC()));
        assertTrue(String.valueOf(bad.getMessage()).contains("Move the folder away"), bad.getMessage());
    }
}
