package sternwright.app.desk.open;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import sternwright.app.files.packed.Days;
import sternwright.due.Clause;
import sternwright.due.Due;

/** The same dues in less memory: equal days, names, figures and words are kept once. */
final class SlimDues {
    private final Map<Object, Object> pool = new HashMap<>();
    private final Map<Clause, List<Clause>> alone = new IdentityHashMap<>();

    List<Due> of(List<Due> dues) {
        return dues.stream().map(this::of).toList();
    }

    private Due of(Due due) {
        return new Due(
                due.boatId(),
                one(due.part()),
                due.inForce(),
                due.state(),
                clauses(due.clauses()),
                Days.shared(due.dueOn()),
                Days.shared(due.earliest()),
                Days.shared(due.lastSensible()),
                day(due.lastDone()),
                figure(due.hoursAtLastDone()),
                due.lifeUsed(),
                due.timesDone());
    }

    /** One clause alone is often the same for many boats, several together hardly ever are. */
    private List<Clause> clauses(List<Clause> clauses) {
        return clauses.size() == 1
                ? alone.computeIfAbsent(clause(clauses.get(0)), List::of)
                : clauses.stream().map(this::clause).toList();
    }

    private Clause clause(Clause clause) {
        return one(new Clause(
                clause.kind(),
                Days.shared(clause.date()),
                day(clause.early80()),
                day(clause.late80()),
                clause.amount(),
                one(clause.detail())));
    }

    private static @Nullable LocalDate day(@Nullable LocalDate day) {
        return day == null ? null : Days.shared(day);
    }

    private @Nullable Double figure(@Nullable Double figure) {
        return figure == null ? null : one(figure);
    }

    @SuppressWarnings("unchecked")
    private <T> T one(T value) {
        Object known = pool.putIfAbsent(value, value);
        return known == null ? value : (T) known;
    }
}
