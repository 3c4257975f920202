package sternwright.app.serve;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.support.DefaultListableBeanFactory;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.web.server.PortInUseException;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.SpringProperties;
import org.springframework.util.ClassUtils;
import sternwright.app.account.Accounts;
import sternwright.app.certificate.PrivateFile;
import sternwright.app.certificate.YardAuthority;
import sternwright.app.desk.keeping.MoveYard;
import sternwright.app.desk.keeping.YardPlace;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.files.FolderLayout;
import sternwright.app.files.problem.BadInput;
import sternwright.app.store.Store;
import sternwright.app.store.StoreAddress;
import sternwright.app.web.access.OwnHttps;
import sternwright.app.web.phones.QrCode;

/** Opens the pages of a yard. */
public final class Serve {
    private static final SecureRandom RANDOM = new SecureRandom();

    /** No letters or figures that are taken for others. */
    private static final String CODE_SIGNS = "ABCDEFGHJKMNPQRSTUVWXYZ23456789";

    private static final int CODE_LENGTH = 12;

    private final ConfigurableApplicationContext running;
    private final ServeAsk ask;
    private final String takenIn;

    @Nullable
    private final PageKeys keys;

    private Serve(ConfigurableApplicationContext running, ServeAsk ask, String takenIn, @Nullable PageKeys keys) {
        this.takenIn = takenIn;
        this.keys = keys;
        this.running = running;
        this.ask = ask;
    }

    /**
     * Opens the pages and stays until the program is ended.
     *
     * @param ask how
     * @param out where the address is said
     * @throws BadInput if the folder is no yard or the port is taken
     * @throws IOException if the disk refuses
     * @throws InterruptedException if the program is told to end
     */
    public static void untilEnded(ServeAsk ask, PrintWriter out) throws IOException, InterruptedException {
        String code = ask.thisMachineOnly() ? "" : code();
        asPrepared(ask);
        Serve serve = start(ask, code);
        if (!serve.takenIn.isEmpty()) {
            out.println(serve.takenIn);
        }
        out.println("The pages of " + ask.folder() + " are open at " + serve.address());
        if (!serve.running.getBean(Accounts.class).any()) {
            out.println("Open them now: they ask for the owner's account first."
                    + (code.isEmpty() ? "" : " The code to type there is " + code));
        }
        if (ask.https()) {
            tellPhones(serve.running.getBean(OwnHttps.class), out);
        }
        out.println("Ctrl+C closes them.");
        out.flush();
        Thread.currentThread().join();
    }

    /**
     * Lets the next start take how the parts belong together from the build (docs/decisions/0109). The build knows nothing of the pages'
     * own https; with it they are put together as they start.
     *
     * @param ask how they are opened
     */
    public static void asPrepared(ServeAsk ask) {
        boolean prepared = ClassUtils.isPresent(
                Prepare.class.getName() + "__ApplicationContextInitializer", Serve.class.getClassLoader());
        if (prepared && !ask.https()) {
            SpringProperties.setFlag("spring.aot.enabled");
        }
    }

    private static void tellPhones(OwnHttps https, PrintWriter out) {
        out.println();
        out.println("A phone has to be told once to trust these pages. Let its camera read this:");
        out.println(QrCode.of(https.plainAddress()).text());
        out.println("or type " + https.plainAddress());
        out.println("Fingerprint (SHA-256) of the root certificate, to compare:");
        out.println(https.fingerprint());
        out.println();
    }

    /**
     * Opens the pages.
     *
     * @param ask how
     * @param code the code that the first start asks for, empty for none
     * @return the running pages
     * @throws BadInput if the folder is no yard or the port is taken
     * @throws IOException if the disk refuses
     */
    public static Serve start(ServeAsk ask, String code) throws IOException {
        Clock clock = ServeApplication.clock(Objects.requireNonNullElse(ask.today(), ""));
        YardPlace place = place(ask, clock);
        try {
            return start(ask, code, place);
        } catch (IOException | RuntimeException e) {
            place.close();
            throw e;
        }
    }

    private static Serve start(ServeAsk ask, String code, YardPlace place) throws IOException {
        String takenIn = takeIn(ask, place);
        Map<String, Object> settings = new HashMap<>();
        settings.put("server.address", ask.address());
        settings.put("server.port", Integer.toString(ask.port()));
        settings.put("sternwright.folder", ask.folder().toString());
        settings.put("sternwright.hosts", ask.behindProxy() && ask.names().isEmpty() ? "" : hosts(ask));
        settings.put("sternwright.first-start-code", code);
        accounts(ask.folder(), settings);
        settings.put("server.forward-headers-strategy", ask.behindProxy() ? "native" : "none");
        PageKeys keys = ask.https() ? https(ask, place, settings) : null;
        String today = ask.today();
        if (today != null) {
            settings.put("sternwright.today", today);
        }
        SpringApplication application = application(settings);
        application.addInitializers(c -> give((DefaultListableBeanFactory) c.getBeanFactory(), place, keys));
        try {
            return new Serve(application.run(), ask, takenIn, keys);
        } catch (PortInUseException taken) {
            throw BadInput.of(
                    "--port",
                    "port " + taken.getPort() + " is in use",
                    "a free port",
                    "Give another one, or 0 for any.");
        }
    }

