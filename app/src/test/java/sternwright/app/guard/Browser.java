package sternwright.app.guard;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.CookiePolicy;
import java.net.HttpCookie;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.net.ssl.SSLContext;
import org.jspecify.annotations.Nullable;

/** A browser without a screen: keeps cookies, sends forms with their secret, follows nothing by itself. */
final class Browser {
    private static final Pattern CSRF = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

    private final CookieManager cookies = new CookieManager(null, CookiePolicy.ACCEPT_ALL);
    private final String address;
    private final HttpClient client;

    /** Opens it on a program whose address ends with a slash. */
    Browser(String address, @Nullable SSLContext trust) {
        this.address = address;
        HttpClient.Builder builder =
                HttpClient.newBuilder().cookieHandler(cookies).followRedirects(HttpClient.Redirect.NEVER);
        this.client = (trust == null ? builder : builder.sslContext(trust)).build();
    }

    Browser(String address) {
        this(address, null);
    }

    HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(URI.create(address + path.replaceFirst("^/", "")));
    }

    HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), BodyHandlers.ofString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    HttpResponse<String> get(String path) {
        return send(to(path));
    }

    /** Sends a form with the secret of the page that holds one. */
    HttpResponse<String> post(String path, String formPage, Map<String, String> fields) {
        return post(path, secret(formPage), fields);
    }

    HttpResponse<String> postWith(String path, String csrf, List<Map.Entry<String, String>> fields) {
        List<Map.Entry<String, String>> all = new ArrayList<>(fields);
        all.add(Map.entry("_csrf", csrf));
        return send(to(path).header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(encoded(all))));
    }

    private HttpResponse<String> post(String path, Csrf csrf, Map<String, String> fields) {
        return postWith(path, csrf.token(), List.copyOf(fields.entrySet()));
    }

    private record Csrf(String token) {}

    private Csrf secret(String page) {
        return new Csrf(csrf(page));
    }

    /** The secret of the forms of a page; empty if the page has none. */
    String csrf(String page) {
        Matcher m = CSRF.matcher(get(page).body());
        return m.find() ? m.group(1) : "";
    }

    HttpResponse<String> signIn(String name, String password) {
        return post("sign-in", "sign-in", Map.of("name", name, "password", password));
    }

    List<HttpCookie> cookies() {
        return cookies.getCookieStore().getCookies();
    }

    /** The session cookie as it is sent, empty if there is none. */
    String session() {
        return cookies().stream()
                .filter(c -> c.getName().endsWith("sternwright"))
                .map(HttpCookie::getValue)
                .findFirst()
                .orElse("");
    }

    void forget() {
        cookies.getCookieStore().removeAll();
    }

    static String encoded(List<Map.Entry<String, String>> fields) {
        return fields.stream()
                .map(f -> URLEncoder.encode(f.getKey(), StandardCharsets.UTF_8) + "="
                        + URLEncoder.encode(f.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }
}
