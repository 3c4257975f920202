package sternwright.bench.serve;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A yard's pages as one real process on one processor, and somebody who has signed in. */
final class Desk implements AutoCloseable {
    private static final String PASSWORD = "a long sentence nobody guesses 7";
    private static final Pattern SECRET = Pattern.compile("name=\"_csrf\" value=\"([^\"]*)\"");
    private static final Pattern HIDDEN = Pattern.compile("type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"");
    private static final long LONGEST_START_S = 300;
    private static final long LONGEST_ANSWER_S = 60;

    private final Process process;
    private final String address;
    private final HttpClient browser;
    private final HttpClient steadfast;
    private final double startS;
    private String token = "";

    private Desk(Process process, String address, HttpClient browser, HttpClient steadfast, double startS) {
        this.process = process;
        this.address = address;
        this.browser = browser;
        this.steadfast = steadfast;
        this.startS = startS;
    }

    /** Starts the launcher on the first processor and waits for the first page. */
    static Desk start(Path home, Path yard, int port, String today) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(pinned());
        command.addAll(List.of(
                home.resolve("sternwright").toString(),
                "--yard",
                yard.toString(),
                "--date",
                today,
                "serve",
                "--port",
                Integer.toString(port)));
        CookieManager cookies = new CookieManager();
        HttpClient browser = client(cookies, HttpClient.Redirect.NORMAL);
        HttpClient steadfast = client(cookies, HttpClient.Redirect.NEVER);
        String address = "http://127.0.0.1:" + port;
        long began = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(yard.resolveSibling("serve.log").toFile())
                .start();
        Desk desk = new Desk(process, address, browser, steadfast, 0);
        while (!desk.answers()) {
            if (!process.isAlive() || (System.nanoTime() - began) / 1e9 > LONGEST_START_S) {
                throw new IOException("the pages did not open: "
                        + Files.readString(yard.resolveSibling("serve.log"), StandardCharsets.UTF_8));
            }
            Thread.sleep(25);
        }
        return new Desk(process, address, browser, steadfast, (System.nanoTime() - began) / 1e9);
    }

    /** The same for a program that has a token already. */
    static Desk start(Path home, Path yard, int port, String today, String token)
            throws IOException, InterruptedException {
        Desk desk = start(home, yard, port, today);
        desk.token = token;
        return desk;
    }

    /** The token that signing in has made. */
    String token() {
        return token;
    }

    private static HttpClient client(CookieManager cookies, HttpClient.Redirect redirects) {
        return HttpClient.newBuilder()
                .version(HttpClient.Version.HTTP_1_1)
                .followRedirects(redirects)
                .cookieHandler(cookies)
                .build();
    }

    private static List<String> pinned() {
        return Files.isExecutable(Path.of("/usr/bin/taskset")) ? List.of("taskset", "-c", "0") : List.of();
    }

    private boolean answers() throws InterruptedException {
        try {
            return get("/").statusCode() == 200;
        } catch (IOException notYet) {
            return false;
        }
    }

    /** Seconds from the launcher to the first page. */
    double startS() {
        return startS;
    }

    /** Makes the owner's account at the first start, else signs in. */
    void signIn() throws IOException, InterruptedException {
        HttpResponse<String> first = get("/");
        if (first.uri().getPath().equals("/first-start")) {
            post(
                    first,
                    "/first-start",
                    Map.of("fullName", "Bench Owner", "name", "bench", "password", PASSWORD, "again", PASSWORD));
        }
        HttpResponse<String> form = get("/sign-in");
        if (SECRET.matcher(form.body()).find()) {
            post(form, "/sign-in", Map.of("username", "bench", "name", "bench", "password", PASSWORD));
        }
        HttpResponse<String> inside = get("/settings");
        if (inside.statusCode() != 200 || !inside.uri().getPath().equals("/settings")) {
            throw new IOException("signing in did not work: " + inside.uri() + ", status " + inside.statusCode());
        }
        token = secret("PROGRAM");
    }

