package sternwright.app.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.HttpCookie;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import org.springframework.session.jdbc.JdbcIndexedSessionRepository;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import sternwright.app.account.Accounts;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.OneTimeLinks;
import sternwright.app.account.Role;

/** Signing in, staying signed in, and what other sites or guessers can do about it. */
class SessionTest {
    private static final String WRONG = "wrong wrong wrong";

    private final GuardedDesk desk = GuardedDesk.shared();

    @Test
    void theSessionGetsAnotherNameWhenSomebodySignsIn() {
        Browser browser = new Browser(desk.address());
        browser.get("sign-in");
        String before = browser.session();
        assertFalse(before.isEmpty());
        assertEquals(302, browser.signIn("manager", GuardedDesk.PASSWORD).statusCode());
        assertNotEquals(before, browser.session());
        Browser planted = new Browser(desk.address());
        HttpResponse<String> old = planted.send(planted.to("boats").header("Cookie", "sternwright=" + before));
        assertEquals(302, old.statusCode(), "the planted session is nobody's");
    }

    @Test
    void aSessionNobodyBeganIsNotTakenOver() {
        Browser browser = new Browser(desk.address());
        String made = "bXkgb3duIHNlc3Npb24taWQtMTIzNDU2Nzg5MDEyMzQ1";
        HttpResponse<String> page = browser.send(browser.to("sign-in").header("Cookie", "sternwright=" + made));
        assertEquals(200, page.statusCode());
        assertNotEquals(made, browser.session());
    }

    @Test
    void theCookieIsKeptFromScriptsAndOtherSites() {
        Browser browser = new Browser(desk.address());
        HttpResponse<String> page = browser.get("sign-in");
        String set = page.headers().allValues("Set-Cookie").stream()
                .filter(c -> c.startsWith("sternwright="))
                .findFirst()
                .orElseThrow();
        assertTrue(set.contains("HttpOnly"), set);
        assertTrue(set.contains("SameSite=Lax"), set);
        assertFalse(set.contains("Domain"), set);
        HttpCookie cookie = browser.cookies().get(0);
        assertTrue(cookie.getValue().length() >= 32, "cannot be guessed");
        assertFalse(page.uri().toString().contains("jsessionid"));
        assertFalse(page.body().contains("jsessionid"));
    }

    @Test
    void whoSignsOutIsOutAndTheCookieIsWorthNothing() {
        Browser browser = desk.as(Role.OFFICE);
        String session = browser.session();
        assertEquals(302, browser.post("sign-out", "settings", Map.of()).statusCode());
        assertEquals(302, with(session).statusCode());
    }

    @Test
    void twoRequestsMayAddTheSameThingToASessionAtOnce() {
        addsAtOnce(desk.part(JdbcIndexedSessionRepository.class));
    }

    private static <S extends Session> void addsAtOnce(FindByIndexNameSessionRepository<S> sessions) {
        S made = sessions.createSession();
        sessions.save(made);
        S one = Objects.requireNonNull(sessions.findById(made.getId()));
        S other = Objects.requireNonNull(sessions.findById(made.getId()));
        one.setAttribute("said", "first");
        other.setAttribute("said", "later");
        sessions.save(one);
        sessions.save(other);
        S after = Objects.requireNonNull(sessions.findById(made.getId()));
        assertEquals("later", after.getAttribute("said"));
        sessions.deleteById(made.getId());
    }

    private HttpResponse<String> with(String session) {
        Browser other = new Browser(desk.address());
        return other.send(other.to("boats").header("Cookie", "sternwright=" + session));
    }

