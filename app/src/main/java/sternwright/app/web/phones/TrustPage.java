package sternwright.app.web.phones;

import java.util.List;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.web.access.OpenToAnyone;
import sternwright.app.web.access.OwnHttps;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;

/** What a phone sees that does not trust the pages yet. It comes by plain http: no form stands on it and no session begins. */
@Controller
@OpenToAnyone
public class TrustPage {
    private final ObjectProvider<OwnHttps> https;

    TrustPage(ObjectProvider<OwnHttps> https) {
        this.https = https;
    }

    /**
     * What the page shows.
     *
     * @param fingerprint by what the root is known, in lines of eight pairs
     * @param secure where the pages are
     */
    public record View(List<String> fingerprint, String secure) {}

    @GetMapping("/phone")
    ModelAndView show(Page page) {
        OwnHttps own = own();
        return page.show(
                Section.NONE, "phones/trust", new View(Fingerprint.lines(own.fingerprint()), own.secureAddress()));
    }

    @GetMapping("/phone/root.crt")
    ResponseEntity<byte[]> root() {
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_TYPE, "application/x-x509-ca-cert")
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"yard-root.crt\"")
                .cacheControl(CacheControl.noStore())
                .body(own().root());
    }

    private OwnHttps own() {
        OwnHttps own = https.getIfAvailable();
        if (own == null) {
            throw new Missing("phones.none");
        }
        return own;
    }
}
