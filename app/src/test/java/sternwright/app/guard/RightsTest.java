package sternwright.app.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Test;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import sternwright.app.account.Accounts;
import sternwright.app.account.ApiTokens;
import sternwright.app.account.Role;
import sternwright.app.desk.open.OpenYard;

/** Nobody does what the role does not allow, and nobody touches what is another's, whatever address is typed. */
class RightsTest {
    private final GuardedDesk desk = GuardedDesk.shared();

    private void everyHandler(BiConsumer<RequestMappingInfo, HandlerMethod> each) {
        desk.part(RequestMappingHandlerMapping.class).getHandlerMethods().forEach((info, method) -> {
            if (method.getBeanType().getPackageName().startsWith("sternwright") && !open(method)) {
                each.accept(info, method);
            }
        });
    }

    private static boolean open(HandlerMethod method) {
        return roles(method).isEmpty() && AnnotatedElementUtils.hasAnnotation(method.getBeanType(), PermitAll.class);
    }

    private static Set<String> roles(HandlerMethod method) {
        RolesAllowed own = AnnotatedElementUtils.findMergedAnnotation(method.getMethod(), RolesAllowed.class);
        RolesAllowed all = AnnotatedElementUtils.findMergedAnnotation(method.getBeanType(), RolesAllowed.class);
        RolesAllowed said = own == null ? all : own;
        return said == null ? Set.of() : Set.of(said.value());
    }

    private String path(RequestMappingInfo info) {
        String pattern = Objects.requireNonNull(info.getPathPatternsCondition())
                .getPatterns()
                .iterator()
                .next()
                .getPatternString();
        return pattern.replaceAll("\\{(?:id|boat)\\}", Matcher.quoteReplacement(desk.boat()))
                .replaceAll("\\{[^}]+\\}", "some");
    }

    private static String method(RequestMappingInfo info) {
        Set<RequestMethod> methods = info.getMethodsCondition().getMethods();
        return methods.isEmpty() ? "GET" : methods.iterator().next().name();
    }

    @Test
    void whatARoleMayNotDoIsRefusedToIt() {
        List<String> let = new ArrayList<>();
        for (Role role : Role.values()) {
            Browser browser = desk.as(role);
            String csrf = browser.csrf("settings/tokens");
            String token = desk.token(role);
            everyHandler((info, method) -> {
                if (!roles(method).contains(role.name())) {
                    int status = ask(browser, path(info), method(info), kind(info), csrf, token);
                    if (status != 403) {
                        let.add(role + " " + method(info) + " " + path(info) + " " + status);
                    }
                }
            });
        }
        assertEquals(List.of(), let);
    }

    @Test
    void aStrangerIsAskedWhoItIs() {
        List<String> let = new ArrayList<>();
        Browser stranger = new Browser(desk.address());
        everyHandler((info, method) -> {
            String path = path(info);
            if (path.startsWith("/calendar/")) {
                path = path.replaceFirst("/calendar/[^/]+", "/calendar/guessed");
            }
            int status = ask(stranger, path, method(info), kind(info), stranger.csrf("sign-in"), "guessed");
            boolean program = path.startsWith("/api/") || path.startsWith("/calendar/");
            if (status != (program ? 401 : 302)) {
                let.add(method(info) + " " + path + " " + status);
            }
        });
        assertEquals(List.of(), let);
    }

    private static int ask(Browser browser, String path, String method, String kind, String csrf, String token) {
        var request = browser.to(path);
        if (path.startsWith("/api/") || path.startsWith("/calendar/")) {
            request.header("Authorization", "Bearer " + token).header("Content-Type", kind);
        } else {
            request.header("Content-Type", "application/x-www-form-urlencoded").header("X-CSRF-TOKEN", csrf);
        }
        return browser.send(request.method(
                        method, method.equals("GET") ? BodyPublishers.noBody() : BodyPublishers.ofString(body(path))))
                .statusCode();
    }

    private static String kind(RequestMappingInfo info) {
        return info.getConsumesCondition().getConsumableMediaTypes().stream()
                .map(MediaType::toString)
                .findFirst()
                .orElse("application/json");
    }

