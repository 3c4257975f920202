package sternwright.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import sternwright.app.command.CommandProgram;
import sternwright.app.serve.Serve;
import sternwright.app.serve.ServeAsk;

/**
 * Runs the usual short commands, or opens a few pages, once on an invented yard, so that the Java machine can lay their classes
 * out for the next start. The launcher does this after a build; nobody else needs it.
 */
public final class Practice {
    private Practice() {}

    /**
     * Practises in a folder.
     *
     * @param args an empty folder; {@code commands} or {@code pages}
     * @throws IOException if the disk or the network refuses
     * @throws InterruptedException if told to end
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path yard = Path.of(args[0]).resolve("yard");
        run("new", "yard", yard.toString());
        if (args[1].equals("pages")) {
            pages(yard);
            System.exit(0);
        }
        System.exit(commands(yard.toString()));
    }

    private static int commands(String yard) {
        run("--yard", yard, "new", "boat", "--arrangement", "saildrive", "--id", "practice", "--owner", "nobody");
        run("--yard", yard, "record", "practice", "--work", "change-engine-oil", "--hours", "10");
        run("--yard", yard, "due", "practice");
        run("--yard", yard, "check");
        run("--yard", yard, "boats");
        return run("--yard", yard, "due", "practice", "--json");
    }

    private static void pages(Path yard) throws IOException, InterruptedException {
        ServeAsk ask = new ServeAsk(yard, "127.0.0.1", 0, List.of(), false, null);
        Serve.asPrepared(ask);
        Serve serve = Serve.start(ask, "");
        HttpClient browser = HttpClient.newBuilder()
                .followRedirects(HttpClient.Redirect.NORMAL)
                .build();
        for (String page : List.of("", "health", "sign-in")) {
            browser.send(
                    HttpRequest.newBuilder(URI.create(serve.address() + page)).build(),
                    HttpResponse.BodyHandlers.ofString());
        }
        serve.close();
    }

    private static int run(String... args) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        return new CommandProgram(LocalDate.now(), nowhere, nowhere).run(args);
    }
}
