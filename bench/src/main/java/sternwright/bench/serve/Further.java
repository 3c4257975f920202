package sternwright.bench.serve;

import java.util.List;
import java.util.Map;

/** What is asked of a pattern: the plain page, and where it is a list its orders, searches and a late stretch. */
final class Further {
    private static final List<String> PLAIN = List.of("");
    private static final String CAMPAIGN = "?rule=%s&years=5&by=2027-01-31";

    private Further() {}

    static List<String> of(String pattern, Map<String, String> known) {
        String find = "?find=" + known.get("find");
        String rule = known.getOrDefault("rule", "");
        return switch (pattern) {
            case "/boats" -> List.of("", "?page=40", "?sort=-overdue", find);
            case "/due" ->
                List.of(
                        "",
                        "?page=40",
                        "?sort=boat",
                        "?sort=-work",
                        "?state=all",
                        "?state=all&sort=boat&page=400",
                        find,
                        "?rule=" + rule,
                        "?place=ashore&half=lay-up");
            case "/due/campaign" -> List.of("", CAMPAIGN.formatted(rule));
            case "/due/campaign.csv", "/due/campaign.pdf", "/api/campaign/letters" -> List.of(CAMPAIGN.formatted(rule));
            case "/api/campaign" -> List.of("?rule=" + rule + "&months=60");
            case "/visits" -> List.of("", "?page=20", "?sort=boat", find);
            case "/protection" -> List.of("", "?page=20", find);
            case "/api/boats" -> List.of("", find);
            case "/api/due" -> List.of("", "?rule=" + rule + "&page=2", "?boat=" + known.get("boat"));
            case "/boats/{id}/record/judge" -> List.of("?key=none&reading=none&field=none");
            case "/season" -> List.of("", "?open=true", "?boat=" + known.get("find"));
            case "/season/move" -> List.of("?" + known.getOrDefault("move", ""));
            default -> PLAIN;
        };
    }
}
