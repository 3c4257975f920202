package sternwright.app.web.settings;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import sternwright.app.account.ApiTokens;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SignedIn;
import sternwright.app.web.access.ForAll;
import sternwright.app.web.page.Field;
import sternwright.app.web.page.Form;
import sternwright.app.web.page.Missing;
import sternwright.app.web.page.Page;
import sternwright.app.web.page.Section;

/** A person's own tokens: made, shown once, withdrawn. */
@Controller
@ForAll
public class TokensPage {
    private static final String TOKENS = "/settings/tokens";

    private final ApiTokens tokens;
    private final AuditTrail audit;
    private final ZoneId zone;

    TokensPage(ApiTokens tokens, AuditTrail audit, Clock clock) {
        this.tokens = tokens;
        this.audit = audit;
        this.zone = clock.getZone();
    }

    /**
     * A token as asked for.
     *
     * @param name what it is for
     * @param kind what it opens
     */
    record Typed(
            @NotBlank @Size(max = 80) String name, @NotNull ApiTokens.Kind kind) {}

    /**
     * One line of the list.
     *
     * @param id the token
     * @param name what it is for
     * @param kind what it opens, in words
     * @param made when
     * @param expires when it stops working
     * @param used the last day it was used, in words
     */
    public record Line(String id, String name, String kind, String made, String expires, String used) {}

    /**
     * The list and the form that adds to it.
     *
     * @param lines the tokens
     * @param form the form
     * @param kinds what a token may open
     */
    public record View(List<Line> lines, Form form, List<Field.Choice> kinds) {
        /** Copies the lists. */
        public View {
            lines = List.copyOf(lines);
            kinds = List.copyOf(kinds);
        }
    }

    /**
     * A token just made.
     *
     * @param name what it is for
     * @param secret shown this once
     * @param addresses where it is used
     */
    public record Made(String name, String secret, List<String> addresses) {
        /** Copies the list. */
        public Made {
            addresses = List.copyOf(addresses);
        }
    }

    @GetMapping(TOKENS)
    ModelAndView list(Page page, @AuthenticationPrincipal SignedIn person) {
        return page.show(Section.SETTINGS, "settings/tokens", view(page, person, Form.blank(page, "tokens")));
    }

    /** The token is on the answer itself, once; it is in no address and no log. */
    @PostMapping(TOKENS)
    ModelAndView make(
            Page page,
            @AuthenticationPrincipal SignedIn person,
            @Valid @ModelAttribute("typed") Typed typed,
            BindingResult errors) {
        if (errors.hasErrors()) {
            View view = view(page, person, Form.typed(page, "tokens", errors));
            return page.wrong(Section.SETTINGS, "settings/tokens", view);
        }
        String secret = tokens.make(person.id(), typed.kind(), typed.name());
        audit.note("token.made", typed.name(), typed.kind().name());
        String root = ServletUriComponentsBuilder.fromCurrentContextPath().toUriString();
        List<String> addresses = typed.kind() == ApiTokens.Kind.PROGRAM
                ? List.of(root + "/api/openapi", root + "/api/boats")
                : List.of(
                        root + "/calendar/" + secret + "/people/NAME.ics",
                        root + "/calendar/" + secret + "/boats/ID.ics");
        return page.show(Section.SETTINGS, "settings/token-made", new Made(typed.name(), secret, addresses));
    }

    @PostMapping(TOKENS + "/{id}/withdraw")
    ModelAndView withdraw(Page page, @AuthenticationPrincipal SignedIn person, @PathVariable("id") String id) {
        String name = tokens.of(person.id()).stream()
                .filter(t -> t.id().equals(id))
                .map(ApiTokens.Token::name)
                .findFirst()
                .orElseThrow(() -> new Missing("tokens.one"));
        tokens.withdraw(person.id(), id);
        audit.note("token.withdrawn", name, "");
        return page.go(TOKENS, "tokens.withdrawn", name);
    }

    private View view(Page page, SignedIn person, Form form) {
        List<Field.Choice> kinds = Arrays.stream(ApiTokens.Kind.values())
                .map(k -> new Field.Choice(k.name(), kind(page, k)))
                .toList();
        return new View(tokens.of(person.id()).stream().map(t -> line(page, t)).toList(), form, kinds);
    }

    private Line line(Page page, ApiTokens.Token token) {
        return new Line(
                token.id(),
                token.name(),
                kind(page, token.kind()),
                day(page, day(token.createdAt())),
                day(page, day(token.expiresAt())),
                token.usedOn() == null ? page.say("tokens.never") : day(page, token.usedOn()));
    }

    private static String kind(Page page, ApiTokens.Kind kind) {
        return page.say("tokens.kind." + kind.name());
    }

    private LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, zone);
    }

    private static String day(Page page, @Nullable LocalDate day) {
        return day == null
                ? ""
                : DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                        .withLocale(page.locale())
                        .format(day);
    }
}
