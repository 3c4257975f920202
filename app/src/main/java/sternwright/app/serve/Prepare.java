package sternwright.app.serve;

import java.util.Map;

/**
 * What the build runs to work out how the parts of the pages are put together, so that no start has to look for it. Nothing is
 * opened: the build stops the run before any part is made.
 */
final class Prepare {
    private Prepare() {}

    /**
     * Gathers the parts.
     *
     * @param args none
     */
    public static void main(String[] args) {
        Serve.application(Map.of(
                        "server.address", "127.0.0.1",
                        "server.port", "0",
                        "sternwright.folder", ".",
                        "spring.datasource.url", "jdbc:sqlite::memory:"))
                .run(args);
    }
}
