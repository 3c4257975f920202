package sternwright.app;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import sternwright.app.command.CommandProgram;
import sternwright.app.files.Shipped;

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
        System.exit(new CommandProgram(LocalDate.now(), out, err).run(args));
    }

    private static PrintWriter writer(FileDescriptor descriptor) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(descriptor), StandardCharsets.UTF_8));
    }
}
