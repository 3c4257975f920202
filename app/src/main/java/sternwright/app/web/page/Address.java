package sternwright.app.web.page;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.StringJoiner;

/** Addresses of a list, sorted, filtered and cut into pages. */
final class Address {
    private Address() {}

    /** The page's own address with one thing asked otherwise. */
    static String with(HttpServletRequest request, String name, String value) {
        StringJoiner asked = new StringJoiner("&", request.getRequestURI() + "?", "");
        request.getParameterMap().forEach((other, values) -> {
            if (!other.equals(name) && !other.equals(Pager.NAME) && !other.startsWith("_")) {
                for (String each : values) {
                    if (!each.isEmpty()) {
                        asked.add(pair(other, each));
                    }
                }
            }
        });
        return asked.add(pair(name, value)).toString();
    }

    private static String pair(String name, String value) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8) + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8);
    }
}
