package sternwright.app.web.phones;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.access.OwnHttps;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;

/** Shows a phone's camera where it fetches the root certificate; on a machine that trusts the pages already. */
@Controller
@ForAll
public class PhonesPage {
    private final ObjectProvider<OwnHttps> https;

    PhonesPage(ObjectProvider<OwnHttps> https) {
        this.https = https;
    }

    /**
     * What the page shows where the pages have https of their own.
     *
     * @param outline the dark modules of the picture, an SVG path
     * @param side side of its square
     * @param address what the picture says
     * @param fingerprint by what the root is known, in lines of eight pairs
     * @param until last day of the root
     */
    public record View(String outline, int side, String address, java.util.List<String> fingerprint, String until) {}

    @GetMapping("/settings/phones")
    ModelAndView show(Page page) {
        OwnHttps own = https.getIfAvailable();
        if (own == null) {
            return page.show(Section.SETTINGS, "phones/none");
        }
        QrCode code = QrCode.of(own.plainAddress());
        return page.show(
                Section.SETTINGS,
                "phones/code",
                new View(
                        code.outline(),
                        code.side(),
                        own.plainAddress(),
                        Fingerprint.lines(own.fingerprint()),
                        page.figures().date(own.rootUntil())));
    }
}
