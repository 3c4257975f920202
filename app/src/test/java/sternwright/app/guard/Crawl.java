package sternwright.app.guard;

import java.net.http.HttpResponse;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Finds every page a person can reach by links, and every form on them. */
final class Crawl {
    private static final int ALIKE = 3;

    private final Browser browser;
    private final Map<String, Integer> seenOfShape = new HashMap<>();
    private final Set<String> seen = new HashSet<>();
    private final Map<String, FoundForm> forms = new LinkedHashMap<>();
    private final List<String> pages = new ArrayList<>();

    /**
     * A form as it stands on a page.
     *
     * @param page the page
     * @param method get or post, lower case
     * @param action where it goes
     * @param multipart whether it carries a file
     * @param fields names and values as it would be sent untouched
     * @param choices what each field offers, where it does
     */
    record FoundForm(
            String page,
            String method,
            String action,
            boolean multipart,
            List<Map.Entry<String, String>> fields,
            Map<String, List<String>> choices) {
        FoundForm {
            fields = List.copyOf(fields);
            choices = Map.copyOf(choices);
        }
    }

    Crawl(Browser browser) {
        this.browser = browser;
    }

    /** Walks from a page over everything it leads to; of pages that differ in names only, some. */
    void from(String first) {
        Deque<String> open = new ArrayDeque<>(List.of(first));
        while (!open.isEmpty()) {
            String path = open.poll();
            if (!seen.add(path) || !take(path)) {
                continue;
            }
            HttpResponse<String> answer = browser.get(path);
            Sound.check("GET " + path, answer);
            pages.add(path);
            if (!answer.headers().firstValue("Content-Type").orElse("").startsWith("text/html")) {
                continue;
            }
            Document page = Jsoup.parse(answer.body(), "http://desk" + path);
            page.select("a[href],[hx-get]").forEach(a -> link(a, path, open));
            page.select("form").forEach(f -> form(f, path));
        }
    }

    /** The forms of one page. */
    static List<FoundForm> formsOf(Browser browser, String path) {
        Crawl crawl = new Crawl(browser);
        HttpResponse<String> answer = browser.get(path);
        Sound.check("GET " + path, answer);
        Jsoup.parse(answer.body(), "http://desk" + path).select("form").forEach(f -> crawl.form(f, path));
        return crawl.forms();
    }

    /**
     * Sends a form of a boat's visits. A plan proved in the meantime may be another one and is then refused: the page is
     * read again, as a person would.
     */
    static HttpResponse<String> sendOfVisits(Browser browser, String boat, String action) throws InterruptedException {
        HttpResponse<String> answer = sendOnce(browser, boat, action);
        for (int i = 0; answer.statusCode() == 409 && i < 60; i++) {
            Thread.sleep(500);
            answer = sendOnce(browser, boat, action);
        }
        return answer;
    }

    private static HttpResponse<String> sendOnce(Browser browser, String boat, String action) {
        FoundForm form = formsOf(browser, "/visits/" + boat).stream()
                .filter(f -> f.method().equals("post") && f.action().equals(action))
                .findFirst()
                .orElseThrow();
        return browser.postWith(action, browser.csrf(form.page()), form.fields());
    }

    private boolean take(String path) {
        return seenOfShape.merge(shape(path), 1, Integer::sum) <= ALIKE;
    }

    /** A path without the names in it, and with the names of what it asks. */
    static String shape(String path) {
        String[] halves = path.split("[?]", 2);
        String bare = halves[0]
                .replaceAll("/[^/]*\\d[^/]*", "/*")
                .replaceAll("^/(boats|visits|protection|cards|estimates)/[^/]+", "/$1/*");
        String asks = halves.length < 2
                ? ""
                : List.of(halves[1].split("&")).stream()
                        .map(q -> q.replaceFirst("=.*", ""))
                        .distinct()
                        .sorted()
                        .reduce("", (a, b) -> a + "&" + b);
        return bare + "?" + asks;
    }

    private static void link(Element a, String from, Deque<String> open) {
        String to = a.hasAttr("href") ? a.absUrl("href") : a.absUrl("hx-get");
        if (to.startsWith("http://desk/") && !to.contains("/sign-out")) {
            open.add(
                    to.substring("http://desk".length()).replaceFirst("#.*", "").replace(" ", "%20"));
        }
    }

    private void form(Element form, String page) {
        String method =
                form.attr("method").isEmpty() ? "get" : form.attr("method").toLowerCase(java.util.Locale.ROOT);
        String action = form.hasAttr("action") ? form.absUrl("action") : "http://desk" + page;
        List<Map.Entry<String, String>> fields = new ArrayList<>();
        Map<String, List<String>> choices = new HashMap<>();
        for (Element e : form.select("input,select,textarea,button[name]")) {
            String name = e.attr("name");
            if (!name.isEmpty() && !name.equals("_csrf")) {
                fields.add(Map.entry(name, value(e)));
                if (e.tagName().equals("select")) {
                    choices.put(name, e.select("option").eachAttr("value"));
                }
            }
        }
        for (Element other : form.select("button[formaction]")) {
            String to = other.attr("formaction");
            forms.putIfAbsent(method + " " + shape(to), new FoundForm(page, method, to, false, fields, choices));
        }
        String path = action.substring("http://desk".length());
        if (path.equals("/sign-out") || path.equals("/look")) {
            return;
        }
        String key = method + " " + shape(path) + " "
                + fields.stream()
                        .map(f -> f.getKey().replaceAll("\\d+", "#"))
                        .distinct()
                        .sorted()
                        .toList();
        forms.putIfAbsent(
                key, new FoundForm(page, method, path, form.attr("enctype").contains("multipart"), fields, choices));
    }

    private static String value(Element e) {
        return switch (e.tagName()) {
            case "select" -> {
                Element chosen = e.selectFirst("option[selected]");
                Element first = e.selectFirst("option[value]:not([value=''])");
                yield chosen != null ? chosen.attr("value") : first == null ? "" : first.attr("value");
            }
            case "textarea" -> e.wholeText();
            default -> e.attr("value");
        };
    }

    List<FoundForm> forms() {
        return List.copyOf(forms.values());
    }

    List<String> pages() {
        return pages;
    }
}
