package sternwright.bench.serve;

import java.io.IOException;
import java.net.HttpURLConnection;
import java.net.ServerSocket;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import sternwright.app.demo.InventedFolder;

/**
 * The pages of a yard of many boats, as one process on one processor: start, memory at rest, the first due list, and every page at
 * 50 requests a second. The peer is the page that says only that the program is up: what the framework alone costs.
 */
public final class ServeBench {
    private static final String TODAY = "2026-11-27";
    /** Seconds of quiet in which the program gives back what something large has taken. */
    static final int REST_S = 15;

    private static final int LARGE_MS = 2_000;
    private static final int MOST_LATER = 60;
    private static final double P99 = 0.99;
    private static final double GOAL_MS = 150;
    private static final int EXPORT_BYTES = 1_000_000;
    private static final int WARM = 20;
    private static final double SECONDS_TO_WARM = 4;

    private ServeBench() {}

    /**
     * Arguments, each {@code name=value}: boats (3000), rate (50 requests a second), seconds (4 a page), yard (a folder that is kept
     * and used again), pages (what their addresses begin with, divided by commas), season (yes: one is planned and published first).
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        Asked asked = Asked.of(args);
        Path home = Path.of(System.getProperty("sternwright.home", ".")).toAbsolutePath();
        Path kept = asked.yard();
        Path root = kept == null ? Files.createTempDirectory("serve-bench") : Files.createDirectories(kept);
        Path yard = root.resolve("yard");
        if (!Files.exists(yard)) {
            takeIn(home, yard, asked.boats());
        }
        String token;
        try (Desk before = Desk.signedIn(home, yard, freePort(), TODAY)) {
            token = before.token();
        }
        if (asked.pages().isEmpty()) {
            try (Desk hasty = Desk.start(home, yard, freePort(), TODAY, token)) {
                say(
                        "due list asked by a program the moment the pages are open (%.2f s): %.2f s",
                        hasty.startS(), seconds(hasty, "/api/due"));
            }
        }
        try (Desk desk = Desk.start(home, yard, freePort(), TODAY)) {
            say("start to first page: %.2f s", desk.startS());
            desk.signIn();
            say("due list of the yard, first request after start and signing in: %.0f ms", 1e3 * seconds(desk, "/due"));
            if (asked.pages().isEmpty()) {
                say("due list worked out anew after a figure of the programme changed: %.0f ms", 1e3 * anew(desk));
            }
            if (asked.pages().isEmpty()) {
                TimeUnit.SECONDS.sleep(REST_S);
                say("resident at rest, yard and due list read: %.0f MiB", desk.residentMib());
            }
            pages(desk, asked);
            TimeUnit.SECONDS.sleep(REST_S);
            say("resident at rest after all pages: %.0f MiB", desk.residentMib());
        }
    }

    private static void takeIn(Path home, Path yard, int boats) throws IOException, InterruptedException {
        Files.createDirectories(yard);
        new InventedFolder(InventedFolder.Where.NORTH).write(yard, boats, LocalDate.parse(TODAY), 1);
        try (Desk taking = Desk.signedIn(home, yard, freePort(), TODAY)) {
            say("first start, %d boats taken in: %.1f s to the first page", boats, taking.startS());
            seconds(taking, "/due");
        }
    }

    private static void pages(Desk desk, Asked asked) throws IOException, InterruptedException {
        Visitor visitor = Visitor.of(desk, asked.boats(), asked.season());
        say(
                "%-60s %6s %7s %9s %8s %8s %8s  (%d requests a second)",
                "page", "status", "kB", "first ms", "median", "p99", "worst", asked.rate());
        for (Visitor.Address address : visitor.addresses(Routes.all())) {
            String path = address.path();
            if (path.isEmpty() ? asked.pages().isEmpty() : asked.wants(path)) {
                say(
                        "%-60s %s",
                        shown(address), path.isEmpty() ? "not asked: " + address.why() : line(desk, path, asked));
            }
        }
    }

    /** No secret of an address stands in a list that somebody keeps. */
    private static String shown(Visitor.Address address) {
        return address.path().isEmpty()
                        || address.pattern().contains("{secret}")
                        || address.pattern().contains("{token}")
                ? address.pattern()
                : address.path();
    }

