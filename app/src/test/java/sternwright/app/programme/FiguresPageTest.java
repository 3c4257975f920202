package sternwright.app.programme;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import sternwright.app.files.Shipped;

/** docs/figures.md says what the shipped programme says. Written anew with {@code -Dwrite.docs=true}. */
class FiguresPageTest {
    private static final Path PAGE = Path.of("..", "docs", "figures.md");

    @Test
    void thePageSaysWhatTheProgrammeSays() throws IOException {
        String page = FiguresPage.of(Shipped.genericProgramme());
        if (Boolean.getBoolean("write.docs")) {
            Files.writeString(PAGE, page);
        }
        assertEquals(
                page,
                Files.exists(PAGE) ? Files.readString(PAGE) : "",
                "docs/figures.md is out of date: run mvn -o test -pl app -am -Dtest=FiguresPageTest"
                        + " -Dsurefire.failIfNoSpecifiedTests=false -Dwrite.docs=true");
    }
}
