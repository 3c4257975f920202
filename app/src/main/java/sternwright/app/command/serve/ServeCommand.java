package sternwright.app.command.serve;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sternwright.app.command.entry.Deed;
import sternwright.app.command.entry.ExitStatus;
import sternwright.app.command.entry.Pages;
import sternwright.app.files.problem.BadInput;

/** The pages. */
@Command(
        name = "serve",
        description = {
            "Open the yard's pages for a browser, until the program is ended.",
            "At the first start they ask for the owner's account."
        },
        sortOptions = false)
public final class ServeCommand extends Deed {
    private static final int LAST_PORT = 65_535;
    private static final int PLAIN = 8080;
    private static final int SECURE = 8443;

    private final Pages pages;

    @Option(names = "--port", paramLabel = "N", description = "Left out: 8080, with --https 8443; 0: any.")
    @Nullable
    Integer port;

    @Option(
            names = "--address",
            paramLabel = "ADDRESS",
            defaultValue = "127.0.0.1",
            description = "Left out: 127.0.0.1, this machine alone; 0.0.0.0: the whole network.")
    String address = "127.0.0.1";

    @Option(
            names = "--name",
            paramLabel = "NAME",
            split = ",",
            description = "A further name by which the machine is called on the network.")
    List<String> names = new ArrayList<>();

    @Option(
            names = "--behind-proxy",
            description = "A proxy of yours stands in front and says who asks (X-Forwarded headers).")
    boolean behindProxy;

    @Option(
            names = "--https",
            description = {
                "Https with a certificate authority of the yard's own, for phones on the yard's network:",
                "each phone is told once to trust it, by a page that the program shows."
            })
    boolean https;

    @Option(
            names = "--plain-port",
            paramLabel = "N",
            defaultValue = "8080",
            description = "With --https: where phones fetch the root certificate; left out: 8080, 0: any.")
    int plainPort = PLAIN;

    /**
     * The command.
     *
     * @param pages opens the pages
     */
    public ServeCommand(Pages pages) {
        this.pages = pages;
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (https && behindProxy) {
            throw BadInput.of(
                    "--https",
                    "it stands beside --behind-proxy",
                    "one of the two",
                    "Let the proxy do https, or do without the proxy.");
        }
        pages.open(
                new Pages.Ask(
                        program().yard(),
                        address,
                        port("--port", port == null ? (https ? SECURE : PLAIN) : port),
                        names,
                        behindProxy,
                        https ? port("--plain-port", plainPort) : null,
                        program().asked()),
                out());
        return ExitStatus.DONE;
    }

    private static int port(String option, int said) {
        if (said < 0 || said > LAST_PORT) {
            throw BadInput.of(option, "found " + said, "0 to " + LAST_PORT, "");
        }
        return said;
    }
}
