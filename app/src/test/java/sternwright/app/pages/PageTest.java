package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.ConsoleMessage;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Tag;
import sternwright.app.account.Role;

/** What every test of a page needs. Extend it, walk through the pages as a person would, and end with {@link #checkPage}. */
@Tag("pages")
abstract class PageTest {
    private static final List<String> RULES = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

    private static final List<Screen> LIGHT = List.of(Screen.DESK_LIGHT, Screen.PHONE_LIGHT);

    private static final String TOO_WIDE =
            "() => document.documentElement.scrollWidth - document.documentElement.clientWidth";

    /** The running program. */
    static RunningDesk desk() {
        return RunningDesk.shared();
    }

    /** Walks as a person of a role, on a wide light screen. */
    static void as(Role role, Consumer<Page> walk) {
        as(role, Screen.DESK_LIGHT, walk);
    }

    /** Walks as a person of a role. */
    static void as(Role role, Screen screen, Consumer<Page> walk) {
        try (BrowserContext window = desk().window(screen, role)) {
            walk.accept(window.newPage());
        }
    }

    /** Opens a path of the program; fails on any status but the one expected. */
    static void open(Page page, String path, int status) {
        Response answer = page.navigate(desk().address() + path.substring(1));
        assertEquals(status, answer.status(), path);
    }

    /** Opens a path that must be there. */
    static void open(Page page, String path) {
        open(page, path, 200);
    }

    /**
     * Looks at a page on all four screens: no fault of accessibility, nothing wider than the screen, no complaint of the
     * browser (a breach of the content policy is one), and a picture of each.
     */
    static void checkPage(String path, Role role) {
        for (Screen screen : LIGHT) {
            as(role, screen, page -> {
                List<String> complaints = listen(page);
                open(page, path);
                lookInBothLights(page, name(path), screen);
                assertEquals(List.of(), complaints, path + " at " + screen.word());
            });
        }
    }

    /** The same for a page that nobody has to sign in for. */
    static void checkOpenPage(RunningDesk desk, String path) {
        checkOpenPage(desk, desk.address() + path.substring(1), name(path));
    }

    /** The same for a page or a file anywhere. */
    static void checkOpenPage(RunningDesk desk, String address, String name) {
        for (Screen screen : LIGHT) {
            try (BrowserContext window = desk.window(screen)) {
                Page page = window.newPage();
                List<String> complaints = listen(page);
                page.navigate(address);
                lookInBothLights(page, name, screen);
                assertEquals(List.of(), complaints, address + " at " + screen.word());
            }
        }
    }

    /** Dark is the same page in other inks: of all rules only contrast can judge it otherwise, the rest is judged once. */
    private static void lookInBothLights(Page page, String name, Screen light) {
        look(page, name, light);
        Screen dark = light.inTheDark();
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        picture(page, name, dark);
        assertEquals(
                List.of(),
                faults(new AxeBuilder(page).withRules(List.of("color-contrast"))),
                name + " at " + dark.word());
    }

    /** Judges the page as it stands, also in the middle of a walk, and takes its picture. */
    static void look(Page page, String name, Screen screen) {
        picture(page, name, screen);
        assertEquals(List.of(), faults(page), name + " at " + screen.word());
        int tooWide = ((Number) page.evaluate(TOO_WIDE)).intValue();
        assertTrue(tooWide <= 0, name + " at " + screen.word() + " is wider than the screen by " + tooWide + " pixels");
    }

    private static void picture(Page page, String name, Screen screen) {
        page.screenshot(new Page.ScreenshotOptions()
                .setFullPage(true)
                .setPath(Path.of("target", "pictures", name + "-" + screen.word() + ".png")));
    }

    /** Faults of accessibility, each with the element it was found on. */
    static List<String> faults(Page page) {
        return faults(new AxeBuilder(page).withTags(RULES));
    }

    private static List<String> faults(AxeBuilder checker) {
        List<String> faults = new ArrayList<>();
        for (Rule rule : checker.analyze().getViolations()) {
            rule.getNodes().forEach(n -> faults.add(rule.getId() + ": " + rule.getHelp() + ": " + n.getHtml()));
        }
        return faults;
    }

    /** What the browser complains of from now on. */
    static List<String> listen(Page page) {
        List<String> complaints = new ArrayList<>();
        page.onConsoleMessage((ConsoleMessage m) -> {
            if (m.type().equals("error") || m.type().equals("warning")) {
                complaints.add(m.text());
            }
        });
        page.onPageError(complaints::add);
        return complaints;
    }

    private static String name(String path) {
        String plain =
                path.replaceAll("[?].*", "").replaceAll("[^A-Za-z0-9]+", "-").replaceAll("^-|-$", "");
        return plain.isEmpty() ? "today" : plain;
    }
}
