package sternwright.app.pages;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.app.account.Account;
import sternwright.app.account.Accounts;
import sternwright.app.account.Role;
import sternwright.app.demo.InventedFolder;
import sternwright.app.serve.Serve;
import sternwright.app.serve.ServeAsk;

/** The program and the browser that all tests of pages share: starting either costs seconds. */
final class RunningDesk {
    /** Today in all tests of pages. */
    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    /** The password of everybody in the tests. */
    static final String PASSWORD = "three lanterns on the slip";

    private static final int BOATS = 14;

    @Nullable
    private static RunningDesk shared;

    private final Serve serve;
    private final Browser browser;
    private final Map<Role, String> signedIn = new EnumMap<>(Role.class);

    private RunningDesk(Serve serve, Browser browser) {
        this.serve = serve;
        this.browser = browser;
    }

    /** The one desk, with a person for each role. */
    static synchronized RunningDesk shared() {
        RunningDesk desk = shared;
        if (desk == null) {
            desk = start();
            shared = desk;
        }
        return desk;
    }

    /** A desk of one's own, before the first start, in the browser of all. */
    static RunningDesk fresh(ServeAsk ask, String code) throws IOException {
        return new RunningDesk(Serve.start(ask, code), shared().browser);
    }

    /** An invented yard in a new folder. */
    static Path yard(int boats) {
        try {
            Path folder = Files.createTempDirectory("yard").resolve("yard");
            new InventedFolder(InventedFolder.Where.NORTH).write(folder, boats, TODAY, 1);
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** How this machine alone opens a yard on any free port. */
    static ServeAsk ask(Path folder) {
        return new ServeAsk(folder, "127.0.0.1", 0, List.of(), false, TODAY.toString());
    }

    private static RunningDesk start() {
        try {
            Serve serve = Serve.start(ask(yard(BOATS)), "");
            RunningDesk desk = new RunningDesk(serve, browser());
            desk.people();
            return desk;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Browser browser() {
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        return playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(chromium())
                        .setArgs(List.of("--no-sandbox", "--force-color-profile=srgb")));
    }

    /** The build without windows of its own where there is one: it opens pages for a third of the work. */
    private static Path chromium() {
        String named = System.getenv("CHROMIUM");
        if (named != null) {
            return Path.of(named);
        }
        Path shell = Path.of("/usr/bin/chromium-headless-shell");
        return Files.exists(shell) ? shell : Path.of("/usr/bin/chromium");
    }

    private void people() {
        Accounts accounts = serve.part(Accounts.class);
        accounts.first("manager", "Manda Invented", PASSWORD);
        for (Role role : List.of(Role.OFFICE, Role.TECHNICIAN, Role.SURVEYOR)) {
            Account account = accounts.add(
                            role.name(), "Person Invented " + role.name().charAt(0), role)
                    .orElseThrow();
            accounts.setPassword(account.id(), PASSWORD);
        }
    }

    /** Where it runs, ending with a slash. */
    String address() {
        return serve.address();
    }

    /** A part of the running program. */
    <T> T part(Class<T> kind) {
        return serve.part(kind);
    }

    void close() {
        serve.close();
    }

    /** A browser window that nobody has signed in to. */
    BrowserContext window(Screen screen) {
        return window(options(screen));
    }

    /** A browser window that takes the yard's own certificate without having been told of its root. */
    BrowserContext trusting(Screen screen) {
        return window(options(screen).setIgnoreHTTPSErrors(true));
    }

    /** A browser window of a person; the session is made once for each role. */
    BrowserContext window(Screen screen, Role role) {
        String session = signedIn.get(role);
        if (session == null) {
            try (BrowserContext first = window(Screen.DESK_LIGHT)) {
                Page page = first.newPage();
                signIn(page, role.name().toLowerCase(java.util.Locale.ROOT), PASSWORD);
                session = first.storageState();
                signedIn.put(role, session);
            }
        }
        return window(options(screen).setStorageState(session));
    }

    /** Waits long for everything: a busy machine is slow, not wrong. */
    private BrowserContext window(Browser.NewContextOptions options) {
        BrowserContext window = browser.newContext(options);
        window.setDefaultTimeout(120_000);
        return window;
    }

    void signIn(Page page, String name, String password) {
        page.navigate(address() + "sign-in");
        page.getByLabel("Name to sign in with").fill(name);
        page.getByLabel("Password").fill(password);
        page.locator("form[action='/sign-in'] button").click();
    }

    private static Browser.NewContextOptions options(Screen screen) {
        return new Browser.NewContextOptions()
                .setViewportSize(screen.width(), screen.height())
                .setColorScheme(screen.dark() ? ColorScheme.DARK : ColorScheme.LIGHT)
                .setHasTouch(screen.phone())
                .setLocale("en-GB");
    }
}
