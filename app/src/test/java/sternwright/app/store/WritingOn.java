package sternwright.app.store;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import sternwright.app.files.shelf.Shelf;
import sternwright.app.files.shelf.Writing;

/**
 * Writes on a store until it is killed. Each write adds one line to a table and writes one text, together; its number is said on
 * the standard output only when the store has said that it is done.
 */
public final class WritingOn {
    private WritingOn() {}

    /** Arguments: the store's file, the first number, how many. */
    public static void main(String[] args) throws Exception {
        int from = Integer.parseInt(args[1]);
        int most = Integer.parseInt(args[2]);
        PrintStream out = System.out;
        try (Store store = Store.open(StoreAddress.file(Path.of(args[0])), Clock.systemUTC())) {
            Shelf shelf = store.shelf("writer");
            for (int i = from; i < from + most; i++) {
                try (Writing writing = shelf.write("number " + i)) {
                    String before = shelf.text("hours/tern.csv").orElse("number\n");
                    writing.put("hours/tern.csv", before + i + "\n");
                    writing.put("last.md", Integer.toString(i));
                    writing.commit();
                }
                out.println(i);
                out.flush();
            }
        }
    }
}
