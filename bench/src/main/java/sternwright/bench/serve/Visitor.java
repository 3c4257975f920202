package sternwright.bench.serve;

import java.io.IOException;
import java.net.HttpURLConnection;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds what stands in the yard, so that every address pattern can be asked about something real. */
final class Visitor {
    private static final Pattern PLACE = Pattern.compile("\\{([a-z]+)}");
    private static final int PLANNING_S = 600;

    private final Desk desk;
    private final Map<String, String> known = new LinkedHashMap<>();

    private Visitor(Desk desk) {
        this.desk = desk;
    }

    /** Looks round; with a season, one is planned and published first if there is none. */
    static Visitor of(Desk desk, int boats, boolean season) throws IOException, InterruptedException {
        Visitor visitor = new Visitor(desk);
        if (season && desk.get("/season/papers").statusCode() == 404) {
            visitor.planSeason();
        }
        if (season) {
            visitor.awaitJudges();
        }
        visitor.look(boats);
        if (season) {
            visitor.awaitRun();
            TimeUnit.SECONDS.sleep(ServeBench.REST_S);
        }
        return visitor;
    }

    private void look(int boats) throws IOException, InterruptedException {
        String boat = Desk.first(
                desk.get("/api/boats?size=1&page=" + Math.max(1, boats / 2)).body(), "\"boat-id\":\"([^\"]+)\"");
        if (boat.isEmpty()) {
            throw new IOException("the yard shows no boat to a program with a token");
        }
        known.put("boat", boat);
        known.put("find", boat.substring(0, 2));
        known.put("arrangement", link("/boats/new", "/boats/new/([a-z-]+)"));
        known.put("rule", link("/settings/programmes", "/settings/programmes/([a-z0-9-]+)\""));
        known.put("key", link("/boats/" + boat + "/history", "/history/strike/([^\"?]+)"));
        known.put("person", link("/settings/people", "/settings/people/([0-9a-f-]{8,})"));
        for (String kind : List.of("crew", "hoists", "places")) {
            known.put(kind, link("/settings/resources", "/settings/" + kind + "/([^\"?]+)\""));
        }
        known.put("run", link("/season/runs", "/season/runs/([^\"/]+)\""));
        known.put("name", link("/season/papers", "/season/people/([^\"]+)\\.ics"));
        known.put("sailing", link("/season/papers", "/season/boats/([^\"]+)\\.ics"));
        known.put("move", move());
        known.put("calendar", desk.secret("CALENDAR"));
        papers(boat);
    }

    /** A card and an estimate of the boat's first visit, and something kept of her. */
    private void papers(String boat) throws IOException, InterruptedException {
        HttpResponse<String> plan = desk.get("/visits/" + boat);
        known.put("card", last(desk.submit(plan, "/cards", "/cards", Map.of())));
        HttpResponse<String> estimate = desk.submit(plan, "/cards", "/estimates", Map.of());
        known.put("estimate", last(estimate));
        String link = "/estimates/" + last(estimate) + "/link";
        known.put(
                "secret", Desk.first(desk.submit(estimate, link, link, Map.of()).body(), "/estimate/([^<\"/]+)<"));
        known.put("document", desk.kept(boat));
    }

    private static String last(HttpResponse<?> answer) {
        String path = answer.uri().getPath();
        return answer.statusCode() == 200 ? path.substring(path.lastIndexOf('/') + 1) : "";
    }

    private String link(String page, String pattern) throws IOException, InterruptedException {
        return Desk.first(desk.get(page).body(), pattern);
    }

    private String move() throws IOException, InterruptedException {
        String boat = known.getOrDefault("sailing", "");
        return boat.isEmpty()
                ? ""
                : link("/season/boats/" + boat, "/season/move\\?([^\"]+)\"").replace("&amp;", "&");
    }

    private void planSeason() throws IOException, InterruptedException {
        HttpResponse<String> run =
                desk.submit(desk.get("/season/runs"), "/season/runs", "/season/runs", Map.of("seconds", "10"));
        String address = run.uri().getPath();
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PLANNING_S);
        HttpResponse<String> now = desk.get(address);
        while (!now.body().contains(address + "/publish") && System.nanoTime() < end) {
            TimeUnit.SECONDS.sleep(1);
            now = desk.get(address);
        }
        HttpResponse<String> done = desk.submit(now, address + "/publish", address + "/publish", Map.of());
        ServeBench.say("season planned and published: %s, status %d", address, done.statusCode());
    }

    /** The plan is looked through against the yard behind the pages: they are measured as they are on all other days. */
    private void awaitJudges() throws IOException, InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PLANNING_S);
        while (desk.get("/api/season/board").body().contains("\"standing\":\"JUDGING\"") && System.nanoTime() < end) {
            TimeUnit.SECONDS.sleep(2);
        }
    }

    /** The same for the run that was published: whoever looks at it for the first time sets it off. */
    private void awaitRun() throws IOException, InterruptedException {
        String moves = "/api/season/runs/" + known.getOrDefault("run", "") + "/moves";
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PLANNING_S);
        while (desk.get(moves).statusCode() == HttpURLConnection.HTTP_UNAVAILABLE && System.nanoTime() < end) {
            TimeUnit.SECONDS.sleep(2);
        }
    }

    /** What stands for a name of a pattern; empty if the yard has nothing of it. */
    private String value(String pattern, String name) {
        String of = pattern.replaceFirst("^/api", "");
        String what = name;
        if (name.equals("id")) {
            what = of.startsWith("/cards")
                    ? "card"
                    : of.startsWith("/estimates")
                            ? "estimate"
                            : of.startsWith("/settings/people")
                                    ? "person"
                                    : of.startsWith("/settings/")
                                            ? of.split("/")[2]
                                            : of.startsWith("/season/runs") ? "run" : "boat";
        } else if (name.equals("token")) {
            what = "calendar";
        } else if (name.equals("boat")
                && of.startsWith("/season")
                && !known.getOrDefault("sailing", "").isEmpty()) {
            what = "sailing";
        }
        return known.getOrDefault(what, "");
    }

    /** Addresses by pattern: at least one of each, and of lists their further stretches, orders and searches. */
    List<Address> addresses(Set<String> patterns) {
        List<Address> all = new ArrayList<>();
        for (String pattern : patterns) {
            String path = filled(pattern);
            if (path.isEmpty()) {
                all.add(new Address(pattern, "", "the yard has nothing for it"));
            } else {
                Further.of(pattern, known).forEach(more -> all.add(new Address(pattern, path + more, "")));
            }
        }
        return all;
    }

    /**
     * Something to ask for.
     *
     * @param pattern as the controller says it
     * @param path what is asked; empty if nothing can be
     * @param why why nothing can be asked
     */
    record Address(String pattern, String path, String why) {}

    private String filled(String pattern) {
        Matcher place = PLACE.matcher(pattern);
        StringBuilder path = new StringBuilder();
        while (place.find()) {
            String value = pattern.startsWith("/password") ? "" : value(pattern, place.group(1));
            if (value.isEmpty()) {
                return "";
            }
            place.appendReplacement(path, Matcher.quoteReplacement(value));
        }
        return place.appendTail(path).toString();
    }
}
