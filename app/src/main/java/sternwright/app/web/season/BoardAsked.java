package sternwright.app.web.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.app.web.page.Pager;
import sternwright.app.web.page.TypedDay;
import sternwright.season.dated.answer.DatedOperation.State;
import sternwright.season.dated.answer.DatedSeason;
import sternwright.season.dated.answer.DatedVisit;
import sternwright.season.dated.answer.Load;

/**
 * To what a board is narrowed, as its address says it.
 *
 * @param resource kind and name, such as {@code HOIST:Travel hoist}; empty for all
 * @param boat letters of a boat's name; empty for all
 * @param from first day shown, null for the first of the season
 * @param to last day shown, null for the last of the season
 * @param open only boats that are not as wished
 * @param number which stretch of boats
 * @param fill which stretch of hoists, places and people
 */
record BoardAsked(
        String resource,
        String boat,
        @Nullable LocalDate from,
        @Nullable LocalDate to,
        boolean open,
        int number,
        int fill) {
    /** Name of the stretch of hoists, places and people in an address. */
    static final String FILL = "fill";

    private static final int LEAST_DAYS = 13;

    static BoardAsked of(Map<String, String> sent) {
        return new BoardAsked(
                sent.getOrDefault("resource", "").strip(),
                sent.getOrDefault("boat", "").strip(),
                TypedDay.of(sent.getOrDefault("from", "")).orElse(null),
                TypedDay.of(sent.getOrDefault("to", "")).orElse(null),
                sent.getOrDefault("open", "").equals("true"),
                number(sent.getOrDefault(Pager.NAME, "1")),
                number(sent.getOrDefault(FILL, "1")));
    }

    private static int number(String typed) {
        return typed.matches("\\d{1,6}") ? Integer.parseInt(typed) : 1;
    }

    /** One boat and her days. */
    static BoardAsked ofBoat() {
        return new BoardAsked("", "", null, null, false, 1, 1);
    }

    boolean narrowed() {
        return !resource.isEmpty() || !boat.isEmpty() || from != null || to != null || open;
    }

    /** First day shown: within the season, and no later than a fortnight before its end. */
    LocalDate first(DatedSeason season) {
        LocalDate asked = from == null ? season.from() : from;
        LocalDate latest = season.to().minusDays(LEAST_DAYS);
        LocalDate day = asked.isAfter(latest) ? latest : asked;
        return day.isBefore(season.from()) ? season.from() : day;
    }

    /** Last day shown: at least a fortnight after the first. */
    LocalDate last(DatedSeason season) {
        LocalDate least = first(season).plusDays(LEAST_DAYS);
        LocalDate asked = to == null || to.isAfter(season.to()) ? season.to() : to;
        return asked.isBefore(least) ? least : asked;
    }

    List<DatedVisit> visits(DatedSeason season) {
        LocalDate first = first(season);
        LocalDate last = last(season);
        String letters = boat.toLowerCase(Locale.ROOT);
        return season.visits().stream()
                .filter(v -> letters.isEmpty()
                        || v.boatName().toLowerCase(Locale.ROOT).contains(letters))
                .filter(v -> !v.until().toLocalDate().isBefore(first)
                        && !v.from().toLocalDate().isAfter(last))
                .filter(v -> !open || v.state().compareTo(State.LATE) >= 0)
                .filter(this::uses)
                .toList();
    }

    private boolean uses(DatedVisit visit) {
        int colon = resource.indexOf(':');
        String name = resource.substring(colon + 1);
        return switch (resource.substring(0, Math.max(0, colon))) {
            case "HOIST" -> visit.operations().stream().anyMatch(o -> o.hoist().equals(name));
            case "PERSON" ->
                visit.operations().stream().anyMatch(o -> o.people().contains(name));
            case "PLACES" -> visit.placeClass().equals(name);
            default -> true;
        };
    }

    /** The loads of what is shown: all, or the one resource. */
    List<Load> loads(DatedSeason season) {
        int colon = resource.indexOf(':');
        if (colon < 0) {
            return season.loads();
        }
        String kind = resource.substring(0, colon);
        String name = resource.substring(colon + 1);
        return season.loads().stream()
                .filter(l -> l.kind().name().equals(kind)
                        && (l.name().equals(name)
                                || l.kind() == Load.Kind.PLACES && l.name().startsWith(name)))
                .toList();
    }
}
