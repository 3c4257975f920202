package sternwright.app.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.UncheckedIOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import sternwright.app.account.Accounts;
import sternwright.app.demo.InventedFolder;
import sternwright.app.desk.keeping.YardPlace;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.files.shelf.Writing;
import sternwright.app.serve.Serve;
import sternwright.app.serve.ServeAsk;
import sternwright.app.store.RunningPostgres;
import sternwright.app.store.Store;
import sternwright.app.store.StoreAddress;
import sternwright.app.store.Verification;
import tools.jackson.databind.json.JsonMapper;

/** The pages on SQLite and on PostgreSQL, on one node and on two, killed and raced; runs of the season: {@code SeasonJobsTest}. */
class NodesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 9, 15);
    private static final String PASSWORD = "three lanterns on the slip";
    private static final int KILLS = Integer.getInteger("sternwright.serve.kills", 1);
    private static final int WRITES = Integer.getInteger("sternwright.serve.writes", 60);

    @TempDir
    Path folder;

    private Path yard(String name, int boats) throws Exception {
        Path yard = folder.resolve(name);
        new InventedFolder(InventedFolder.Where.NORTH).write(yard, boats, TODAY, 3);
        return yard;
    }

    private static Map<String, String> owner(String name) {
        return Map.of("fullName", "Owner " + name, "name", name, "password", PASSWORD, "again", PASSWORD);
    }

    /** Two send the owner's account at once, each at its address; one makes it, the other is told. Says who made it. */
    private static String race(String left, String right) throws Exception {
        Browser one = new Browser(left);
        Browser other = new Browser(right);
        String oneCsrf = one.csrf("first-start");
        String otherCsrf = other.csrf("first-start");
        List<HttpResponse<String>> answers = together(
                () -> one.postWith(
                        "first-start", oneCsrf, List.copyOf(owner("left").entrySet())),
                () -> other.postWith(
                        "first-start", otherCsrf, List.copyOf(owner("right").entrySet())));
        List<Integer> statuses = answers.stream().map(HttpResponse::statusCode).toList();
        assertEquals(List.of(303, 409), statuses.stream().sorted().toList());
        String late = answers.get(statuses.indexOf(409)).body();
        assertTrue(late.contains("Somebody else was quicker"), late);
        return statuses.get(0) == 303 ? "left" : "right";
    }

    /** Again and again, without the pages between. */
    private static void hammer(DataSource database) throws Exception {
        JdbcClient jdbc = JdbcClient.create(database);
        for (int round = 0; round < 15; round++) {
            jdbc.sql("delete from account").update();
            List<Boolean> made = together(() -> fresh(database, "ada"), () -> fresh(database, "ben"));
            assertEquals(1, made.stream().filter(m -> m).count(), "round " + round);
            assertEquals(
                    1L,
                    jdbc.sql("select count(*) from account").query(Long.class).single(),
                    "round " + round);
        }
        jdbc.sql("delete from account").update();
    }

    private static boolean fresh(DataSource database, String name) {
        Accounts accounts = new Accounts(
                JdbcClient.create(database),
                new Argon2PasswordEncoder(16, 32, 1, 64, 1),
                Clock.systemUTC(),
                new JdbcTransactionManager(database));
        return accounts.first(name, name, PASSWORD).isPresent();
    }

    private static <T> List<T> together(Callable<T> one, Callable<T> other) throws Exception {
        CyclicBarrier start = new CyclicBarrier(2);
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            List<Callable<T>> both = new ArrayList<>();
            for (Callable<T> each : List.of(one, other)) {
                both.add(() -> {
                    start.await();
                    return each.call();
                });
            }
            List<T> came = new ArrayList<>();
            for (var future : two.invokeAll(both)) {
                came.add(future.get());
            }
            return came;
        } finally {
            two.shutdownNow();
        }
    }

    private static String token(Browser manager) {
        HttpResponse<String> made =
                manager.post("settings/tokens", "settings/tokens", Map.of("name", "a test", "kind", "PROGRAM"));
        Matcher m = Pattern.compile("<code class=\"secret\">([A-Za-z0-9_-]{20,})</code>")
                .matcher(made.body());
        assertTrue(m.find(), made.body());
        return m.group(1);
    }

    private record Engine(String boat, String installation, int hours) {}

    private static Engine engine(Browser program, String token) {
        String boat =
                json(program, token, "api/boats?size=1").at("/items/0/boat-id").asString();
        String installation = json(program, token, "api/boats/" + boat)
                .at("/installations/0/id")
                .asString();
        return new Engine(boat, installation, 9000);
    }

    private static tools.jackson.databind.JsonNode json(Browser program, String token, String path) {
        HttpResponse<String> answer = program.send(program.to(path).header("Authorization", "Bearer " + token));
        assertEquals(200, answer.statusCode(), answer.body());
        return JsonMapper.shared().readTree(answer.body());
    }

    private static int write(Browser program, String token, Engine engine, int number) {
        String body = "{\"installation\":\"%s\",\"hours\":%d,\"as-read\":true}"
                .formatted(engine.installation(), engine.hours() + number);
        return program.send(program.to("api/boats/" + engine.boat() + "/hours")
                        .header("Authorization", "Bearer " + token)
                        .header("Content-Type", "application/json")
                        .POST(BodyPublishers.ofString(body)))
                .statusCode();
    }

    private static List<Integer> written(Browser program, String token, Engine engine) {
        List<Integer> numbers = new ArrayList<>();
        json(program, token, "api/boats/" + engine.boat() + "/history")
                .findValues("hours")
                .forEach(h -> {
                    int number = (int) Math.round(h.asDouble(0)) - engine.hours();
                    if (number > 0) {
                        numbers.add(number);
                    }
                });
        return numbers.stream().distinct().sorted().toList();
    }

    @Test
    void whatThePagesAcknowledgedIsThereAfterAKill() throws Exception {
        Path yard = yard("yard", 3);
        String token = "";
        int acknowledged = 0;
        for (int kill = 0; kill <= KILLS; kill++) {
            try (Node node = Node.on(yard, TODAY.toString())) {
                Browser program = new Browser(node.address());
                if (kill == 0) {
                    assertEquals(
                            303,
                            program.post("first-start", "first-start", owner("ada"))
                                    .statusCode());
                    assertEquals(302, program.signIn("ada", PASSWORD).statusCode());
                    token = token(program);
                }
                Engine engine = engine(program, token);
                List<Integer> there = written(program, token, engine);
                int most = acknowledged;
                assertTrue(
                        there.size() == most || there.size() == most + 1, "acknowledged " + most + ", there " + there);
                for (int i = 0; i < there.size(); i++) {
                    assertEquals(i + 1, there.get(i));
                }
                acknowledged = there.size();
                if (kill < KILLS) {
                    acknowledged = writeUntilKilled(node, program, token, engine, acknowledged, WRITES);
                }
            }
        }
        assertTrue(acknowledged > 5, "acknowledged " + acknowledged);
        try (YardPlace place = YardPlace.of(yard, Map.of(), Clock.systemUTC())) {
            assertEquals(List.of(), Verification.of(place.store().orElseThrow()).faults());
        }
    }

    private static int writeUntilKilled(Node node, Browser program, String token, Engine engine, int before, int writes)
            throws Exception {
        Random random = new Random(before);
        int enough = before + writes / 2 + random.nextInt(Math.max(1, writes / 2));
        AtomicInteger last = new AtomicInteger(before);
        Thread killer = new Thread(() -> {
            try {
                while (last.get() < enough) {
                    TimeUnit.MILLISECONDS.sleep(1);
                }
                TimeUnit.MICROSECONDS.sleep(random.nextInt(8000));
                node.kill();
            } catch (InterruptedException e) {
                return;
            }
        });
        killer.start();
        try {
            while (write(program, token, engine, last.get() + 1) == 201) {
                last.incrementAndGet();
            }
        } catch (UncheckedIOException killed) {
            assertTrue(last.get() >= enough, "died by itself: " + killed);
        }
        killer.join();
        return last.get();
    }

    @Test
    void twoNodesMakeOneOwnerAndShareSignInsAndWorkAndOneGoesOnWhenTheOtherIsKilled() throws Exception {
        StoreAddress database = RunningPostgres.fresh();
        Path one = yard("one", 3);
        Path two = Files.createDirectories(folder.resolve("two"));
        Node.keepIn(one, database);
        Node.keepIn(two, database);
        try (Node first = Node.on(one, TODAY.toString());
                Node second = Node.on(two, TODAY.toString())) {
            String owner = race(first.address(), second.address());
            Browser atFirst = new Browser(first.address());
            assertEquals(302, atFirst.signIn(owner, PASSWORD).statusCode());
            String session = atFirst.session();
            Browser atSecond = new Browser(second.address());
            assertEquals(200, with(atSecond, session, "boats"), "a session of one is a session of the other");
            String token = token(atFirst);
            Engine engine = engine(atSecond, token);
            assertEquals(201, write(atFirst, token, engine, 1));
            assertEquals(List.of(1), written(atSecond, token, engine), "what one wrote the other shows");

            int acknowledged = writeUntilKilled(first, atFirst, token, engine, 1, 12);
            int there = written(atSecond, token, engine).size();
            assertTrue(
                    there == acknowledged || there == acknowledged + 1, acknowledged + " acknowledged, there " + there);
            assertEquals(200, with(atSecond, session, "boats"), "nobody has to sign in again");
        }
    }

    /** Puts photos of a size in until one is refused. */
    private static HttpResponse<String> fill(Browser browser, String boat, int bytes) {
        byte[] photo = new byte[bytes];
        new Random(bytes).nextBytes(photo);
        photo[0] = (byte) 0xff;
        photo[1] = (byte) 0xd8;
        photo[2] = (byte) 0xff;
        HttpResponse<String> answer = Upload.send(browser, boat, "p.jpg", "image/jpeg", photo);
        for (int i = 0; i < 100 && answer.statusCode() == 303; i++) {
            photo[100] = (byte) i;
            answer = Upload.send(browser, boat, "p.jpg", "image/jpeg", photo);
        }
        return answer;
    }

    private static int with(Browser browser, String session, String path) {
        return browser.send(browser.to(path).header("Cookie", "sternwright=" + session))
                .statusCode();
    }

    @Test
    void onOneDiskOneOwnerIsMadeAndAFullDiskIsSaidInWordsAndTearsNothing() throws Exception {
        Path yard = yard("yard", 2);
        Path file = Files.createDirectories(yard.resolve(".desk")).resolve("yard.db");
        Node.keepIn(yard, new StoreAddress("jdbc:sqlite:" + file + "?max_page_count=1500", "", ""));
        Serve serve = Serve.start(new ServeAsk(yard, "127.0.0.1", 0, List.of(), false, TODAY.toString()), "");
        int kept = 0;
        try {
            hammer(serve.part(DataSource.class));
            String owner = race(serve.address(), serve.address());
            Browser ada = new Browser(serve.address());
            assertEquals(302, ada.signIn(owner, PASSWORD).statusCode());
            String boat = serve.part(OpenYard.class)
                    .files()
                    .boats()
                    .keySet()
                    .iterator()
                    .next();
            HttpResponse<String> answer = fill(ada, boat, 700_000);
            assertEquals(507, answer.statusCode(), answer.body());
            assertTrue(answer.body().contains("no room left"), answer.body());
            assertFalse(answer.body().contains(file.toString()), "where it lies is nobody's business");
            fill(ada, boat, 60_000);
            fill(ada, boat, 5_000);
            String token = token(ada);
            Engine engine = engine(ada, token);
            while (kept < 500 && write(ada, token, engine, kept + 1) == 201) {
                kept++;
            }
            assertTrue(kept < 500, "the disk never filled");
            HttpResponse<String> program = ada.send(ada.to("api/boats/" + boat + "/hours")
                    .header("Authorization", "Bearer " + token)
                    .header("Content-Type", "application/json")
                    .POST(BodyPublishers.ofString(
                            "{\"installation\":\"" + engine.installation() + "\",\"hours\":99000,\"as-read\":true}")));
            assertEquals(507, program.statusCode(), program.body());
            assertTrue(program.body().contains("no room left"), program.body());
            assertEquals(200, ada.get("boats").statusCode(), "reading goes on");
            assertEquals(kept, written(ada, token, engine).size(), "what was acknowledged is there, and no more");
        } finally {
            serve.close();
        }
        try (Store roomy = Store.open(StoreAddress.file(file), Clock.systemUTC())) {
            try (Writing writing = roomy.shelf("Ada").write("there is room again")) {
                writing.put("last.md", "written");
                writing.commit();
            }
            assertEquals(List.of(), Verification.of(roomy).faults());
        }
    }
}
