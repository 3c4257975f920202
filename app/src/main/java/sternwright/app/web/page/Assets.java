package sternwright.app.web.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.zip.CRC32;

/** Files that travel with the pages. Their address holds a sum over their bytes, so that browsers may keep them for a year. */
final class Assets {
    /** Where they stand in the jar. */
    static final String PLACE = "sternwright/app/web/assets/";
    /** The library for parts of pages that load by themselves. */
    static final String HTMX = "META-INF/resources/webjars/htmx.org/2.0.7/dist/htmx.min.js";

    private static final List<String> NAMES = List.of("desk.css", "print.css", "mark.svg", "season.js");

    private final String version;

    Assets() {
        CRC32 sum = new CRC32();
        NAMES.forEach(n -> sum.update(bytes(PLACE + n)));
        sum.update(bytes(HTMX));
        this.version = Long.toHexString(sum.getValue());
    }

    /** The sum over all of them. */
    String version() {
        return version;
    }

    /** Path of one of them. */
    String path(String name) {
        return "/assets/" + version + "/" + name;
    }

    private static byte[] bytes(String name) {
        try (InputStream in = Assets.class.getClassLoader().getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program is incomplete: " + name + " is missing in its jar");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
