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
import java.util.ArrayList;
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
    private static final long LONGEST_START_S = 300;

    private final Process process;
    private final String address;
    private final HttpClient browser;
    private final double startS;

    private Desk(Process process, String address, HttpClient browser, double startS) {
        this.process = process;
        this.address = address;
        this.browser = browser;
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
        HttpClient browser = HttpClient.newBuilder()
                .version(HttpClient.Version.HTTP_1_1)
                .followRedirects(HttpClient.Redirect.NORMAL)
                .cookieHandler(new CookieManager())
                .build();
        String address = "http://127.0.0.1:" + port;
        long began = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(yard.resolveSibling("serve.log").toFile())
                .start();
        Desk desk = new Desk(process, address, browser, 0);
        while (!desk.answers()) {
            if (!process.isAlive() || (System.nanoTime() - began) / 1e9 > LONGEST_START_S) {
                throw new IOException("the pages did not open: "
                        + Files.readString(yard.resolveSibling("serve.log"), StandardCharsets.UTF_8));
            }
            Thread.sleep(5);
        }
        return new Desk(process, address, browser, (System.nanoTime() - began) / 1e9);
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
    }

    private void post(HttpResponse<String> form, String path, Map<String, String> typed)
            throws IOException, InterruptedException {
        Matcher secret = SECRET.matcher(form.body());
        String body = typed.entrySet().stream()
                        .map(e -> e.getKey() + "=" + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8))
                        .collect(Collectors.joining("&"))
                + (secret.find() ? "&_csrf=" + URLEncoder.encode(secret.group(1), StandardCharsets.UTF_8) : "");
        browser.send(
                HttpRequest.newBuilder(URI.create(address + path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofString());
    }

    /** A page. */
    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return browser.send(request(path), BodyHandlers.ofString());
    }

    /** A page that comes while others are asked for. */
    java.util.concurrent.CompletableFuture<HttpResponse<byte[]>> ask(String path) {
        return browser.sendAsync(request(path), BodyHandlers.ofByteArray());
    }

    private HttpRequest request(String path) {
        return HttpRequest.newBuilder(URI.create(address + path)).build();
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
