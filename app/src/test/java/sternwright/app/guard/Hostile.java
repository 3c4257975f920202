package sternwright.app.guard;

import java.util.List;
import java.util.Random;

/** What nobody types by mistake, and much that people do. */
final class Hostile {
    /** A script that would run if a page showed it as it came. */
    static final String SCRIPT = "<script>alert(1)</script>";

    private static final List<String> WORDS = List.of(
            "",
            " ",
            "0",
            "-1",
            "1",
            "true",
            "null",
            "NaN",
            "Infinity",
            "-Infinity",
            "1e999",
            "1e-999",
            "0x10",
            "1,5",
            "99999999999999999999999999",
            "2147483648",
            "-2147483649",
            "9223372036854775808",
            "2026-02-30",
            "0000-00-00",
            "9999-12-31",
            "+999999999-12-31",
            "-999999999-01-01",
            "2026-11-25T00:00:00Z",
            "2026-13",
            SCRIPT,
            "\"><img src=x onerror=alert(1)>",
            "';alert(1)//",
            "javascript:alert(1)",
            "' or '1'='1",
            "'; drop table account; --",
            "\" or 1=1 --",
            "1) or (1=1",
            "../../../etc/passwd",
            "..\\..\\windows\\win.ini",
            "/etc/passwd",
            "file:///etc/passwd",
            "http://example.invalid/",
            "//example.invalid/",
            "%00",
            "%2e%2e%2f",
            "a\u0000b",
            "a\r\nSet-Cookie: x=y",
            "a\nb: c\n- d",
            "\u0007\u001b[31m",
            "\u202egnp.exe",
            "\ufeff\u200b",
            "\ud83d\udea4",
            "\ud800",
            "${7*7}",
            "#{7*7}",
            "*{7*7}",
            "{0}",
            "{",
            "'{0}'",
            "%s%n%x",
            "[]",
            "{\"a\":1}",
            "!!java.net.URL [\"http://example.invalid\"]",
            "&a [*a, *a]",
            "=cmd|'/c calc'!A1",
            "work:a/b:c:2026-13.afloat:none",
            "a/b/c",
            "a".repeat(300),
            "9".repeat(400),
            "x".repeat(20_000));

    private final Random random;

    Hostile(long seed) {
        this.random = new Random(seed);
    }

    /** One of them. */
    String word() {
        return WORDS.get(random.nextInt(WORDS.size()));
    }

    /** One that can stand in a path. */
    String short100() {
        String word = word();
        return word.length() > 400 ? word.substring(0, 400) : word;
    }

    <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    boolean chance(double share) {
        return random.nextDouble() < share;
    }

    int below(int bound) {
        return random.nextInt(bound);
    }
}
