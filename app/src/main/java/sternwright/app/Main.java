package sternwright.app;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import sternwright.app.command.CommandProgram;
import sternwright.app.command.entry.Pages;
import sternwright.app.files.Shipped;
import sternwright.app.serve.Serve;
import sternwright.app.serve.ServeAsk;

/** Entry of the one program. */
public final class Main {
    private Main() {}

    /**
     * Runs one command and ends the process with its status.
     *
     * @param args the command line
     */
    public static void main(String[] args) {
        Shipped.readAhead();
        PrintWriter out = writer(FileDescriptor.out);
        PrintWriter err = writer(FileDescriptor.err);
        System.exit(new CommandProgram(LocalDate.now(), out, err, Main::open).run(args));
    }

    private static void open(Pages.Ask ask, PrintWriter out) throws IOException, InterruptedException {
        LocalDate today = ask.today();
        Serve.untilEnded(
                new ServeAsk(
                        ask.yard(),
                        ask.address(),
                        ask.port(),
                        ask.names(),
                        ask.behindProxy(),
                        ask.plainPort(),
                        today == null ? null : today.toString()),
                out);
    }

    private static PrintWriter writer(FileDescriptor descriptor) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(descriptor), StandardCharsets.UTF_8));
    }
}
