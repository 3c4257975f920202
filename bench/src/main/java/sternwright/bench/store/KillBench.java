package sternwright.bench.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;
import sternwright.app.store.Store;
import sternwright.app.store.StoreAddress;
import sternwright.app.store.Verification;

/** Kills a writing program again and again at random moments; every acknowledged write must be there and none half there. */
public final class KillBench {
    private static final int WRITES = 500;

    private KillBench() {}

    /** Arguments: how many kills, 50 if left out; after which the run goes on until 500 writes at least. */
    public static void main(String[] args) throws IOException, InterruptedException {
        if (args.length == 3 && args[0].equals("write")) {
            write(Path.of(args[1]), Integer.parseInt(args[2]));
            return;
        }
        int kills = args.length > 0 ? Integer.parseInt(args[0]) : 50;
        Path file = Files.createTempDirectory("store-kill").resolve("yard.db");
        Random random = new Random(20261001);
        int there = 0;
        int unanswered = 0;
        int kill = 0;
        while (kill < kills || there < WRITES) {
            int acknowledged = writeAndKill(file, there + 1, there + random.nextInt(2 * WRITES / kills + 1), random);
            int last = proved(file, acknowledged);
            unanswered += last - acknowledged;
            there = last;
            kill++;
        }
        System.out.println(kill + " kills, " + there + " writes: every acknowledged one is there, none half there; "
                + unanswered + " were done but not yet acknowledged when the kill came");
    }

    private static int proved(Path file, int acknowledged) throws IOException {
        try (Store store = Store.open(StoreAddress.file(file), Clock.systemUTC())) {
            Shelf shelf = store.shelf("");
            int last = Integer.parseInt(shelf.text("last.md").orElse("0"));
            List<String> lines = shelf.text("hours/tern.csv")
                    .orElse("number\n")
                    .lines()
                    .skip(1)
                    .toList();
            boolean whole =
                    lines.size() == last && (last == 0 || lines.get(last - 1).equals(Integer.toString(last)));
            if (!whole
                    || last < acknowledged
                    || last > acknowledged + 1
                    || !Verification.of(store).faults().isEmpty()) {
                throw new IllegalStateException("acknowledged " + acknowledged + ", there " + last + ", lines "
                        + lines.size() + ", faults " + Verification.of(store).faults());
            }
            return last;
        }
    }

    private static int writeAndKill(Path file, int from, int least, Random random)
            throws IOException, InterruptedException {
        Process writer = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        KillBench.class.getName(),
                        "write",
                        file.toString(),
                        Integer.toString(from))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        int last = from - 1;
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(writer.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                last = Integer.parseInt(line);
                if (last >= least && writer.isAlive()) {
                    TimeUnit.MICROSECONDS.sleep(random.nextInt(8000));
                    writer.toHandle().destroyForcibly();
                }
            }
        }
        writer.waitFor();
        return last;
    }

    private static void write(Path file, int from) throws IOException {
        try (Store store = Store.open(StoreAddress.file(file), Clock.systemUTC())) {
            Shelf shelf = store.shelf("writer");
            for (int i = from; ; i++) {
                try (Writing writing = shelf.write("number " + i)) {
                    writing.put("hours/tern.csv", shelf.text("hours/tern.csv").orElse("number\n") + i + "\n");
                    writing.put("last.md", Integer.toString(i));
                    writing.commit();
                }
                System.out.println(i);
                System.out.flush();
            }
        }
    }
}
