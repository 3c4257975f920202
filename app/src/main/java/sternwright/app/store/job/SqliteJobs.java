package sternwright.app.store.job;

import com.github.kagkarlsson.scheduler.jdbc.DefaultJdbcCustomization;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** How SQLite limits a question, and times as milliseconds since 1970, which it compares as numbers. */
public final class SqliteJobs extends DefaultJdbcCustomization {
    /** The dialect. */
    public SqliteJobs() {
        super(true);
    }

    @Override
    public String getName() {
        return "SQLite";
    }

    @Override
    public String getQueryLimitPart(int limit) {
        return " LIMIT " + limit;
    }

    @Override
    public String createSelectDueQuery(String table, int limit, String andCondition, boolean byPriority) {
        return "select * from " + table + " where picked = ? and execution_time <= ? " + andCondition + " order by "
                + (byPriority ? "priority desc, " : "") + "execution_time asc limit " + limit;
    }

    @Override
    public void setInstant(PreparedStatement statement, int at, @Nullable Instant instant) throws SQLException {
        if (instant == null) {
            statement.setNull(at, java.sql.Types.BIGINT);
        } else {
            statement.setLong(at, instant.toEpochMilli());
        }
    }

    @Override
    public @Nullable Instant getInstant(ResultSet row, String column) throws SQLException {
        long ms = row.getLong(column);
        return row.wasNull() ? null : Instant.ofEpochMilli(ms);
    }
}
