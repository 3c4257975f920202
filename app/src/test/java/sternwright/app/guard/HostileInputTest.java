package sternwright.app.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.core.MethodParameter;
import org.springframework.http.server.PathContainer;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.springframework.web.util.pattern.PathPattern;
import sternwright.app.account.Account;
import sternwright.app.account.Accounts;
import sternwright.app.account.ApiTokens;
import sternwright.app.account.OneTimeLinks;
import sternwright.app.account.Role;
import sternwright.app.demo.InventedFolder;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.serve.Serve;
import sternwright.app.serve.ServeAsk;
import sternwright.app.store.Store;
import sternwright.app.store.Verification;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Whatever is sent to any form, address or field of any page or of the interface for programs, the program makes no mistake, shows
 * nothing of its inside, runs nobody's script, and says what is wrong. Forms are found by walking through the pages, addresses and
 * their fields by asking the program itself, so that a new page is tried as soon as it is there.
 */
class HostileInputTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final String PASSWORD = "three lanterns on the slip";
    private static final int TRIES_A_FORM = Integer.getInteger("sternwright.hostile.tries", 4);
    private static final int TRIES_AN_ADDRESS = Integer.getInteger("sternwright.hostile.tries", 3);
    private static final long SEED = Long.getLong("sternwright.hostile.seed", 20261127);

    @TempDir
    static Path folder;

    @org.jspecify.annotations.Nullable
    private static Serve running;

    private final Hostile hostile = new Hostile(SEED);

    @BeforeAll
    static void start() throws Exception {
        Path yard = folder.resolve("yard");
        new InventedFolder(InventedFolder.Where.NORTH).write(yard, 5, TODAY, 1);
        running = Serve.start(new ServeAsk(yard, "127.0.0.1", 0, List.of(), false, TODAY.toString()), "");
        serve().part(Accounts.class).first("ada", "Ada Invented", PASSWORD);
    }

    @AfterAll
    static void end() {
        serve().close();
    }

    private static Serve serve() {
        return Objects.requireNonNull(running);
    }

    private static Browser manager() {
        Browser browser = new Browser(serve().address());
        assertEquals(302, browser.signIn("ada", PASSWORD).statusCode());
        return browser;
    }

    @Test
    void everyFormAndAddressStandsIt() throws Exception {
        Browser manager = manager();
        prepare(manager);
        Crawl crawl = new Crawl(manager);
        crawl.from("/");
        crawl.from("/settings/tokens");
        assertTrue(crawl.forms().size() > 12, "forms found: " + crawl.forms().size());
        Account other = serve().part(Accounts.class)
                .add("ben", "Ben Invented", Role.TECHNICIAN)
                .orElseThrow();
        crawl.from("/password/" + serve().part(OneTimeLinks.class).make(other.id()));

        Set<String> reached = new TreeSet<>();
        List<String> faults = new ArrayList<>();
        for (Crawl.FoundForm form : crawl.forms()) {
            for (int i = 0; i < TRIES_A_FORM; i++) {
                attempt(faults, () -> throwAt(manager, form));
            }
            reached.add(form.method() + " " + form.action().replaceFirst("[?].*", ""));
        }
        addresses(manager, crawl, reached, faults);
        assertEquals(List.of(), faults.stream().distinct().toList(), faults.size() + " faults");
        assertEquals(List.of(), Verification.of(serve().part(Store.class)).faults());
        assertTrue(serve().part(OpenYard.class).files().boats().size() >= 5, "the yard can still be read");
        // So many wrong sign-ins may have closed the door for a while: that it is shown is enough.
        assertEquals(200, new Browser(serve().address()).get("/sign-in").statusCode());
    }

    /** A document, a card and an estimate with a link, so that their pages are there to be found. */
    private static void prepare(Browser manager) throws InterruptedException {
        String boat =
                serve().part(OpenYard.class).files().boats().keySet().iterator().next();
        HttpResponse<String> kept = Upload.send(manager, boat, "log book.txt", "text/plain", "what was read");
        assertEquals(303, kept.statusCode(), kept.body());
        for (String action : List.of("/cards", "/estimates")) {
            assertEquals(303, Crawl.sendOfVisits(manager, boat, action).statusCode(), action);
        }
    }

    private static void attempt(List<String> faults, Runnable try1) {
        try {
            try1.run();
        } catch (AssertionError fault) {
            faults.add(String.valueOf(fault.getMessage()));
        }
    }

    private void throwAt(Browser browser, Crawl.FoundForm form) {
        List<Map.Entry<String, String>> fields = new ArrayList<>();
        boolean all = hostile.chance(0.2);
        for (Map.Entry<String, String> f : form.fields()) {
            if (hostile.chance(0.08)) {
                continue;
            }
            boolean bad = all || hostile.chance(0.3);
            fields.add(Map.entry(f.getKey(), bad ? hostile.word() : own(form, f)));
            if (hostile.chance(0.05)) {
                fields.add(Map.entry(f.getKey(), hostile.word()));
            }
        }
        if (hostile.chance(0.2)) {
            fields.add(Map.entry(hostile.short100(), hostile.word()));
        }
        String said = form.method() + " " + form.action() + " " + cut(fields.toString());
        if (form.method().equals("get")) {
            String bare = form.action().replaceFirst("[?].*", "");
            Sound.check(said, browser.get(bare + "?" + fitting(fields)));
        } else if (form.multipart()) {
            Sound.check(said, Upload.fields(browser, form, fields));
        } else {
            Sound.check(said, browser.postWith(form.action(), browser.csrf("/settings/tokens"), fields));
        }
    }

    private String own(Crawl.FoundForm form, Map.Entry<String, String> field) {
        List<String> offered = form.choices().getOrDefault(field.getKey(), List.of());
        return offered.isEmpty() ? field.getValue() : hostile.one(offered);
    }

    /** The web server takes 16 kB of address. */
    private static String fitting(List<Map.Entry<String, String>> fields) {
        return Browser.encoded(fields.stream()
                .map(f -> Map.entry(cut(f.getKey()), cut(f.getValue())))
                .toList());
    }

    private static String cut(String text) {
        return text.length() <= 400 ? text : text.substring(0, 400);
    }

    /** Every address the program answers, with hostile names in it and hostile questions. */
    private void addresses(Browser browser, Crawl crawl, Set<String> reached, List<String> faults) {
        serve().part(RequestMappingHandlerMapping.class).getHandlerMethods().forEach((info, method) -> {
            if (!method.getBeanType().getPackageName().startsWith("sternwright.app.web")) {
                return;
            }
            for (PathPattern pattern :
                    Objects.requireNonNull(info.getPathPatternsCondition()).getPatterns()) {
                for (int i = 0; i < TRIES_AN_ADDRESS; i++) {
                    attempt(faults, () -> throwAt(browser, crawl, info, method, pattern));
                }
            }
        });
    }

    private void throwAt(
            Browser browser, Crawl crawl, RequestMappingInfo info, HandlerMethod method, PathPattern pattern) {
        if (pattern.getPatternString().equals("/error")) {
            return;
        }
        List<String> known = crawl.pages().stream()
                .map(p -> p.replaceFirst("[?].*", ""))
                .filter(p -> pattern.matches(PathContainer.parsePath(p)))
                .toList();
        String path = known.isEmpty() || hostile.chance(0.5) ? invented(pattern, crawl) : hostile.one(known);
        List<Map.Entry<String, String>> fields = new ArrayList<>();
        for (String name : fields(method)) {
            if (hostile.chance(0.8)) {
                fields.add(Map.entry(name, hostile.word()));
            }
        }
        String said = info.getMethodsCondition().getMethods() + " " + path + " " + cut(fields.toString());
        if (info.getMethodsCondition().getMethods().contains(RequestMethod.POST)) {
            Sound.check(said, browser.postWith(path, browser.csrf("/settings/tokens"), fields));
        } else {
            Sound.check(said, browser.get(path + "?" + fitting(fields)));
        }
    }

    /** The pattern with names of the yard in it, or with hostile ones. */
    private String invented(PathPattern pattern, Crawl crawl) {
        String path = pattern.getPatternString();
        String boat =
                serve().part(OpenYard.class).files().boats().keySet().iterator().next();
        while (path.contains("{")) {
            String name = hostile.chance(0.4) ? boat : hostile.short100();
            String safe = URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
            path = path.replaceFirst(
                    "\\{[^}]+\\}", java.util.regex.Matcher.quoteReplacement(safe.isEmpty() ? "%20" : safe));
        }
        return path;
    }

    private static List<String> fields(HandlerMethod method) {
        List<String> names = new ArrayList<>(List.of("page", "sort"));
        for (MethodParameter p : method.getMethodParameters()) {
            RequestParam asked = p.getParameterAnnotation(RequestParam.class);
            if (asked != null) {
                names.add(asked.name());
            }
            if (p.hasParameterAnnotation(ModelAttribute.class)
                    && p.getParameterType().isRecord()) {
                Arrays.stream(p.getParameterType().getRecordComponents()).forEach(c -> names.add(c.getName()));
            }
        }
        names.removeIf(String::isEmpty);
        return names;
    }

    @Test
    void everyAddressForProgramsStandsIt() {
        String token = serve().part(ApiTokens.class)
                .make(serve().part(Accounts.class).byName("ada").orElseThrow().id(), ApiTokens.Kind.PROGRAM, "a test");
        Browser program = new Browser(serve().address());
        JsonNode described = JsonMapper.shared()
                .readTree(program.send(program.to("api/openapi").header("Authorization", "Bearer " + token))
                        .body());
        List<String> faults = new ArrayList<>();
        described
                .get("paths")
                .properties()
                .forEach(path -> path.getValue().properties().forEach(deed -> {
                    for (int i = 0; i < 2 * TRIES_AN_ADDRESS; i++) {
                        attempt(
                                faults,
                                () -> throwAt(
                                        program, token, described, path.getKey(), deed.getKey(), deed.getValue()));
                    }
                }));
        assertEquals(List.of(), faults.stream().distinct().toList(), faults.size() + " faults");
    }

    private void throwAt(Browser program, String token, JsonNode described, String path, String method, JsonNode deed) {
        String boat =
                serve().part(OpenYard.class).files().boats().keySet().iterator().next();
        String address = path;
        while (address.contains("{")) {
            String name = hostile.chance(0.6) ? boat : hostile.short100();
            String safe = URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
            address = address.replaceFirst(
                    "\\{[^}]+\\}", java.util.regex.Matcher.quoteReplacement(safe.isEmpty() ? "%20" : safe));
        }
        List<Map.Entry<String, String>> asks = new ArrayList<>();
        deed.path("parameters").forEach(p -> {
            if (p.path("in").asString("").equals("query") && hostile.chance(0.5)) {
                asks.add(Map.entry(p.get("name").asString(), hostile.word()));
            }
        });
        var request = program.to(address + (asks.isEmpty() ? "" : "?" + fitting(asks)))
                .header("Authorization", "Bearer " + token);
        String body = deed.has("requestBody") ? body(described, deed) : "";
        if (method.equals("get")) {
            request.GET();
        } else {
            if (hostile.chance(0.5)) {
                request.header(
                        "If-Match",
                        hostile.one(List.of("\"1\"", "*", "W/\"x\"", "x", "\"\"", "\"" + "9".repeat(99) + "\"")));
            }
            String type = deed.path("requestBody").path("content").propertyNames().stream()
                    .findFirst()
                    .orElse("application/json");
            request.header("Content-Type", hostile.chance(0.9) ? type : "text/plain")
                    .method(method.toUpperCase(java.util.Locale.ROOT), BodyPublishers.ofString(body));
        }
        HttpResponse<String> answer = program.send(request);
        String said = method + " " + address + " " + cut(asks.toString()) + " " + cut(body);
        Sound.check(said, answer);
        String kind = answer.headers().firstValue("Content-Type").orElse("");
        // What is no address at all the connector refuses before the program sees it.
        boolean noAddress = answer.statusCode() == 400 && kind.equals("text/html;charset=utf-8");
        if (answer.statusCode() >= 400 && !noAddress && !answer.body().isEmpty()) {
            assertTrue(
                    kind.startsWith("application/problem+json"),
                    said + " was refused as " + kind + " " + answer.statusCode());
            assertTrue(answer.body().contains("\"detail\""), said + " was refused without words");
        }
    }

    private String body(JsonNode described, JsonNode deed) {
        if (hostile.chance(0.1)) {
            return hostile.word();
        }
        String ref =
                deed.at("/requestBody/content/application~1json/schema/$ref").asString("");
        JsonNode schema = described.at(ref.replaceFirst("^#", ""));
        List<String> parts = new ArrayList<>();
        schema.path("properties").propertyNames().forEach(name -> {
            if (hostile.chance(0.8)) {
                parts.add(JsonMapper.shared().writeValueAsString(name) + ":" + json(0));
            }
        });
        if (hostile.chance(0.1)) {
            parts.add("\"unknown\":1");
        }
        return "{" + String.join(",", parts) + "}";
    }

    private String json(int deep) {
        return switch (hostile.below(deep > 2 ? 6 : 8)) {
            case 0 -> "null";
            case 1 -> "true";
            case 2 -> hostile.one(List.of("0", "-1", "1.5", "1e308", "-1e308", "12345678901234567890", "1e-300"));
            case 3, 4, 5 ->
                JsonMapper.shared().writeValueAsString(hostile.word().replace("\ud800", ""));
            case 6 -> "[" + json(deep + 1) + "," + json(deep + 1) + "]";
            default -> "{\"a\":" + json(deep + 1) + "}";
        };
    }
}