    /** A token of its own, for other programs or for a calendar. */
    String secret(String kind) throws IOException, InterruptedException {
        HttpResponse<String> made =
                post(get("/settings/tokens"), "/settings/tokens", Map.of("name", "bench", "kind", kind));
        String secret = first(made.body(), "<code class=\"secret\">([^<]+)</code>");
        if (secret.isEmpty()) {
            throw new IOException("no token was made: " + made.uri() + ", status " + made.statusCode());
        }
        return secret;
    }

    /** Sends a form of a page with what stands in it. */
    HttpResponse<String> submit(HttpResponse<String> page, String form, String to, Map<String, String> typed)
            throws IOException, InterruptedException {
        Map<String, String> all = new LinkedHashMap<>();
        int at = page.body().indexOf("action=\"" + form + "\"");
        int end = at < 0 ? -1 : page.body().indexOf("</form>", at);
        if (end < 0) {
            return page;
        }
        Matcher hidden = HIDDEN.matcher(page.body().substring(at, end));
        while (hidden.find()) {
            all.put(hidden.group(1), hidden.group(2).replace("&amp;", "&").replace("&#34;", "\""));
        }
        all.putAll(typed);
        return post(page, to, all);
    }

    /** Keeps a note of a boat and tells its id; empty if it is refused. */
    String kept(String boat) throws IOException, InterruptedException {
        HttpRequest.Builder put =
                HttpRequest.newBuilder(URI.create(address + "/api/boats/" + boat + "/documents?name=note.txt"));
        HttpResponse<String> answer = steadfast.send(
                put.header("Authorization", "Bearer " + token)
                        .header("Content-Type", "application/octet-stream")
                        .POST(BodyPublishers.ofString("A note that is kept."))
                        .build(),
                BodyHandlers.ofString());
        return first(answer.body(), "\"id\":\"([^\"]+)\"");
    }

    /** What the first group of a pattern finds; empty if nothing. */
    static String first(String text, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        return found.find() ? found.group(1) : "";
    }

    private HttpResponse<String> post(HttpResponse<String> form, String path, Map<String, String> typed)
            throws IOException, InterruptedException {
        Matcher secret = SECRET.matcher(form.body());
        Map<String, String> sent = new LinkedHashMap<>(typed);
        if (secret.find()) {
            sent.put("_csrf", secret.group(1));
        }
        String body = sent.entrySet().stream()
                .map(e -> URLEncoder.encode(e.getKey(), StandardCharsets.UTF_8) + "="
                        + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return browser.send(
                HttpRequest.newBuilder(URI.create(address + path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofString());
    }

    /** A page. */
    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return browser.send(request(path, "identity"), BodyHandlers.ofString());
    }

    /** A page as it answers by itself: a redirect is an answer. */
    HttpResponse<byte[]> plain(String path) throws IOException, InterruptedException {
        return steadfast.send(request(path, "gzip"), BodyHandlers.ofByteArray());
    }

    /** A page that comes while others are asked for. */
    java.util.concurrent.CompletableFuture<HttpResponse<byte[]>> ask(String path) {
        return steadfast.sendAsync(request(path, "gzip"), BodyHandlers.ofByteArray());
    }

    private HttpRequest request(String path, String encoding) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address + path))
                .timeout(Duration.ofSeconds(LONGEST_ANSWER_S))
                .header("Accept-Encoding", encoding);
        return path.startsWith("/api/")
                ? request.header("Authorization", "Bearer " + token).build()
                : request.header("Accept-Language", "en-GB").build();
    }

    /** Resident memory of the process, MiB; NaN where the machine does not tell. */
    double residentMib() throws IOException {
        Path status = Path.of("/proc/" + process.pid() + "/status");
        if (!Files.exists(status)) {
            return Double.NaN;
        }
        return Files.readAllLines(status).stream()
                .filter(l -> l.startsWith("VmRSS:"))
                .mapToDouble(l -> Double.parseDouble(l.replaceAll("[^0-9]", "")) / 1024)
                .findFirst()
                .orElse(Double.NaN);
    }

    @Override
    public void close() throws InterruptedException {
        process.destroy();
        if (!process.waitFor(20, TimeUnit.SECONDS)) {
            process.destroyForcibly().waitFor();
        }
    }

    static Desk signedIn(Path home, Path yard, int port, String today) throws IOException, InterruptedException {
        Desk desk = start(home, yard, port, today);
        desk.signIn();
        return desk;
    }
}
