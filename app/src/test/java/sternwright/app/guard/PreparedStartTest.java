package sternwright.app.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.demo.InventedFolder;
import sternwright.app.serve.Serve;

/** The program as the build has put it together for its starts (decision 109) guards its pages like one put together anew. */
class PreparedStartTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final String PASSWORD = "four oars in the loft";
    private static final Pattern LINK = Pattern.compile("/(password/[A-Za-z0-9_-]{20,})");

    @TempDir
    Path folder;

    @Test
    void theBuildHasPutThePagesTogether() throws ClassNotFoundException {
        Class.forName(Serve.class.getPackageName() + ".Prepare__ApplicationContextInitializer");
    }

    @Test
    void eachRoleSeesItsPagesAndStrangersNone() throws Exception {
        Path yard = folder.resolve("yard");
        new InventedFolder(InventedFolder.Where.NORTH).write(yard, 2, TODAY, 3);
        try (Node node = Node.on(yard, TODAY.toString())) {
            Browser stranger = new Browser(node.address());
            Browser manager = new Browser(node.address());
            manager.post(
                    "first-start",
                    "first-start",
                    Map.of("fullName", "Ada Invented", "name", "ada", "password", PASSWORD, "again", PASSWORD));
            assertEquals(302, manager.signIn("ada", PASSWORD).statusCode());
            Browser technician = technician(node, manager);
            for (String path : List.of("boats", "due", "cards", "settings/people", "settings/audit")) {
                boolean managers = path.startsWith("settings/");
                assertEquals(302, stranger.get(path).statusCode(), path);
                assertEquals(200, manager.get(path).statusCode(), path);
                assertEquals(managers ? 403 : 200, technician.get(path).statusCode(), path);
            }
            Map<String, String> more = Map.of("fullName", "Cy Invented", "name", "cy", "role", "MANAGER");
            assertEquals(
                    403, technician.post("settings/people/new", "cards", more).statusCode());
            assertEquals(
                    403,
                    manager.postWith("settings/people/new", "no secret", List.of())
                            .statusCode());
            assertEquals(401, stranger.get("api/boats").statusCode());
            assertEquals(
                    401,
                    stranger.send(stranger.to("api/boats").POST(BodyPublishers.ofString("{}")))
                            .statusCode());
        }
    }

    private static Browser technician(Node node, Browser manager) {
        HttpResponse<String> added = manager.post(
                "settings/people/new",
                "settings/people/new",
                Map.of("fullName", "Ben Invented", "name", "ben", "role", "TECHNICIAN"));
        Matcher link = LINK.matcher(added.body());
        assertTrue(link.find(), added.body());
        Browser technician = new Browser(node.address());
        technician.post(link.group(1), link.group(1), Map.of("password", PASSWORD, "again", PASSWORD));
        assertEquals(302, technician.signIn("ben", PASSWORD).statusCode());
        return technician;
    }
}