    @Test
    void lockingAPersonOrANewPasswordEndsEverySessionAtOnce() {
        var account = desk.person("leaver", Role.TECHNICIAN);
        Browser browser = desk.as("leaver");
        assertEquals(200, with(browser.session()).statusCode());
        String secret = desk.part(OneTimeLinks.class).make(account.id());
        Browser elsewhere = new Browser(desk.address());
        String page = "password/" + secret;
        HttpResponse<String> set =
                elsewhere.post(page, page, Map.of("password", "another few words", "again", "another few words"));
        assertEquals(303, set.statusCode(), set.body());
        assertEquals(302, with(browser.session()).statusCode());
        HttpResponse<String> twice =
                elsewhere.post(page, "sign-in", Map.of("password", "yet another word", "again", "yet another word"));
        assertEquals(422, twice.statusCode(), "a link works once");
        assertTrue(twice.body().contains("does not work any more"), twice.body());
        assertEquals("/sign-in?failed", relative(elsewhere.signIn("leaver", "yet another word")));
        assertEquals(302, elsewhere.signIn("leaver", "another few words").statusCode());

        Browser manager = desk.as(Role.MANAGER);
        var now = desk.part(Accounts.class).byId(account.id()).orElseThrow();
        HttpResponse<String> locked = manager.post(
                "settings/people/" + account.id(),
                "settings/people/" + account.id(),
                Map.of(
                        "fullName",
                        "Leaver",
                        "role",
                        "TECHNICIAN",
                        "locked",
                        "true",
                        "version",
                        Integer.toString(now.version())));
        assertEquals(303, locked.statusCode(), locked.body());
        assertEquals(302, with(elsewhere.session()).statusCode());
        assertEquals("/sign-in?failed", relative(elsewhere.signIn("leaver", "another few words")));
    }

    private String relative(HttpResponse<String> answer) {
        return "/"
                + answer.headers()
                        .firstValue("Location")
                        .orElse("")
                        .replaceFirst("^" + desk.address(), "")
                        .replaceFirst("^/", "");
    }

    @Test
    void aSessionEndsAfterAWeekHoweverMuchItIsUsed() {
        Browser browser = desk.as(Role.OFFICE);
        long begun = System.currentTimeMillis() - 8L * 24 * 3600 * 1000;
        int changed = desk.part(JdbcClient.class)
                .sql("update spring_session set creation_time = ? where principal_name = ?")
                .params(
                        begun,
                        desk.part(Accounts.class).byName("office").orElseThrow().id())
                .update();
        assertTrue(changed > 0);
        assertEquals("/sign-in", relative(browser.get("boats")));
        assertEquals("/sign-in", relative(browser.get("boats")), "and it does not come back");
    }

    @Test
    void aPersonChangesTheOwnPasswordAndEndsTheOtherSessions() {
        desk.person("changer", Role.TECHNICIAN);
        Browser here = desk.as("changer");
        Browser there = desk.as("changer");
        HttpResponse<String> wrong = here.post(
                "settings/password",
                "settings/password",
                Map.of("now", WRONG, "password", "a new few words", "again", "a new few words"));
        assertEquals(422, wrong.statusCode(), wrong.body());
        HttpResponse<String> done = here.post(
                "settings/password",
                "settings/password",
                Map.of("now", GuardedDesk.PASSWORD, "password", "a new few words", "again", "a new few words"));
        assertEquals(303, done.statusCode(), done.body());
        assertEquals(302, there.get("boats").statusCode());
        assertEquals(
                302,
                new Browser(desk.address()).signIn("changer", "a new few words").statusCode());
    }

    @Test
    void aPersonSeesWhereItIsSignedInAndEndsThatByPassword() {
        desk.person("lender", Role.TECHNICIAN);
        Browser here = desk.as("lender");
        Browser lent = desk.as("lender");
        assertTrue(
                here.get("settings/password").body().contains("2 places"),
                here.get("settings/password").body());
        HttpResponse<String> wrong = here.post("settings/sessions/end", "settings/password", Map.of("now", WRONG));
        assertEquals(422, wrong.statusCode());
        assertEquals(200, lent.get("boats").statusCode());
        HttpResponse<String> ended =
                here.post("settings/sessions/end", "settings/password", Map.of("now", GuardedDesk.PASSWORD));
        assertEquals(303, ended.statusCode(), ended.body());
        assertEquals(302, lent.get("boats").statusCode());
        assertEquals(200, here.get("boats").statusCode());
    }

