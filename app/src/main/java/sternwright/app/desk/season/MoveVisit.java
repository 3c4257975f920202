package sternwright.app.desk.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.SeasonFolder;
import sternwright.app.files.YardFolder;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.problem.Problem;
import sternwright.season.dated.OperationName;
import sternwright.season.dated.Published;
import sternwright.season.dated.answer.DatedOperation;
import sternwright.season.dated.answer.MovedDate;
import sternwright.season.dated.event.SeasonEvent;

/** Tells what moves when somebody sets an operation of the published plan on another day. */
public final class MoveVisit {
    private MoveVisit() {}

    /**
     * What came of it.
     *
     * @param name the operation
     * @param was its day in the published plan
     * @param to the day asked for
     * @param after the season with it there; null if there is none
     * @param moves every operation that stands on another day than in the published plan, the asked one first, promised dates next
     * @param price what it costs beside the published plan as it stands, in the yard's currency; negative where a saving was found
     * @param clash why there is no such season and what would help; empty if there is one
     */
    public record Moved(
            OperationName name,
            LocalDate was,
            LocalDate to,
            @Nullable PlannedSeason after,
            List<Move> moves,
            double price,
            List<Problem> clash) {
        /** Copies the lists. */
        public Moved {
            moves = List.copyOf(moves);
            clash = List.copyOf(clash);
        }

        /** Whether there is a season with it. */
        public boolean possible() {
            return after != null;
        }
    }

    /**
     * One operation on another day.
     *
     * @param name the operation
     * @param boat as painted on the stern
     * @param was the day in the published plan
     * @param is the day now
     * @param promised whether an owner knows the old day
     * @param reason why it is on its new day
     */
    public record Move(OperationName name, String boat, LocalDate was, LocalDate is, boolean promised, String reason) {}

    /**
     * Sets an operation on a day and plans on. Nothing is written; {@link PublishSeason} does that with {@link #event}.
     *
     * @param ask what is asked
     * @param name an operation of the published plan
     * @param to the day
     * @param onlooker sees the work and may stop it
     * @return what moves and what it costs, or the clash
     * @throws BadInput if there is no published plan or no such operation in it, or it has begun
     */
    public static Moved of(SeasonAsk ask, OperationName name, LocalDate to, Onlooker onlooker) {
        return of(ask, name, to, onlooker, null);
    }

    /**
     * The same beside the published plan where that was judged already, so that no visit need be planned again.
     *
     * @param ask what is asked
     * @param name an operation of the published plan
     * @param to the day
     * @param onlooker sees the work and may stop it
     * @param judged the published plan as it was judged, null if it was not
     * @return what moves and what it costs, or the clash
     * @throws BadInput if there is no published plan or no such operation in it, or it has begun
     */
    public static Moved of(
            SeasonAsk ask, OperationName name, LocalDate to, Onlooker onlooker, @Nullable PlannedSeason judged) {
        List<Published> published = SeasonFolder.read(ask.shelf(), ask.latest()).published();
        LocalDate was = was(published, name, ask.today());
        Optional<Problem> closed = closed(ask, to);
        if (closed.isPresent()) {
            return new Moved(name, was, to, null, List.of(), 0, List.of(closed.get()));
        }
        List<SeasonEvent> events = new ArrayList<>(ask.events());
        events.add(event(name, to));
        try {
            PlannedSeason after = judged == null
                    ? PlanSeason.of(onwards(ask, events), onlooker)
                    : PlanSeason.again(judged, onwards(ask, events), onlooker);
            double price = after.dated().cost().total() - PlanSeason.standing(after, onwards(ask, ask.events()));
            return new Moved(name, was, to, after, moves(published, after, name), price, List.of());
        } catch (BadInput clash) {
            return new Moved(name, was, to, null, List.of(), 0, clash.problems());
        }
    }

    /**
     * The move as an event, for planning on and for publishing.
     *
     * @param name the operation
     * @param to the day
     * @return the event
     */
    public static SeasonEvent event(OperationName name, LocalDate to) {
        return new SeasonEvent.Moved(name, to);
    }

    private static LocalDate was(List<Published> published, OperationName name, LocalDate today) {
        LocalDate was = published.stream()
                .filter(p -> p.name().equals(name))
                .map(Published::date)
                .findFirst()
                .orElseThrow(() -> BadInput.of(
                        SeasonFolder.PLAN,
                        published.isEmpty() ? "no plan is published" : "the published plan has no " + name,
                        "an operation of the published plan",
                        published.isEmpty() ? "Plan the season and publish it first." : "Look at the board again."));
        if (was.isBefore(today)) {
            throw BadInput.of(SeasonFolder.PLAN, name + " began on " + was, "an operation still to come", "");
        }
        return was;
    }

    /** A day on which nothing can be set. */
    private static Optional<Problem> closed(SeasonAsk ask, LocalDate to) {
        String found =
                to.isBefore(ask.today()) ? to + " is past" : worksOn(ask, to) ? "" : "the yard does not work on " + to;
        return found.isEmpty()
                ? Optional.empty()
                : Optional.of(new Problem("season", 0, "", found, "", "Choose a working day to come."));
    }

    private static boolean worksOn(SeasonAsk ask, LocalDate day) {
        return YardFolder.only(ask.shelf(), List.of(), ask.latest())
                .yard()
                .calendar()
                .works(day);
    }

    private static SeasonAsk onwards(SeasonAsk ask, List<SeasonEvent> events) {
        return new SeasonAsk(
                ask.shelf(),
                ask.today(),
                ask.latest(),
                ask.to(),
                false,
                events,
                ask.seconds(),
                ask.seed(),
                ask.nanoClock());
    }

    /**
     * What stands on another day than in the plan the yard works by until now.
     *
     * @param after a season planned on from it
     * @return promised dates first, then in order of the new days
     */
    public static List<Move> moves(PlannedSeason after) {
        return moves(after.published(), after, null);
    }

    private static List<Move> moves(List<Published> published, PlannedSeason after, @Nullable OperationName asked) {
        Map<OperationName, LocalDate> before = new HashMap<>();
        published.forEach(p -> before.put(p.name(), p.date()));
        Set<OperationName> promised =
                after.dated().moved().stream().map(MovedDate::name).collect(Collectors.toSet());
        List<Move> moves = new ArrayList<>();
        for (DatedOperation o : after.dated().operations()) {
            OperationName name = o.meaning().name();
            LocalDate was = before.get(name);
            LocalDate is = o.from().toLocalDate();
            if (was != null && !was.equals(is)) {
                String reason = name.equals(asked) ? "Set on this day by hand." : o.reason();
                moves.add(new Move(name, o.meaning().boatName(), was, is, promised.contains(name), reason));
            }
        }
        moves.sort(Comparator.comparing((Move m) -> !m.name().equals(asked))
                .thenComparing(m -> !m.promised())
                .thenComparing(Move::is));
        return moves;
    }
}
