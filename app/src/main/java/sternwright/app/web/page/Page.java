package sternwright.app.web.page;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.support.RequestContextUtils;
import org.springframework.web.servlet.view.RedirectView;
import sternwright.app.account.Role;
import sternwright.app.account.SignedIn;
import sternwright.app.paper.Figures;

/**
 * The page that a request gets: its words and formats, the person who reads it, and what the layout shows around the
 * content. A controller takes it as an argument and ends with {@link #show} or {@link #go}.
 */
public final class Page {
    private final HttpServletRequest request;
    private final Words words;
    private final Figures figures;
    private final PageFrame frame;
    private Section section = Section.NONE;

    @Nullable
    private Figures inYardUnits;

    @Nullable
    private YardSign sign;

    Page(HttpServletRequest request, PageFrame frame) {
        this.request = request;
        this.frame = frame;
        this.figures = Figures.of(request.getLocale());
        this.words = Words.of(figures.locale());
    }

    /**
     * Shows a template.
     *
     * @param chapter which entry of the index is marked
     * @param template name under {@code jte/web} without ending, such as {@code boats/list}
     * @param model what it shows, its parameter {@code m}
     * @return what a controller returns
     */
    public ModelAndView show(Section chapter, String template, Object model) {
        this.section = chapter;
        return new ModelAndView(frame.view("web/" + template + ".jte", Map.of("page", this, "m", model)));
    }

    /**
     * Shows a template that has no model of its own.
     *
     * @param chapter which entry of the index is marked
     * @param template name under {@code jte/web} without ending
     * @return what a controller returns
     */
    public ModelAndView show(Section chapter, String template) {
        this.section = chapter;
        return new ModelAndView(frame.view("web/" + template + ".jte", Map.of("page", this)));
    }

    /**
     * Shows a template again because what was sent cannot be taken as it is; the status says so to programs.
     *
     * @param chapter which entry of the index is marked
     * @param template name under {@code jte/web} without ending
     * @param model what it shows
     * @return what a controller returns
     */
    public ModelAndView wrong(Section chapter, String template, Object model) {
        ModelAndView shown = show(chapter, template, model);
        shown.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
        return shown;
    }

    /**
     * The same for a template that has no model of its own.
     *
     * @param chapter which entry of the index is marked
     * @param template name under {@code jte/web} without ending
     * @return what a controller returns
     */
    public ModelAndView wrong(Section chapter, String template) {
        ModelAndView shown = show(chapter, template);
        shown.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
        return shown;
    }

    /**
     * Says that somebody else changed the same thing in between; nothing was written.
     *
     * @param chapter which entry of the index is marked
     * @param path where the thing can be looked at as it is now
     * @param name what it is called
     * @return what a controller returns
     */
    public ModelAndView conflict(Section chapter, String path, String name) {
        ModelAndView shown = show(chapter, "page/conflict", new Conflict(path, name));
        shown.setStatus(HttpStatus.CONFLICT);
        return shown;
    }

    /**
     * What the page of a conflict shows.
     *
     * @param path where the thing can be looked at as it is now
     * @param name what it is called
     */
    public record Conflict(String path, String name) {}

    /**
     * Goes to another page after something was done, so that loading it again does nothing twice.
     *
     * @param path a path of this program
     * @param key the words to say there, empty for none
     * @param values what fills their places
     * @return what a controller returns
     */
    public ModelAndView go(String path, String key, Object... values) {
        if (!key.isEmpty()) {
            RequestContextUtils.getOutputFlashMap(request)
                    .put(
                            Notice.NAME,
                            new Notice(
                                    key,
                                    Arrays.stream(values).map(String::valueOf).toList()));
        }
        RedirectView view = new RedirectView(path, true, false, false);
        view.setStatusCode(HttpStatus.SEE_OTHER);
        return new ModelAndView(view);
    }

    /**
     * A text of the pages.
     *
     * @param key its key
     * @param values what fills its places
     * @return the text
     */
    public String say(String key, Object... values) {
        return words.say(key, values);
    }

