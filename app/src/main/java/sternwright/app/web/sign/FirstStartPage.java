package sternwright.app.web.sign;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.Account;
import sternwright.app.account.Accounts;
import sternwright.app.account.AuditTrail;
import sternwright.app.web.access.FirstStartCode;
import sternwright.app.web.access.OpenToAnyone;
import sternwright.app.web.page.Form;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;

/** Makes the owner's account, once. There is no default password to forget. */
@Controller
@OpenToAnyone
public class FirstStartPage {
    private final Accounts accounts;
    private final FirstStartCode code;
    private final AuditTrail audit;

    FirstStartPage(Accounts accounts, FirstStartCode code, AuditTrail audit) {
        this.accounts = accounts;
        this.code = code;
        this.audit = audit;
    }

    /**
     * What the page shows.
     *
     * @param form the form
     * @param codeAsked whether the printed code must be typed
     */
    public record View(Form form, boolean codeAsked) {}

    /**
     * What is sent.
     *
     * @param fullName the owner's name
     * @param name what will be typed to sign in
     * @param password the password
     * @param again the same once more
     * @param code the printed code
     */
    record Typed(
            @NotBlank @Size(max = 120) String fullName,

            @NotBlank @Size(max = 80) @Pattern(regexp = "[\\p{L}\\p{N}][\\p{L}\\p{N}._@-]*")
            String name,

            @NotNull String password,
            @NotNull String again,
            String code) {}

    @GetMapping("/first-start")
    ModelAndView show(Page page) {
        return accounts.any()
                ? page.go("/sign-in", "")
                : page.show(Section.NONE, "sign/first", new View(Form.blank(page, "sign"), code.asked()));
    }

    @PostMapping("/first-start")
    ModelAndView make(Page page, @Valid @ModelAttribute("typed") Typed typed, BindingResult errors) {
        if (accounts.any()) {
            return late(page);
        }
        if (!errors.hasFieldErrors("password")) {
            NewPassword.judge(typed.password(), typed.again(), typed.name(), errors);
        }
        if (code.asked() && (typed.code() == null || !code.right(typed.code()))) {
            errors.rejectValue("code", "wrong");
        }
        if (errors.hasErrors()) {
            return page.wrong(Section.NONE, "sign/first", new View(Form.typed(page, "sign", errors), code.asked()));
        }
        Optional<Account> made = accounts.first(typed.name(), typed.fullName(), typed.password());
        made.ifPresent(a -> audit.note(a, "account.first", a.name(), ""));
        return made.isPresent() ? page.go("/sign-in", "sign.first.made") : late(page);
    }

    /** Somebody else was first: said in words, so that nobody believes an account was made. */
    private static ModelAndView late(Page page) {
        ModelAndView shown = page.show(Section.NONE, "sign/late");
        shown.setStatus(HttpStatus.CONFLICT);
        return shown;
    }
}
