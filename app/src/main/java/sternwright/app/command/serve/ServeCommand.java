package sternwright.app.command.serve;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
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

    private final Pages pages;

    @Option(names = "--port", paramLabel = "N", defaultValue = "8080", description = "Left out: 8080; 0: any.")
    int port = 8080;

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
        if (port < 0 || port > LAST_PORT) {
            throw BadInput.of("--port", "found " + port, "0 to " + LAST_PORT, "");
        }
        pages.open(
                new Pages.Ask(
                        program().yard(),
                        address,
                        port,
                        names,
                        behindProxy,
                        program().asked()),
                out());
        return ExitStatus.DONE;
    }
}