    @Test
    void aFormWithoutItsSecretIsRefusedEverywhere() {
        Browser browser = desk.as(Role.MANAGER);
        Browser other = desk.as(Role.MANAGER);
        String others = other.csrf("settings/tokens");
        long before = desk.part(AuditTrail.class).count();
        List<String> taken = new ArrayList<>();
        desk.part(RequestMappingHandlerMapping.class)
                .getHandlerMethods()
                .keySet()
                .forEach(info -> {
                    String path = Objects.requireNonNull(info.getPathPatternsCondition())
                            .getPatterns()
                            .iterator()
                            .next()
                            .getPatternString()
                            .replaceAll("\\{[^}]+\\}", desk.boat());
                    if (info.getMethodsCondition().getMethods().contains(RequestMethod.POST)
                            && !path.startsWith("/api/")) {
                        for (String csrf : new String[] {"", "guessed", others}) {
                            int status = browser.postWith(path, csrf, List.of(Map.entry("name", "x")))
                                    .statusCode();
                            if (status != 403) {
                                taken.add(path + " " + status);
                            }
                        }
                    }
                });
        assertEquals(List.of(), taken);
        assertEquals(before, desk.part(AuditTrail.class).count());
        assertEquals(
                403,
                browser.postWith("sign-in", "", List.of(Map.entry("name", "x"))).statusCode());
        assertEquals(403, browser.postWith("sign-out", "guessed", List.of()).statusCode());
        assertEquals(200, browser.get("boats").statusCode());
    }

    @Test
    void whoGuessesPasswordsIsToldHowLongToWait() {
        desk.person("guessed", Role.OFFICE);
        Browser guesser = new Browser(desk.address());
        for (int i = 0; i < 5; i++) {
            assertEquals("/sign-in?failed", relative(guesser.signIn("guessed", WRONG + i)));
        }
        HttpResponse<String> slowed = guesser.signIn("guessed", GuardedDesk.PASSWORD);
        assertEquals(429, slowed.statusCode(), "not even the right one is looked at");
        long seconds = Long.parseLong(slowed.headers().firstValue("Retry-After").orElse("0"));
        assertTrue(seconds > 0 && seconds <= 900, "told " + seconds);
        assertTrue(slowed.body().contains("second"), slowed.body());
        forget("guessed");
        assertEquals(302, guesser.signIn("guessed", GuardedDesk.PASSWORD).statusCode());
    }

    /** As if the wait were over, for this name and for the address all tests share. */
    private void forget(String name) {
        desk.part(JdbcClient.class).sql("delete from sign_in_count").update();
        assertTrue(desk.part(Accounts.class).byName(name).isPresent());
    }

    @Test
    void whetherANameIsKnownIsToldByNothing() {
        Browser guesser = new Browser(desk.address());
        HttpResponse<String> unknown = guesser.signIn("nobody", WRONG);
        HttpResponse<String> known = guesser.signIn("surveyor", WRONG);
        assertEquals(unknown.statusCode(), known.statusCode());
        assertEquals(relative(unknown), relative(known));
        forget("surveyor");
    }

    @Test
    void whatBrowsersAreToldKeepsStrangersOut() {
        HttpResponse<String> page = desk.as(Role.SURVEYOR).get("boats");
        Map<String, String> wanted = Map.of(
                "X-Content-Type-Options", "nosniff",
                "X-Frame-Options", "DENY",
                "Referrer-Policy", "same-origin",
                "Cross-Origin-Opener-Policy", "same-origin",
                "Cross-Origin-Resource-Policy", "same-origin",
                "Cache-Control", "no-cache, no-store, max-age=0, must-revalidate");
        wanted.forEach((name, value) ->
                assertEquals(value, page.headers().firstValue(name).orElse(""), name));
        String policy = page.headers().firstValue("Content-Security-Policy").orElse("");
        assertTrue(policy.startsWith("default-src 'none'; script-src 'self';"), policy);
        assertFalse(policy.contains("unsafe"), policy);
        assertTrue(page.headers().firstValue("Server").isEmpty());
        assertTrue(page.headers().firstValue("X-Powered-By").isEmpty());
        Browser program = new Browser(desk.address());
        HttpResponse<String> trace = program.send(program.to("boats").method("TRACE", BodyPublishers.noBody()));
        assertTrue(trace.statusCode() == 405 || trace.statusCode() == 400, "status " + trace.statusCode());
        HttpResponse<String> stranger = program.send(program.to("sign-in").header("Origin", "http://evil.example"));
        assertTrue(stranger.headers().firstValue("Access-Control-Allow-Origin").isEmpty());
    }
}
