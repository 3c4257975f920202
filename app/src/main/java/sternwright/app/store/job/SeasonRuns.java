package sternwright.app.store.job;

import java.sql.ResultSet;
import java.sql.SQLException;
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
                    + " says, spent_s, cost, bound, plan";

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
     * The newest runs.
     *
     * @param most how many at most
     * @return the newest first
     */
    public List<SeasonRun> newest(int most) {
        return read.sql("select " + FACTS + " from season_run order by asked_at desc, id limit ?")
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
     * @param spentS seconds of search spent so far
     * @return false if the run is another program's by now, or has ended
     */
    public boolean beat(String id, String node, String says, double spentS) {
        return write.sql("update season_run set beat_at = ?, says = ?, spent_s = ?"
                                + " where id = ? and node = ? and state = 'RUNNING'")
                        .params(now(), cut(says), spentS, id, node)
                        .update()
                == 1;
    }

    /**
     * Keeps the best plan so far.
     *
     * @param id of the run
     * @param node the program
     * @param spentS seconds of search spent so far
     * @param cost of the plan
     * @param bound no plan can cost less
     * @param plan columns of {@code season.csv}
     * @return false if the run is another program's by now, or has ended
     */
    public boolean keep(String id, String node, double spentS, double cost, double bound, String plan) {
        return write.sql("update season_run set beat_at = ?, spent_s = ?, cost = ?, bound = ?, plan = ?"
                                + " where id = ? and node = ? and state = 'RUNNING'")
                        .params(now(), spentS, cost, bound, plan, id, node)
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
     */
    public void end(String id, String node, SeasonRun.State state, String says) {
        write.sql("update season_run set state = ?, says = ?, ended_at = ?"
                        + " where id = ? and node = ? and state = 'RUNNING'")
                .params(state.name().toUpperCase(Locale.ROOT), cut(says), now(), id, node)
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
                row.getString(15));
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
