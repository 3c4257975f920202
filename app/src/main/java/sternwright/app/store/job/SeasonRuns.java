package sternwright.app.store.job;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import sternwright.app.store.Store;

/** The runs of the season in a store: what any program on it can show. */
public final class SeasonRuns {
    private static final int LONGEST = 1000;
    private static final String FACTS =
            "id, asked_by, asked_at, ask, state, stop_asked, node, tries, beat_at, ended_at,"
                    + " says, spent_s, cost, bound, plan, course, refused";
    private static final String WITHOUT_PLAN =
            FACTS.replace(" plan,", " case when plan is null then null else '' end as plan,");

    private final Store store;
    private final JdbcClient read;
    private final JdbcClient write;

    /**
     * The runs in a store.
     *
     * @param store the store
     */
    public SeasonRuns(Store store) {
        this.store = store;
        this.read = JdbcClient.create(store.reader());
        this.write = JdbcClient.create(store.writer());
    }

    /**
     * Notes a run that is to be done.
     *
     * @param ask what is asked
     * @param by who asks
     * @return its id
     */
    public String add(String ask, String by) {
        String id = UUID.randomUUID().toString();
        write.sql("insert into season_run (id, asked_by, asked_at, ask, state, stop_asked, node, tries, says, spent_s)"
                        + " values (?, ?, ?, ?, 'WAITING', ?, '', 0, '', 0)")
                .params(id, by, now(), ask, false)
                .update();
        return id;
    }

    /**
     * One run.
     *
     * @param id of the run
     * @return how it stands; empty if there is none
     */
    public Optional<SeasonRun> one(String id) {
        return read.sql("select " + FACTS + " from season_run where id = ?")
                .param(id)
                .query(SeasonRuns::run)
                .optional();
    }

    /**
     * One run without its plan.
     *
     * @param id of the run
     * @return how it stands; its plan is empty where it has one; empty if there is none
     */
    public Optional<SeasonRun> head(String id) {
        return read.sql("select " + WITHOUT_PLAN + " from season_run where id = ?")
                .param(id)
                .query(SeasonRuns::run)
                .optional();
    }

    /**
     * The newest runs without their plans, each of which may be megabytes.
     *
     * @param most how many at most
     * @return the newest first; their plan is empty where they have one
     */
    public List<SeasonRun> newest(int most) {
        return read.sql("select " + WITHOUT_PLAN + " from season_run order by asked_at desc, id limit ?")
                .param(most)
                .query(SeasonRuns::run)
                .list();
    }

    /**
     * Asks that a run stops and keeps its best plan.
     *
     * @param id of the run
     */
    public void stop(String id) {
        write.sql("update season_run set stop_asked = ? where id = ?")
                .params(true, id)
                .update();
    }

    /**
     * Notes that a program begins a run, or takes it over.
     *
     * @param id of the run
     * @param node the program
     */
    public void begin(String id, String node) {
        long now = now();
        write.sql("update season_run set state = 'RUNNING', node = ?, tries = tries + 1, beat_at = ?,"
                        + " started_at = coalesce(started_at, ?) where id = ?")
                .params(node, now, now, id)
                .update();
    }

    /**
     * Notes how far a run is. A program that was taken for dead and lost the run changes nothing.
     *
     * @param id of the run
     * @param node the program
     * @param says what it does
     * @param at how good its best plan is
     * @return false if the run is another program's by now, or has ended
     */
    public boolean beat(String id, String node, String says, At at) {
        return write.sql("update season_run set beat_at = ?, says = ?, spent_s = ?, cost = coalesce(?, cost),"
                                + " bound = coalesce(?, bound), course = coalesce(?, course)"
                                + " where id = ? and node = ? and state = 'RUNNING'")
                        .param(1, now())
                        .param(2, cut(says))
                        .param(3, at.spentS())
                        .param(4, at.cost(), Types.DOUBLE)
                        .param(5, at.bound(), Types.DOUBLE)
                        .param(6, at.course(), Types.VARCHAR)
                        .param(7, id)
                        .param(8, node)
                        .update()
                == 1;
    }

    /**
     * How far a run is and how good its best plan.
     *
     * @param spentS seconds of search spent so far
     * @param cost of the best plan so far, null before the first
     * @param bound no plan can cost less, null if not known yet
     * @param course how cost and bound went, null before the first plan
     */
    public record At(
            double spentS,
            @Nullable Double cost,
            @Nullable Double bound,
            @Nullable String course) {}

    /**
     * Keeps the best plan so far.
     *
     * @param id of the run
     * @param node the program
     * @param at how good it is
     * @param plan columns of {@code season.csv}
     * @return false if the run is another program's by now, or has ended
     */
    public boolean keep(String id, String node, At at, String plan) {
        return write.sql("update season_run set beat_at = ?, spent_s = ?, cost = ?, bound = ?, course = ?, plan = ?"
                                + " where id = ? and node = ? and state = 'RUNNING'")
                        .param(1, now())
                        .param(2, at.spentS())
                        .param(3, at.cost(), Types.DOUBLE)
                        .param(4, at.bound(), Types.DOUBLE)
                        .param(5, at.course(), Types.VARCHAR)
                        .param(6, plan)
                        .param(7, id)
                        .param(8, node)
                        .update()
                == 1;
    }

    /**
     * Ends a run.
     *
     * @param id of the run
     * @param node the program
     * @param state how it ended
     * @param says the last word
     * @param refused why there is no plan, or why boats are not safe in it, as the desk writes it; null for neither
     */
    public void end(String id, String node, SeasonRun.State state, String says, @Nullable String refused) {
        write.sql("update season_run set state = ?, says = ?, ended_at = ?, refused = ?"
                        + " where id = ? and node = ? and state = 'RUNNING'")
                .param(1, state.name().toUpperCase(Locale.ROOT))
                .param(2, cut(says))
                .param(3, now())
                .param(4, refused, Types.VARCHAR)
                .param(5, id)
                .param(6, node)
                .update();
    }

    private long now() {
        return store.clock().millis();
    }

    private static String cut(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST - 1) + "\u2026";
    }

    private static SeasonRun run(ResultSet row, int number) throws SQLException {
        return new SeasonRun(
                row.getString(1),
                row.getString(2),
                Instant.ofEpochMilli(row.getLong(3)),
                row.getString(4),
                SeasonRun.State.valueOf(row.getString(5)),
                row.getBoolean(6),
                row.getString(7),
                row.getInt(8),
                instant(row, 9),
                instant(row, 10),
                row.getString(11),
                row.getDouble(12),
                figure(row, 13),
                figure(row, 14),
                row.getString(15),
                row.getString(16),
                row.getString(17));
    }

    private static @Nullable Instant instant(ResultSet row, int column) throws SQLException {
        long ms = row.getLong(column);
        return row.wasNull() ? null : Instant.ofEpochMilli(ms);
    }

    private static @Nullable Double figure(ResultSet row, int column) throws SQLException {
        double figure = row.getDouble(column);
        return row.wasNull() ? null : figure;
    }
}
