package sternwright.app.web.visits;

import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sternwright.boat.PartRef;
import sternwright.service.Place;
import sternwright.visit.planned.HandChange;
import sternwright.visit.planned.VisitAt;

/** Changes of a plan as they stand in an address, one after the other; nothing is kept until the plan is accepted. */
final class HandChanges {
    /** A visit in none: the work is left, the visit is not held. */
    static final String NONE = "none";

    private static final String AT = "[0-9]{4}-[0-9]{2}\\.(?:afloat|ashore)";
    private static final Pattern WORK =
            Pattern.compile("work:([^:/]+)/([^:/]+):([^:/]+):(" + AT + "):(" + AT + "|none)");
    private static final Pattern VISIT = Pattern.compile("visit:(" + AT + "):(" + AT + "|none)");

    private HandChanges() {}

    /** A visit as it stands in an address. */
    static String word(VisitAt at) {
        return at.month() + "." + at.place().name().toLowerCase(Locale.ROOT);
    }

    /** A work of a visit as it stands in an address. */
    static String work(PartRef part, String rule, VisitAt from) {
        return "work:" + part + ":" + rule + ":" + word(from);
    }

    /** The changes of an address; empty if one of them cannot be read. */
    static Optional<List<HandChange>> read(List<String> words) {
        List<HandChange> changes = new ArrayList<>();
        for (String word : words) {
            Optional<HandChange> change = one(word);
            if (change.isEmpty()) {
                return Optional.empty();
            }
            changes.add(change.get());
        }
        return Optional.of(changes);
    }

    private static Optional<HandChange> one(String word) {
        Matcher work = WORK.matcher(word);
        if (work.matches()) {
            PartRef part = new PartRef(work.group(1), work.group(2));
            String rule = work.group(3);
            Optional<VisitAt> to = at(work.group(5));
            return at(work.group(4))
                    .flatMap(from -> work.group(5).equals(NONE)
                            ? Optional.of(new HandChange.LeaveWork(part, rule, from))
                            : to.map(t -> new HandChange.MoveWork(part, rule, from, t)));
        }
        Matcher visit = VISIT.matcher(word);
        if (visit.matches()) {
            Optional<VisitAt> to = at(visit.group(2));
            return at(visit.group(1))
                    .flatMap(from -> visit.group(2).equals(NONE)
                            ? Optional.of(new HandChange.DropVisit(from))
                            : to.map(t -> new HandChange.MoveVisit(from, t)));
        }
        return Optional.empty();
    }

    private static Optional<VisitAt> at(String word) {
        int dot = word.indexOf('.');
        if (dot < 0) {
            return Optional.empty();
        }
        try {
            return Optional.of(new VisitAt(
                    YearMonth.parse(word.substring(0, dot)),
                    Place.valueOf(word.substring(dot + 1).toUpperCase(Locale.ROOT))));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
