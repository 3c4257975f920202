package sternwright.app.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import org.springframework.jdbc.core.simple.JdbcClient;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.Role;

/** Neither the log nor the audit nor what the program prints ever holds a password, a token, a link or a session. */
class LogTest {
    private final GuardedDesk desk = GuardedDesk.shared();

    @Test
    void aWholeWalkLeavesNoSecretBehind() {
        ListAppender<ILoggingEvent> log = new ListAppender<>();
        Logger root = (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
        PrintStream out = System.out;
        PrintStream err = System.err;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        List<String> secrets = new ArrayList<>();
        log.start();
        root.addAppender(log);
        System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
        System.setErr(System.out);
        try {
            walk(secrets);
        } finally {
            System.setOut(out);
            System.setErr(err);
            root.detachAppender(log);
        }
        StringBuilder said = new StringBuilder(printed.toString(StandardCharsets.UTF_8));
        log.list.forEach(e -> said.append(e.getFormattedMessage())
                .append(' ')
                .append(
                        e.getThrowableProxy() == null
                                ? ""
                                : e.getThrowableProxy().getMessage())
                .append('\n'));
        desk.part(AuditTrail.class).lines(0, 1000).forEach(l -> said.append(l).append('\n'));
        assertTrue(secrets.size() > 8, "secrets made on the way: " + secrets.size());
        secrets.forEach(s -> assertFalse(said.indexOf(s) >= 0, () -> "a secret was left behind: " + s + "\n" + said));
        desk.part(JdbcClient.class).sql("delete from sign_in_count").update();
    }

    @Test
    void signingInAndFailingToAreInTheAudit() {
        desk.person("noted", Role.OFFICE);
        new Browser(desk.address()).signIn("noted", "mistyped once more");
        new Browser(desk.address()).signIn("unknown to all", "mistyped once more");
        desk.as("noted");
        List<AuditTrail.Line> lines = desk.part(AuditTrail.class).lines(0, 20);
        assertTrue(lines.stream()
                .anyMatch(l -> l.deed().equals("sign-in.failed")
                        && l.subject().equals("noted")
                        && !l.address().isEmpty()));
        assertTrue(lines.stream()
                .anyMatch(l -> l.deed().equals("sign-in.done") && l.who().equals("Person noted")));
        assertTrue(lines.stream().noneMatch(l -> l.toString().contains("unknown to all")));
        desk.part(JdbcClient.class).sql("delete from sign_in_count").update();
    }

    private void walk(List<String> secrets) {
        Browser manager = desk.as(Role.MANAGER);
        secrets.add(GuardedDesk.PASSWORD);
        secrets.add(manager.session());
        secrets.add(manager.csrf("settings/tokens"));
        Browser wrong = new Browser(desk.address());
        wrong.signIn("manager", "mistyped words here");
        wrong.signIn("a password in the wrong field", "x");
        secrets.add("mistyped words here");
        secrets.add("a password in the wrong field");
        secrets.add(wrong.session());

        String link = found(
                manager.post(
                                "settings/people/new",
                                "settings/people/new",
                                Map.of("fullName", "Logged", "name", "logged", "role", "OFFICE"))
                        .body(),
                "/password/([A-Za-z0-9_-]{20,})");
        secrets.add(link);
        Browser fresh = new Browser(desk.address());
        fresh.post("password/" + link, "password/" + link, Map.of("password", "too short", "again", "x"));
        fresh.post(
                "password/" + link,
                "password/" + link,
                Map.of("password", "lamps along the pier", "again", "lamps along the pier"));
        secrets.add("lamps along the pier");
        for (String kind : new String[] {"PROGRAM", "CALENDAR"}) {
            String token = found(
                    manager.post("settings/tokens", "settings/tokens", Map.of("name", "logged " + kind, "kind", kind))
                            .body(),
                    "<code class=\"secret\">([A-Za-z0-9_-]{20,})</code>");
            secrets.add(token);
            Browser program = new Browser(desk.address());
            assertEquals(
                    kind.equals("PROGRAM") ? 200 : 401,
                    program.send(program.to("api/boats").header("Authorization", "Bearer " + token))
                            .statusCode());
            program.send(program.to("api/boats/" + desk.boat() + "/hours")
                    .header("Authorization", "Bearer " + token)
                    .header("Content-Type", "application/json")
                    .POST(BodyPublishers.ofString("{\"hours\":\"" + token + "\"}")));
            program.get("calendar/" + token + "/boats/nowhere.ics");
            program.get("calendar/" + token + "/people/nobody.ics");
        }
        manager.get("estimate/" + link);
        manager.get("boats?page=x");
        manager.postWith("sign-out", "guessed", List.of());
    }

    private static String found(String page, String pattern) {
        Matcher m = Pattern.compile(pattern).matcher(page);
        assertTrue(m.find(), page);
        return m.group(1);
    }
}
