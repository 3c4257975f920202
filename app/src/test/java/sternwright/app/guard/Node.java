package sternwright.app.guard;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sternwright.app.store.StoreAddress;

/** The program with its pages in a process of its own, as it runs in a yard; it can be killed. */
final class Node implements AutoCloseable {
    private static final Pattern OPEN = Pattern.compile("are open at (http\\S+)");

    private final Process process;
    private final String address;

    private Node(Process process, String address) {
        this.process = process;
        this.address = address;
    }

    /** Starts it on a folder and waits until its pages are open. */
    static Node on(Path yard, String today) throws IOException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "sternwright.app.Main",
                        "--yard",
                        yard.toString(),
                        "--date",
                        today,
                        "serve",
                        "--port",
                        "0")
                .redirectErrorStream(true)
                .start();
        StringBuilder said = new StringBuilder();
        BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        String line = out.readLine();
        while (line != null) {
            said.append(line).append('\n');
            Matcher m = OPEN.matcher(line);
            if (m.find()) {
                drain(out);
                return new Node(process, m.group(1));
            }
            line = out.readLine();
        }
        throw new IllegalStateException("the pages did not open: " + said);
    }

    private static void drain(BufferedReader out) {
        Thread reader = new Thread(() -> out.lines().forEach(l -> {}), "node");
        reader.setDaemon(true);
        reader.start();
    }

    String address() {
        return address;
    }

    /** As {@code kill -9} does. */
    void kill() throws InterruptedException {
        process.toHandle().destroyForcibly();
        process.waitFor();
    }

    /** Names the database in which a yard's folder keeps everything. */
    static void keepIn(Path yard, StoreAddress database) throws IOException {
        Path own = java.nio.file.Files.createDirectories(yard.resolve(".desk"));
        java.nio.file.Files.write(
                own.resolve("database.properties"),
                List.of("url=" + database.url(), "user=" + database.user(), "password=" + database.password()));
    }

    @Override
    public void close() {
        process.toHandle().destroyForcibly();
    }
}
