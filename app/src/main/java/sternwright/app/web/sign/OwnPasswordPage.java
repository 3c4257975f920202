package sternwright.app.web.sign;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import sternwright.app.account.Account;
import sternwright.app.account.Accounts;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SignInLimit;
import sternwright.app.account.SignedIn;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.access.Sessions;
import sternwright.app.web.page.Form;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;
import sternwright.app.web.page.TooSoon;

/** A person's own password, and the places where the person is signed in. Both ask for the password as it is now. */
@Controller
@ForAll
public class OwnPasswordPage {
    private static final String PATH = "/settings/password";

    private final Accounts accounts;
    private final Sessions sessions;
    private final SignInLimit limit;
    private final AuditTrail audit;
    private final ZoneId zone;

    OwnPasswordPage(Accounts accounts, Sessions sessions, SignInLimit limit, AuditTrail audit, Clock clock) {
        this.accounts = accounts;
        this.sessions = sessions;
        this.limit = limit;
        this.audit = audit;
        this.zone = clock.getZone();
    }

    /**
     * What is sent for a new password.
     *
     * @param now the password as it is
     * @param password the new one
     * @param again the same once more
     */
    record Typed(
            @NotNull String now,
            @NotNull String password,
            @NotNull String again) {}

    /**
     * What is sent to end the other sessions.
     *
     * @param now the password as it is
     */
    record Ending(@NotNull String now) {}

    /**
     * One place where the person is signed in.
     *
     * @param since when the session began
     * @param used when it was last used
     * @param here whether it is the reader's
     */
    public record Place(String since, String used, boolean here) {}

    /**
     * What the page shows.
     *
     * @param form for a new password
     * @param ending for ending the other sessions
     * @param places where the person is signed in
     */
    public record View(Form form, Form ending, List<Place> places) {
        /** Copies the list. */
        public View {
            places = List.copyOf(places);
        }
    }

    @GetMapping(PATH)
    ModelAndView show(Page page, HttpServletRequest request) {
        return page.show(
                Section.SETTINGS,
                "sign/own",
                view(page, request, Form.blank(page, "own"), Form.blank(page, "own.ending")));
    }

    @PostMapping(PATH)
    ModelAndView change(
            Page page,
            HttpServletRequest request,
            @AuthenticationPrincipal SignedIn person,
            @Valid @ModelAttribute("typed") Typed typed,
            BindingResult errors) {
        Account account = accounts.byId(person.id()).orElseThrow();
        if (!errors.hasErrors()) {
            known(account, typed.now(), request, errors);
            NewPassword.judge(typed.password(), typed.again(), account.name(), errors);
        }
        if (errors.hasErrors()) {
            Form form = Form.typed(page, "own", errors);
            return page.wrong(Section.SETTINGS, "sign/own", view(page, request, form, Form.blank(page, "own.ending")));
        }
        accounts.setPassword(account.id(), typed.password());
        sessions.endOthers(account.id(), request.getSession().getId());
        audit.note("account.password", account.name(), "");
        return page.go("/settings", "own.done");
    }

    @PostMapping("/settings/sessions/end")
    ModelAndView end(
            Page page,
            HttpServletRequest request,
            @AuthenticationPrincipal SignedIn person,
            @Valid @ModelAttribute("typed") Ending typed,
            BindingResult errors) {
        Account account = accounts.byId(person.id()).orElseThrow();
        if (!errors.hasErrors()) {
            known(account, typed.now(), request, errors);
        }
        if (errors.hasErrors()) {
            Form ending = Form.typed(page, "own.ending", errors);
            return page.wrong(Section.SETTINGS, "sign/own", view(page, request, Form.blank(page, "own"), ending));
        }
        sessions.endOthers(account.id(), request.getSession().getId());
        audit.note("account.sessions-ended", account.name(), "");
        return page.go(PATH, "own.ended");
    }

    /** Whoever found a session open guesses no faster here than at the door. */
    private void known(Account account, String typed, HttpServletRequest request, BindingResult errors) {
        String address = request.getRemoteAddr();
        TooSoon.check(limit.wait(account.name(), address));
        if (!accounts.hasPassword(account.id(), typed)) {
            limit.failed(account.name(), address);
            errors.rejectValue("now", "unknown");
        }
    }

    private View view(Page page, HttpServletRequest request, Form form, Form ending) {
        DateTimeFormatter times = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .withLocale(page.locale());
        String here = request.getSession().getId();
        List<Place> places = sessions.of(page.whoId()).stream()
                .map(s -> new Place(said(times, s.begun()), said(times, s.used()), s.id().equals(here)))
                .toList();
        return new View(form, ending, places);
    }

    private String said(DateTimeFormatter times, Instant at) {
        return times.format(at.atZone(zone));
    }
}