    private static String body(String path) {
        return path.startsWith("/api/") ? "{}" : "";
    }

    @Test
    void aSurveyorWritesNothingOfTheYard() {
        Set<String> own = Set.of(
                "/settings/tokens", "/settings/tokens/{id}/withdraw", "/settings/password", "/settings/sessions/end");
        // These look and write nothing.
        Set<String> looks = Set.of("/api/boats/{id}/visits/change", "/api/boats/{id}/protection/diagnosis");
        List<String> writes = new ArrayList<>();
        everyHandler((info, method) -> {
            String pattern = Objects.requireNonNull(info.getPathPatternsCondition())
                    .getPatterns()
                    .iterator()
                    .next()
                    .getPatternString();
            if (!method(info).equals("GET")
                    && roles(method).contains("SURVEYOR")
                    && !own.contains(pattern)
                    && !looks.contains(pattern)) {
                writes.add(method(info) + " " + pattern);
            }
        });
        assertEquals(List.of(), writes, "a surveyor reads and inspects");
    }

    @Test
    void whatIsTheManagersIsTheManagersAlone() {
        Map<Role, Integer> people = new EnumMap<>(Role.class);
        for (Role role : Role.values()) {
            people.put(role, desk.as(role).get("settings/people").statusCode());
        }
        assertEquals(Map.of(Role.MANAGER, 200, Role.OFFICE, 403, Role.TECHNICIAN, 403, Role.SURVEYOR, 403), people);
    }

    @Test
    void nobodyWithdrawsATokenOfAnother() {
        String account =
                desk.part(Accounts.class).byName("office").orElseThrow().id();
        desk.part(ApiTokens.class).make(account, ApiTokens.Kind.PROGRAM, "the office's own");
        String id = desk.part(ApiTokens.class).of(account).get(0).id();
        Browser manager = desk.as(Role.MANAGER);
        HttpResponse<String> refused = manager.post("settings/tokens/" + id + "/withdraw", "settings/tokens", Map.of());
        assertEquals(404, refused.statusCode());
        assertTrue(desk.part(ApiTokens.class).of(account).stream().anyMatch(t -> t.id().equals(id)));
        assertFalse(manager.get("settings/tokens").body().contains("the office's own"));
    }

    @Test
    void aDocumentIsFoundUnderItsOwnBoatOnly() {
        List<String> boats =
                List.copyOf(desk.part(OpenYard.class).files().boats().keySet());
        Browser crew = desk.as(Role.TECHNICIAN);
        HttpResponse<String> kept = Upload.send(crew, boats.get(0), "survey.txt", "text/plain", "hull dry");
        assertEquals(303, kept.statusCode(), kept.body());
        String page = crew.get("boats/" + boats.get(0) + "/documents").body();
        String path = page.replaceFirst("(?s).*?href=\"(/boats/[^\"]+/documents/[^\"]+)\".*", "$1");
        assertEquals(200, crew.get(path).statusCode());
        assertEquals(404, crew.get(path.replace(boats.get(0), boats.get(1))).statusCode());
        assertEquals(302, new Browser(desk.address()).get(path).statusCode(), "a stranger is asked who it is");
    }

    @Test
    void aTokenMayNoLongerDoWhatItsPersonMayNot() {
        var account = desk.person("late", Role.OFFICE);
        String token = desk.part(ApiTokens.class).make(account.id(), ApiTokens.Kind.PROGRAM, "a test");
        Browser program = new Browser(desk.address());
        String file = "api/boats/" + desk.boat() + "/file";
        assertEquals(428, put(program, file, token));
        Accounts accounts = desk.part(Accounts.class);
        accounts.change(accounts.byId(account.id()).orElseThrow(), "Late", Role.SURVEYOR, false);
        assertEquals(403, put(program, file, token));
        accounts.change(accounts.byId(account.id()).orElseThrow(), "Late", Role.SURVEYOR, true);
        assertEquals(401, put(program, file, token));
    }

    private static int put(Browser program, String path, String token) {
        return program.send(program.to(path)
                        .header("Authorization", "Bearer " + token)
                        .header("Content-Type", "application/yaml")
                        .PUT(BodyPublishers.ofString("name: x")))
                .statusCode();
    }
}
