package sternwright.bench.serve;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import sternwright.app.demo.InventedFolder;

/**
 * The pages of a yard of many boats, as one process on one processor: start, memory at rest, the first due list, and every page at
 * 50 requests a second. The peer is the page that says only that the program is up: what the framework alone costs.
 */
public final class ServeBench {
    private static final String TODAY = "2026-11-27";
    private static final int REST_S = 10;
    private static final String PEER = "/health";

    private ServeBench() {}

    /** Arguments: boats, requests a second, seconds a page; 3000, 50 and 4 if left out. */
    public static void main(String[] args) throws IOException, InterruptedException {
        int boats = args.length > 0 ? Integer.parseInt(args[0]) : 3000;
        int rate = args.length > 1 ? Integer.parseInt(args[1]) : 50;
        int seconds = args.length > 2 ? Integer.parseInt(args[2]) : 4;
        Path home = Path.of(System.getProperty("sternwright.home", ".")).toAbsolutePath();
        Path root = Files.createTempDirectory("serve-bench");
        Path yard = Files.createDirectories(root.resolve("yard"));
        new InventedFolder(InventedFolder.Where.NORTH).write(yard, boats, LocalDate.parse(TODAY), 1);
        try (Desk taking = Desk.signedIn(home, yard, freePort(), TODAY)) {
            say("first start, %d boats taken in: %.1f s to the first page", boats, taking.startS());
            seconds(taking, "/due");
        }
        try (Desk desk = Desk.start(home, yard, freePort(), TODAY)) {
            say("start to first page: %.2f s", desk.startS());
            desk.signIn();
            say("due list of the yard, first request after start and signing in: %.0f ms", 1e3 * seconds(desk, "/due"));
            TimeUnit.SECONDS.sleep(REST_S);
            say("resident at rest, yard and due list read: %.0f MiB", desk.residentMib());
            pages(desk, rate, seconds);
            TimeUnit.SECONDS.sleep(REST_S);
            say("resident at rest after all pages: %.0f MiB", desk.residentMib());
        }
    }

    private static void pages(Desk desk, int rate, int seconds) throws IOException, InterruptedException {
        String boat = boat(desk);
        List<String> paths = new ArrayList<>(List.of(PEER, "/", "/boats", "/boats?find=a&page=3"));
        paths.addAll(List.of("/boats/" + boat, "/boats/" + boat + "/history", "/boats/" + boat + "/hours"));
        paths.addAll(List.of("/due", "/due?page=40", "/due?sort=boat", "/due?state=all", "/due/campaign"));
        paths.addAll(List.of("/visits", "/visits/" + boat, "/protection", "/protection/" + boat));
        paths.addAll(List.of("/cards", "/estimates", "/register", "/record", "/tables", "/season", "/settings"));
        paths.addAll(List.of("/settings/people", "/settings/audit", "/api/boats", "/api/due", "/api/boats/" + boat));
        say("%-34s %6s %8s %8s %8s", rate + " requests a second", "status", "median", "p99", "worst");
        for (String path : paths) {
            HttpResponse<String> once = desk.get(path);
            if (once.statusCode() == 404) {
                say("%-34s %6d  not there", path, once.statusCode());
                continue;
            }
            double[] ms = steady(desk, path, rate, rate * seconds);
            say(
                    "%-34s %6d %8.1f %8.1f %8.1f",
                    path,
                    once.statusCode(),
                    ms[ms.length / 2],
                    ms[(int) Math.ceil(0.99 * ms.length) - 1],
                    ms[ms.length - 1]);
        }
    }

    /** Milliseconds of each answer from when it should have been asked for, in rising order. */
    private static double[] steady(Desk desk, String path, int rate, int count) {
        double[] ms = new double[count];
        AtomicInteger failed = new AtomicInteger();
        List<CompletableFuture<Void>> all = new ArrayList<>();
        long began = System.nanoTime() + 10_000_000;
        for (int i = 0; i < count; i++) {
            int n = i;
            long at = began + TimeUnit.SECONDS.toNanos(1) * i / rate;
            while (System.nanoTime() < at) {
                LockSupport.parkNanos(at - System.nanoTime());
            }
            all.add(desk.ask(path).handle((answer, trouble) -> {
                ms[n] = (System.nanoTime() - at) / 1e6;
                if (trouble != null || answer.statusCode() >= 500) {
                    failed.incrementAndGet();
                }
                return null;
            }));
        }
        all.forEach(CompletableFuture::join);
        if (failed.get() > 0) {
            say("%-34s %d of %d not answered", path, failed.get(), count);
        }
        Arrays.sort(ms);
        return ms;
    }

    private static String boat(Desk desk) throws IOException, InterruptedException {
        var found = java.util.regex.Pattern.compile("href=\"/boats/([a-z0-9-]+)\"")
                .matcher(desk.get("/boats?page=2").body());
        while (found.find()) {
            if (!found.group(1).equals("new")) {
                return found.group(1);
            }
        }
        throw new IOException("the list of boats shows no boat");
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

    private static void say(String text, Object... figures) {
        System.out.println(String.format(Locale.ROOT, text, figures));
    }
}