    private static String line(Desk desk, String path, Asked asked) throws IOException, InterruptedException {
        try {
            long began = System.nanoTime();
            HttpResponse<byte[]> once = answered(desk, path);
            double first = (System.nanoTime() - began) / 1e6;
            String head = figures("%6d %7.1f %9.0f ", once.statusCode(), once.body().length / 1000.0, first);
            if (once.statusCode() != 200) {
                return head + " NOT the page: "
                        + once.headers().firstValue("location").orElse("");
            }
            return head + again(desk, path, asked, first, once.body().length);
        } catch (java.net.http.HttpTimeoutException late) {
            return "no answer within a minute";
        }
    }

    /** Told to come back later, or sent to the page that tells when, it comes back. */
    private static HttpResponse<byte[]> answered(Desk desk, String path) throws IOException, InterruptedException {
        HttpResponse<byte[]> once = desk.plain(path);
        for (int again = 0; again < MOST_LATER && later(path, once); again++) {
            TimeUnit.SECONDS.sleep(
                    Long.parseLong(once.headers().firstValue("Retry-After").orElse("3")));
            once = desk.plain(path);
        }
        return once;
    }

    private static boolean later(String path, HttpResponse<byte[]> answer) {
        return answer.statusCode() == HttpURLConnection.HTTP_UNAVAILABLE
                || answer.headers()
                        .firstValue("location")
                        .filter(to -> path.startsWith(to + "/"))
                        .isPresent();
    }

    /** A page is asked at a steady rate; what somebody takes away once, or waits for, is asked for alone and leaves a rest behind. */
    private static String again(Desk desk, String path, Asked asked, double firstMs, int bytes)
            throws IOException, InterruptedException {
        double last = alone(desk, path);
        boolean export = bytes > EXPORT_BYTES;
        boolean large = export || last > LARGE_MS;
        if (large || firstMs > LARGE_MS) {
            TimeUnit.SECONDS.sleep(REST_S);
        }
        return large
                ? figures("   alone %.0f ms: not asked at this rate%s", last, export ? ", for it is to take away" : "")
                : steady(desk, path, asked);
    }

    private static double alone(Desk desk, String path) throws IOException, InterruptedException {
        double last = 0;
        long end = System.nanoTime() + Math.round(SECONDS_TO_WARM * 1e9);
        for (int asks = 0; asks < WARM && (asks < 2 || System.nanoTime() < end); asks++) {
            long began = System.nanoTime();
            desk.plain(path);
            last = (System.nanoTime() - began) / 1e6;
        }
        return last;
    }

    /** What is above the goal is measured once more, and both are shown: a shared machine stands still now and then. */
    private static String steady(Desk desk, String path, Asked asked) throws InterruptedException {
        Steady once = Steady.of(desk, path, asked.rate(), asked.rate() * asked.seconds());
        if (once.share(P99) <= GOAL_MS) {
            return told(once);
        }
        TimeUnit.SECONDS.sleep(REST_S);
        return told(once) + "  once more" + told(Steady.of(desk, path, asked.rate(), asked.rate() * asked.seconds()));
    }

    private static String told(Steady steady) {
        return figures("%8.1f %8.1f %8.1f", steady.share(0.5), steady.share(P99), steady.share(1))
                + (steady.notAnswered().isEmpty() ? "" : "  NOT all answered: " + steady.notAnswered());
    }

    /** Changes for all boats after how many hours their oil is due; another figure each time. */
    private static double anew(Desk desk) throws IOException, InterruptedException {
        String figures = "/settings/programmes/change-engine-oil/figures";
        String hours = Long.toString(150 + Math.floorMod(System.nanoTime() / 1_000_000, 100));
        HttpResponse<String> kept = desk.submit(
                desk.get(figures),
                figures,
                figures,
                Map.of("hours", hours, "sourceTitle", "the bench", "standing", "YARD"));
        if (kept.statusCode() != 200 || kept.uri().getPath().equals(figures)) {
            throw new IOException("the figure was not kept: " + kept.uri() + ", status " + kept.statusCode());
        }
        return seconds(desk, "/due");
    }

    private static double seconds(Desk desk, String path) throws IOException, InterruptedException {
        long began = System.nanoTime();
        int status = desk.get(path).statusCode();
        if (status != 200) {
            throw new IOException(path + " answered with status " + status);
        }
        return (System.nanoTime() - began) / 1e9;
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    private static String figures(String text, Object... figures) {
        return String.format(Locale.ROOT, text, figures);
    }

    static void say(String text, Object... figures) {
        System.out.println(figures(text, figures));
    }
}
