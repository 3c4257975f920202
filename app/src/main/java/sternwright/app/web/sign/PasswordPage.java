package sternwright.app.web.sign;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.Account;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.OneTimeLinks;
import sternwright.app.web.access.OpenToAnyone;
import sternwright.app.web.access.Sessions;
import sternwright.app.web.page.Form;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;

/** Sets a password by a link that works once. */
@Controller
@OpenToAnyone
public class PasswordPage {
    private final OneTimeLinks links;
    private final Sessions sessions;
    private final AuditTrail audit;

    PasswordPage(OneTimeLinks links, Sessions sessions, AuditTrail audit) {
        this.links = links;
        this.sessions = sessions;
        this.audit = audit;
    }

    /**
     * What the page shows.
     *
     * @param name what the person types to sign in
     * @param form the form
     */
    public record View(String name, Form form) {}

    /**
     * What is sent.
     *
     * @param password the password
     * @param again the same once more
     */
    record Typed(@NotNull String password, @NotNull String again) {}

    @GetMapping("/password/{secret}")
    ModelAndView show(Page page, @PathVariable("secret") String secret) {
        Optional<Account> account = links.account(secret);
        return account.isEmpty()
                ? page.wrong(Section.NONE, "sign/link-dead")
                : page.show(
                        Section.NONE, "sign/password", new View(account.get().name(), Form.blank(page, "sign")));
    }

    @PostMapping("/password/{secret}")
    ModelAndView set(
            Page page,
            @PathVariable("secret") String secret,
            @Valid @ModelAttribute("typed") Typed typed,
            BindingResult errors) {
        Optional<Account> account = links.account(secret);
        if (account.isEmpty()) {
            return page.wrong(Section.NONE, "sign/link-dead");
        }
        String name = account.get().name();
        if (!errors.hasErrors()) {
            NewPassword.judge(typed.password(), typed.again(), name, errors);
        }
        if (errors.hasErrors()) {
            return page.wrong(Section.NONE, "sign/password", new View(name, Form.typed(page, "sign", errors)));
        }
        if (links.use(secret, typed.password()).isEmpty()) {
            return page.wrong(Section.NONE, "sign/link-dead");
        }
        sessions.end(account.get().id());
        audit.note(account.get(), "account.password", name, "");
        return page.go("/sign-in", "sign.password.set");
    }
}
