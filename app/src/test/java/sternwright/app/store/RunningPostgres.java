package sternwright.app.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.UUID;

/** A real PostgreSQL server for the tests of this program run; started when first asked for, ended with the program. */
public final class RunningPostgres {
    private static final class Server {
        static final EmbeddedPostgres RUNNING = start();

        private static EmbeddedPostgres start() {
            try {
                EmbeddedPostgres server = EmbeddedPostgres.builder()
                        .setServerConfig("max_connections", "200")
                        .start();
                Runtime.getRuntime().addShutdownHook(new Thread(() -> {
                    try {
                        server.close();
                    } catch (IOException alreadyGone) {
                        return;
                    }
                }));
                return server;
            } catch (IOException e) {
                throw new IllegalStateException("cannot start PostgreSQL for the tests", e);
            }
        }
    }

    private RunningPostgres() {}

    /** A fresh, empty database. */
    public static StoreAddress fresh() throws SQLException {
        String name = "y" + UUID.randomUUID().toString().replace("-", "");
        try (Connection c = Server.RUNNING.getPostgresDatabase().getConnection();
                Statement s = c.createStatement()) {
            s.execute("create database " + name);
        }
        return new StoreAddress("jdbc:postgresql://localhost:" + Server.RUNNING.getPort() + "/" + name, "postgres", "");
    }
}
