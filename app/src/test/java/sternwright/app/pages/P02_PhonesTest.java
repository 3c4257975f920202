package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import sternwright.app.account.Accounts;
import sternwright.app.account.Role;
import sternwright.app.serve.ServeAsk;
import sternwright.app.web.access.OwnHttps;

/** How a phone comes to trust the pages, as it is seen; that it works over the wire says the guard's test of https. */
class P02_PhonesTest extends PageTest {
    @Test
    void thePictureIsShownAndThePhonesPageSaysWhatToDo() throws IOException {
        ServeAsk ask =
                new ServeAsk(RunningDesk.yard(2), "127.0.0.1", 0, List.of(), false, 0, RunningDesk.TODAY.toString());
        RunningDesk secure = RunningDesk.fresh(ask, "");
        try {
            secure.part(Accounts.class).first("manager", "Manda Invented", RunningDesk.PASSWORD);
            String plain = secure.part(OwnHttps.class).plainAddress();
            for (Screen screen : List.of(Screen.PHONE_LIGHT, Screen.PHONE_DARK)) {
                try (BrowserContext window = secure.window(screen)) {
                    Page page = window.newPage();
                    List<String> complaints = listen(page);
                    page.navigate(plain);
                    look(page, "phone-trust", screen);
                    assertEquals(List.of(), complaints);
                    assertEquals(List.of(), window.cookies());
                }
            }
            for (Screen screen : List.of(Screen.DESK_LIGHT, Screen.PHONE_DARK)) {
                try (BrowserContext window = secure.trusting(screen)) {
                    Page page = window.newPage();
                    secure.signIn(page, "manager", RunningDesk.PASSWORD);
                    page.navigate(secure.address() + "settings/phones");
                    assertTrue(page.locator("svg.camera").isVisible());
                    look(page, "settings-phones", screen);
                }
            }
        } finally {
            secure.close();
        }
    }

    @Test
    void withoutHttpsItSaysHowToStartAndThePasswordPageShowsWhereOneIsSignedIn() {
        as(Role.OFFICE, page -> {
            open(page, "/settings/phones");
            look(page, "settings-phones-none", Screen.DESK_LIGHT);
            assertTrue(page.locator("main").innerText().contains("serve --https"));
            open(page, "/phone", 404);
        });
        checkPage("/settings/password", Role.OFFICE);
    }
}