    /** The pages before anything of a yard is known to them. */
    static SpringApplication application(Map<String, Object> settings) {
        SpringApplication application = new SpringApplication(ServeApplication.class);
        application.setMainApplicationClass(Prepare.class);
        application.setWebApplicationType(WebApplicationType.SERVLET);
        application.setDefaultProperties(settings);
        return application;
    }

    /** The yard is closed after everything that was made from it. */
    private static void give(DefaultListableBeanFactory parts, YardPlace place, @Nullable PageKeys keys) {
        parts.registerSingleton("yardPlace", place);
        parts.registerDisposableBean("yardPlace", place::close);
        if (keys != null) {
            parts.registerSingleton("pageKeys", keys);
        }
    }

    private static PageKeys https(ServeAsk ask, YardPlace place, Map<String, Object> settings) throws IOException {
        Clock clock = Clock.systemDefaultZone();
        Path folder = ask.folder().resolve(".desk").resolve("https");
        YardAuthority authority = YardAuthority.in(folder, yardName(place), LocalNames.all(ask.names()), clock);
        authority.check(ask.names());
        settings.put("server.ssl.bundle", PageKeys.BUNDLE);
        settings.put("sternwright.https.plain-port", Integer.toString(Objects.requireNonNull(ask.plainPort())));
        settings.put("server.servlet.session.cookie.secure", "true");
        settings.put("server.servlet.session.cookie.name", "__Host-sternwright");
        return new PageKeys(authority, () -> LocalNames.all(ask.names()), clock);
    }

    /** The yard's name as phones list it; without one where its texts cannot be read: the pages say what is wrong with them. */
    private static String yardName(YardPlace place) {
        try {
            return new OpenYard(place, Clock.systemDefaultZone()).yard().name();
        } catch (BadInput unreadable) {
            return "";
        }
    }

    /** The yard's store, opened once for everything that follows. */
    private static YardPlace place(ServeAsk ask, Clock clock) throws IOException {
        Path folder = ask.folder();
        if (YardPlace.named(folder, System.getenv()).isEmpty() && !Files.exists(YardPlace.storeFile(folder))) {
            FolderLayout.of(folder);
        }
        return YardPlace.withStore(folder, System.getenv(), clock);
    }

    /** At the first start the yard's files are taken into its store; from then on the store is where the yard is kept. */
    private static String takeIn(ServeAsk ask, YardPlace place) throws IOException {
        Store store = place.store().orElseThrow();
        if (!store.shelf("").marks().isEmpty()) {
            return "";
        }
        String today = ask.today();
        LocalDate latest = today == null ? LocalDate.now(ZoneId.systemDefault()) : LocalDate.parse(today);
        MoveYard moved = MoveYard.in(ask.folder(), store, false, System.getProperty("user.name", ""), latest);
        return moved.texts() + " files of the yard were taken into " + store.place()
                + ". Pages and commands work there from now on;"
                + " \"sternwright export folder FOLDER\" writes them out as files again.";
    }

    /** Accounts lie beside the yard in a database that is named, else in a file of their own: signing in waits for no deed. */
    private static void accounts(Path folder, Map<String, Object> settings) throws IOException {
        StoreAddress named = YardPlace.named(folder, System.getenv()).orElse(null);
        if (named == null || named.isFile()) {
            Path file = YardPlace.accountsFile(folder);
            if (!Files.exists(file)) {
                PrivateFile.write(file, "");
            }
            PrivateFile.close(file);
            settings.put("spring.datasource.url", sqlite(file));
            // One writes at a time anyhow; waiting for each other here is fair, while waiting for the file's lock is
            // not.
            settings.put("spring.datasource.hikari.maximum-pool-size", "1");
        } else {
            settings.put("spring.datasource.url", named.url());
            settings.put("spring.datasource.username", named.user());
            settings.put("spring.datasource.password", named.password());
        }
    }

    /**
     * Where the pages are.
     *
     * @return such as http://127.0.0.1:8080/
     */
    public String address() {
        int port = Objects.requireNonNull(((WebServerApplicationContext) running).getWebServer())
                .getPort();
        return (ask.https() ? "https://" : "http://") + HttpsServing.host(ask.address()) + ":" + port + "/";
    }

    /**
     * The parts of the running program, for tests.
     *
     * @param kind the kind of part
     * @param <T> the kind of part
     * @return the one part of that kind
     */
    public <T> T part(Class<T> kind) {
        return running.getBean(kind);
    }

    /** Closes the pages. */
    public void close() {
        running.close();
        if (keys != null) {
            keys.close();
        }
    }

    /** Every write waits for the disk, so that what was said to be done is done; writers queue instead of failing. */
    private static String sqlite(Path file) {
        return "jdbc:sqlite:" + file.toAbsolutePath()
                + "?journal_mode=WAL&synchronous=FULL&foreign_keys=true&busy_timeout=5000&transaction_mode=IMMEDIATE";
    }

    private static String hosts(ServeAsk ask) {
        return ask.thisMachineOnly()
                ? "localhost,127.0.0.1,[::1],::1"
                : LocalNames.all(ask.names()).stream().collect(Collectors.joining(","));
    }

    private static String code() {
        String signs = RANDOM.ints(CODE_LENGTH, 0, CODE_SIGNS.length())
                .mapToObj(i -> String.valueOf(CODE_SIGNS.charAt(i)))
                .collect(Collectors.joining());
        return signs.substring(0, 4) + "-" + signs.substring(4, 8) + "-" + signs.substring(8);
    }
}
