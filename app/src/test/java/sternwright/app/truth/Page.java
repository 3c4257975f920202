package sternwright.app.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A file of the project that is made from the program and must say what the program does. */
final class Page {
    private Page() {}

    /** Writes the file anew if it differs, and fails then, so that the change is seen and kept. */
    static void mustSay(String file, String text) throws IOException {
        Path page = Path.of("..").resolve(file);
        String before = Files.exists(page) ? Files.readString(page) : "";
        if (!before.equals(text)) {
            Files.createDirectories(page.getParent());
            Files.writeString(page, text);
        }
        assertEquals(
                text,
                before,
                file + " did not say what the program does. It has been written anew: look at it and commit it.");
    }
}
