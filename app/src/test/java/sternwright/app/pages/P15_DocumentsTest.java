package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sternwright.app.account.Role;

/** Photos and documents: known by their content, seen by people who are signed in, never outside their boat's folder. */
class P15_DocumentsTest extends PageTest {
    private static final String OWN = "papersabout";
    static final byte[] PICTURE = Base64.getDecoder()
            .decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

    @BeforeAll
    static void aBoatOfItsOwn() throws IOException {
        P11_OneBoatTest.own(OWN);
    }

    private static void send(Page page, String name, byte[] content) {
        open(page, "/boats/" + OWN + "/documents");
        page.locator("#file").setInputFiles(new FilePayload(name, "application/octet-stream", content));
        page.locator("button.act").click();
    }

    private static String other() {
        return P11_OneBoatTest.first(sternwright.boat.Arrangement.SHAFT);
    }

    @Test
    void aFileIsWhatItsContentSays() {
        as(Role.TECHNICIAN, page -> {
            send(page, "plate.pdf", "MZ\u0000program".getBytes(StandardCharsets.ISO_8859_1));
            assertTrue(page.getByRole(AriaRole.ALERT).innerText().contains("none of the kinds kept"));
            send(page, "../../yard.yaml", PICTURE);
            assertTrue(page.locator("tbody th").innerText().contains("yard.png"));
        });
        checkPage("/boats/" + OWN + "/documents", Role.OFFICE);
        String[] content = new String[1];
        as(Role.SURVEYOR, page -> {
            open(page, "/boats/" + OWN + "/documents");
            content[0] = page.locator("tbody th a").getAttribute("href");
            open(page, content[0]);
            open(page, content[0].replace(OWN, other()), 404);
            open(page, "/boats/" + OWN + "/documents/none.png", 404);
            assertTrue(page.navigate(desk().address() + "boats/" + OWN + "/documents/..%2f..%2fyard.yaml")
                            .status()
                    >= 400);
        });
        try (BrowserContext stranger = desk().window(Screen.DESK_LIGHT)) {
            Page page = stranger.newPage();
            page.navigate(desk().address() + content[0].substring(1));
            assertTrue(page.url().endsWith("/sign-in"), "only people who are signed in");
        }
        as(Role.OFFICE, page -> {
            open(page, "/boats/" + OWN + "/documents");
            page.locator("form[action$=take-away] button").click();
            assertEquals(0, page.locator("tbody tr").count());
        });
    }
}
