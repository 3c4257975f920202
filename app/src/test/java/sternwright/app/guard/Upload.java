package sternwright.app.guard;

import java.io.ByteArrayOutputStream;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Forms that carry a file (RFC 7578). */
final class Upload {
    private static final String EDGE = "edge-of-a-part";

    private Upload() {}

    /** A file for a boat's documents. */
    static HttpResponse<String> send(Browser browser, String boat, String name, String type, String content) {
        return send(browser, boat, name, type, content.getBytes(StandardCharsets.UTF_8));
    }

    static HttpResponse<String> send(Browser browser, String boat, String name, String type, byte[] content) {
        String page = "/boats/" + boat + "/documents";
        return send(browser, page, List.of(Map.entry("_csrf", browser.csrf(page))), "file", name, type, content);
    }

    /** A form with fields as given; the field called file carries its text as a file. */
    static HttpResponse<String> fields(Browser browser, Crawl.FoundForm form, List<Map.Entry<String, String>> fields) {
        List<Map.Entry<String, String>> plain = new ArrayList<>(fields);
        String file = plain.stream()
                .filter(f -> f.getKey().equals("file"))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("");
        plain.removeIf(f -> f.getKey().equals("file"));
        plain.add(Map.entry("_csrf", browser.csrf("/settings/tokens")));
        return send(browser, form.action(), plain, "file", file, "text/csv", file.getBytes(StandardCharsets.UTF_8));
    }

    static HttpResponse<String> send(
            Browser browser,
            String path,
            List<Map.Entry<String, String>> fields,
            String field,
            String fileName,
            String type,
            byte[] content) {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        fields.forEach(f -> put(
                body,
                "--" + EDGE + "\r\nContent-Disposition: form-data; name=\"" + plain(f.getKey()) + "\"\r\n\r\n"
                        + f.getValue() + "\r\n"));
        put(
                body,
                "--" + EDGE + "\r\nContent-Disposition: form-data; name=\"" + field + "\"; filename=\""
                        + plain(fileName) + "\"\r\nContent-Type: " + type + "\r\n\r\n");
        body.writeBytes(content);
        put(body, "\r\n--" + EDGE + "--\r\n");
        return browser.send(browser.to(path)
                .header("Content-Type", "multipart/form-data; boundary=" + EDGE)
                .POST(BodyPublishers.ofByteArray(body.toByteArray())));
    }

    /** As browsers write a name in a header. */
    private static String plain(String name) {
        return name.replace("\"", "%22").replace("\r", "%0D").replace("\n", "%0A");
    }

    private static void put(ByteArrayOutputStream body, String text) {
        body.writeBytes(text.getBytes(StandardCharsets.UTF_8));
    }
}
