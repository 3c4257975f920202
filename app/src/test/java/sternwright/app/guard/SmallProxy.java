package sternwright.app.guard;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpsConfigurator;
import com.sun.net.httpserver.HttpsServer;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.Set;
import javax.net.ssl.SSLContext;

/** A reverse proxy as it stands before the pages of a yard: it has the name and the https, and says so in its headers. */
final class SmallProxy implements AutoCloseable {
    /** Set by whoever speaks; a proxy neither hands them on nor takes them from outside. */
    private static final Set<String> OWN = Set.of(
            "host",
            "connection",
            "content-length",
            "upgrade",
            "http2-settings",
            "x-forwarded-for",
            "x-forwarded-proto",
            "x-forwarded-host",
            "x-forwarded-port");

    private final HttpsServer server;
    private final HttpClient onward = HttpClient.newHttpClient();
    private final String behind;
    private final String name;

    /** Carries what comes to it under a name to an address that ends with a slash. */
    SmallProxy(String behind, String name, SSLContext shows) throws IOException {
        this.behind = behind;
        this.name = name;
        this.server = HttpsServer.create(new InetSocketAddress("127.0.0.1", 0), 0);
        server.setHttpsConfigurator(new HttpsConfigurator(shows));
        server.createContext("/", this::carry);
        server.start();
    }

    String address() {
        return "https://127.0.0.1:" + server.getAddress().getPort() + "/";
    }

    private void carry(HttpExchange asked) throws IOException {
        HttpRequest.Builder on = HttpRequest.newBuilder(
                        URI.create(behind + asked.getRequestURI().toString().substring(1)))
                .method(
                        asked.getRequestMethod(),
                        BodyPublishers.ofByteArray(asked.getRequestBody().readAllBytes()))
                .header("X-Forwarded-For", "203.0.113.9")
                .header("X-Forwarded-Proto", "https")
                .header("X-Forwarded-Host", name)
                .header("X-Forwarded-Port", "443");
        asked.getRequestHeaders().forEach((header, values) -> {
            if (!OWN.contains(header.toLowerCase(java.util.Locale.ROOT))) {
                values.forEach(v -> on.header(header, v));
            }
        });
        try {
            HttpResponse<byte[]> answer = onward.send(on.build(), BodyHandlers.ofByteArray());
            answer.headers().map().forEach((header, values) -> {
                if (!OWN.contains(header) && !header.equals("transfer-encoding")) {
                    values.forEach(v -> asked.getResponseHeaders().add(header, v));
                }
            });
            byte[] body = answer.body();
            asked.sendResponseHeaders(answer.statusCode(), body.length == 0 ? -1 : body.length);
            if (body.length > 0) {
                asked.getResponseBody().write(body);
            }
        } catch (InterruptedException e) {
            asked.sendResponseHeaders(502, -1);
        } finally {
            asked.close();
        }
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
