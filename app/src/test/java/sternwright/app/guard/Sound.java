package sternwright.app.guard;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.regex.Pattern;

/** What every answer must be, whatever was asked. */
final class Sound {
    private static final Pattern INSIDE = Pattern.compile(
            "\\b(?:java|jakarta|javax|org|com|sternwright|tools)\\.[a-z.]+[A-Z]\\w*(?:Exception|Error)\\b|\\n\\s+at [\\w.$]+\\(|"
                    + "SQLITE_|PSQLException|NullPointer|IndexOutOf|\\{\\d+(?:,[a-z]+)?\\}");
    private static final Pattern HEADING = Pattern.compile("<h1[^>]*>\\s*\\S");

    private Sound() {}

    /** No fault of the program, nothing of its inside, no script of a stranger; a refusal says what is wrong. */
    static void check(String asked, HttpResponse<String> answer) {
        int status = answer.statusCode();
        String body = answer.body();
        assertTrue(status < 500, asked + " was answered " + status);
        String type = answer.headers().firstValue("Content-Type").orElse("");
        var inside = INSIDE.matcher(body);
        if ((type.startsWith("text/") || type.contains("json")) && inside.find()) {
            int at = inside.start();
            // A person's own words may look like anything; the program's may not.
            assertTrue(
                    body.substring(at).startsWith("{0}") || body.substring(at).startsWith("{0,"),
                    asked + " shows the inside: " + around(body, at));
        }
        if (type.startsWith("text/html")) {
            int script = body.indexOf(Hostile.SCRIPT);
            assertTrue(script < 0, () -> asked + " shows a script: " + around(body, script));
            int picture = body.indexOf("<img src=x");
            assertTrue(picture < 0, () -> asked + " shows a picture of a stranger: " + around(body, picture));
            if (status >= 400
                    && answer.request().headers().firstValue("HX-Request").isEmpty()) {
                assertTrue(HEADING.matcher(body).find(), asked + " was refused without words: " + status);
            }
        }
        answer.headers()
                .map()
                .forEach((name, values) -> values.forEach(v -> {
                    assertFalse(v.contains("\n") || v.contains("\r"), asked + " breaks a header");
                    assertFalse(name.equals("set-cookie") && v.startsWith("x=y"), asked + " sets a stranger's cookie");
                    assertFalse(
                            name.equals("location")
                                    && (v.startsWith("//") || v.startsWith("http") && !v.contains("127.0.0.1")),
                            asked + " leads elsewhere: " + v);
                }));
    }

    private static String around(String body, int at) {
        return body.substring(Math.max(0, at - 160), Math.min(body.length(), at + 160));
    }
}