    /**
     * The words themselves.
     *
     * @return in the reader's language
     */
    public Words words() {
        return words;
    }

    /**
     * Numbers, dates and money in the reader's formats, quantities in the units the yard works in.
     *
     * @return the formats
     */
    public Figures figures() {
        Figures known = inYardUnits;
        if (known == null) {
            known = figures.in(yard().units());
            inYardUnits = known;
        }
        return known;
    }

    /**
     * The reader's locale.
     *
     * @return English in the formats of the reader's region
     */
    public Locale locale() {
        return figures.locale();
    }

    /**
     * What the last deed left to say.
     *
     * @return the text, empty if there is none
     */
    public Optional<String> notice() {
        Map<String, ?> handed = RequestContextUtils.getInputFlashMap(request);
        return handed != null && handed.get(Notice.NAME) instanceof Notice notice
                ? Optional.of(say(notice.key(), notice.values().toArray()))
                : Optional.empty();
    }

    /**
     * The person who reads.
     *
     * @return empty before signing in
     */
    public Optional<SignedIn> person() {
        return request.getUserPrincipal() instanceof Authentication signed
                        && signed.getPrincipal() instanceof SignedIn p
                ? Optional.of(p)
                : Optional.empty();
    }

    /**
     * Name of the person who reads, as it is written beside what this person does.
     *
     * @return empty before signing in
     */
    public String who() {
        return person().map(SignedIn::fullName).orElse("");
    }

    /**
     * Account of the person who reads.
     *
     * @return empty before signing in
     */
    public String whoId() {
        return person().map(SignedIn::id).orElse("");
    }

    /**
     * Whether the reader has one of these roles. What a page offers is asked here; what it does is guarded again at the
     * controller.
     *
     * @param roles the roles
     * @return false before signing in
     */
    public boolean may(Role... roles) {
        return person().map(p -> List.of(roles).contains(p.role())).orElse(false);
    }

    /**
     * The secret that a form sends back.
     *
     * @return the token, empty only where the program runs without its guards
     */
    public String csrf() {
        return token().map(CsrfToken::getToken).orElse("");
    }

    /**
     * Headers for requests that the page makes by itself.
     *
     * @return JSON
     */
    public String csrfHeaders() {
        return token().map(t -> "{\"" + t.getHeaderName() + "\":\"" + t.getToken() + "\"}")
                .orElse("{}");
    }

    private Optional<CsrfToken> token() {
        return Optional.ofNullable((CsrfToken) request.getAttribute(CsrfToken.class.getName()));
    }

    /**
     * Address of a file that travels with the program.
     *
     * @param name such as {@code desk.css}
     * @return its path; it changes when the file does
     */
    public String asset(String name) {
        return frame.asset(name);
    }

    /**
     * The chapters that have a page.
     *
     * @return in the order of the index
     */
    public List<Section> index() {
        return frame.index();
    }

    /**
     * The chapter that is open.
     *
     * @return none for pages outside the index
     */
    public Section section() {
        return section;
    }

    /**
     * The yard.
     *
     * @return its sign; an empty name while its files cannot be read
     */
    public YardSign yard() {
        YardSign known = sign;
        if (known == null) {
            known = frame.yard();
            sign = known;
        }
        return known;
    }

    /**
     * How light the page is.
     *
     * @return as chosen in this browser
     */
    public Look look() {
        return Look.of(request);
    }

    /**
     * Path of the page, for forms that come back to it.
     *
     * @return without the part after the question mark
     */
    public String path() {
        return Objects.requireNonNullElse(request.getRequestURI(), "/");
    }

    /**
     * What was typed into a field.
     *
     * @param name the field
     * @return null if the request has no such field
     */
    public @Nullable String typed(String name) {
        return request.getParameter(name);
    }

    /**
     * This page's address with one thing asked otherwise; the rest of the question stays, save the place in the list.
     *
     * @param name what is asked otherwise
     * @param value how
     * @return a relative address
     */
    public String with(String name, String value) {
        return Address.with(request, name, value);
    }
}
