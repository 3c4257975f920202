package sternwright.app.programme;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import sternwright.protection.metal.MetalCatalogue;

/** docs/metals.md says what the catalogue of metals says. Written anew with {@code -Dwrite.docs=true}. */
class MetalsPageTest {
    private static final Path PAGE = Path.of("..", "docs", "metals.md");

    @Test
    void thePageSaysWhatTheCatalogueSays() throws IOException {
        String page = MetalsPage.of(MetalCatalogue.standard());
        if (Boolean.getBoolean("write.docs")) {
            Files.writeString(PAGE, page);
        }
        assertEquals(
                page,
                Files.exists(PAGE) ? Files.readString(PAGE) : "",
                "docs/metals.md is out of date: run mvn -o test -pl app -am -Dtest=MetalsPageTest"
                        + " -Dsurefire.failIfNoSpecifiedTests=false -Dwrite.docs=true");
    }
}
