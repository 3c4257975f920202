package sternwright.app.store;

import java.sql.SQLException;
import org.jspecify.annotations.Nullable;

/** What a database says, in words a person can act on. */
final class StoreTrouble {
    private static final int SQLITE_BUSY = 5;
    private static final int SQLITE_IOERR = 10;
    private static final int SQLITE_CORRUPT = 11;
    private static final int SQLITE_FULL = 13;
    private static final int SQLITE_NOT_A_DATABASE = 26;
    private static final int PRIMARY_CODE = 0xff;

    private StoreTrouble() {}

    /** The failure of a deed on the store; nothing of the deed was written. */
    static StoreRefused of(String place, Throwable trouble) {
        SQLException sql = sql(trouble);
        String said = sql == null ? String.valueOf(trouble.getMessage()) : String.valueOf(sql.getMessage());
        return new StoreRefused(place + ": " + words(sql, said), full(sql, said), trouble);
    }

    private static boolean full(@Nullable SQLException sql, String said) {
        int code = sql == null ? 0 : sql.getErrorCode() & PRIMARY_CODE;
        return code == SQLITE_FULL
                || sql != null && "53100".equals(sql.getSQLState())
                || said.contains("No space left");
    }

    private static @Nullable SQLException sql(Throwable trouble) {
        for (Throwable t = trouble; t != null; t = t.getCause()) {
            if (t instanceof SQLException sql) {
                return sql;
            }
        }
        return null;
    }

    private static String words(@Nullable SQLException sql, String said) {
        int code = sql == null ? 0 : sql.getErrorCode() & PRIMARY_CODE;
        String state = sql == null ? "" : String.valueOf(sql.getSQLState());
        if (full(sql, said)) {
            return "there is no room left on its disk. Nothing was written. Make room and do it again.";
        }
        if (code == SQLITE_BUSY || state.equals("55P03") || said.contains("request timed out")) {
            return "somebody else is writing there and does not finish. Nothing was written. Try again in a minute.";
        }
        if (code == SQLITE_CORRUPT || code == SQLITE_NOT_A_DATABASE) {
            return "it is damaged or no store. Nothing was written. Restore the last backup: sternwright restore FILE.";
        }
        if (code == SQLITE_IOERR) {
            return "its disk refuses (" + said + "). Nothing was written. Look at the disk, then do it again.";
        }
        return state.startsWith("08") || said.contains("Connection")
                ? "it cannot be reached (" + said + "). Look whether the database runs, then try again."
                : "it refuses: " + said;
    }
}
