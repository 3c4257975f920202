package sternwright.app.guard;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import sternwright.app.account.Account;
import sternwright.app.account.Accounts;
import sternwright.app.account.ApiTokens;
import sternwright.app.account.Role;
import sternwright.app.demo.InventedFolder;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.serve.Serve;
import sternwright.app.serve.ServeAsk;

/** The program that tests of who may do what share: a person of each role, named like the role. */
final class GuardedDesk {
    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    static final String PASSWORD = "three lanterns on the slip";

    @Nullable
    private static GuardedDesk shared;

    private final Serve serve;

    private GuardedDesk(Serve serve) {
        this.serve = serve;
    }

    static synchronized GuardedDesk shared() {
        GuardedDesk desk = shared;
        if (desk == null) {
            desk = new GuardedDesk(start());
            desk.people();
            shared = desk;
        }
        return desk;
    }

    private static Serve start() {
        try {
            Path yard = Files.createTempDirectory("guarded").resolve("yard");
            new InventedFolder(InventedFolder.Where.NORTH).write(yard, 5, TODAY, 1);
            return Serve.start(new ServeAsk(yard, "127.0.0.1", 0, List.of(), false, TODAY.toString()), "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void people() {
        part(Accounts.class).first("manager", "Manda Invented", PASSWORD);
        for (Role role : List.of(Role.OFFICE, Role.TECHNICIAN, Role.SURVEYOR)) {
            person(role.name().toLowerCase(Locale.ROOT), role);
        }
    }

    /** One person more, who can sign in. */
    Account person(String name, Role role) {
        Account account = part(Accounts.class).add(name, "Person " + name, role).orElseThrow();
        part(Accounts.class).setPassword(account.id(), PASSWORD);
        return account;
    }

    String address() {
        return serve.address();
    }

    <T> T part(Class<T> kind) {
        return serve.part(kind);
    }

    /** A browser of a person of a role. */
    Browser as(Role role) {
        return as(role.name());
    }

    Browser as(String name) {
        Browser browser = new Browser(address());
        if (browser.signIn(name, PASSWORD).statusCode() != 302
                || browser.get("settings").statusCode() != 200) {
            throw new IllegalStateException(name + " could not sign in");
        }
        return browser;
    }

    String token(Role role) {
        String account = part(Accounts.class).byName(role.name()).orElseThrow().id();
        return part(ApiTokens.class).make(account, ApiTokens.Kind.PROGRAM, "a test");
    }

    String boat() {
        return part(OpenYard.class).files().boats().keySet().iterator().next();
    }
}
