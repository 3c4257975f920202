package sternwright.app.web.page;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Locale;
import java.util.stream.Stream;

/** How light the pages are; kept in a cookie of the browser, for it belongs to the screen and not to the person. */
public enum Look {
    /** As the screen is set. */
    AUTO,
    /** Ink on paper. */
    LIGHT,
    /** For the dark. */
    DARK;

    /** Name of the cookie. */
    static final String COOKIE = "look";

    /** The look asked for by a browser. */
    static Look of(HttpServletRequest request) {
        Cookie[] cookies = request.getCookies();
        return cookies == null
                ? AUTO
                : Stream.of(cookies)
                        .filter(c -> c.getName().equals(COOKIE))
                        .map(c -> of(c.getValue()))
                        .findFirst()
                        .orElse(AUTO);
    }

    /** The look of a word; the screen's own if the word is none of them. */
    static Look of(String word) {
        return Stream.of(values())
                .filter(l -> l.word().equals(word))
                .findFirst()
                .orElse(AUTO);
    }

    /**
     * As it stands in the cookie and in the page.
     *
     * @return such as {@code dark}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
