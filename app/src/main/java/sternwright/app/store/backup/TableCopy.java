package sternwright.app.store.backup;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/** Copies tables of the same form from one database to another, as they are at one moment. */
final class TableCopy {
    private static final int BATCH = 200;

    private final DataSource from;
    private final DataSource to;

    TableCopy(DataSource from, DataSource to) {
        this.from = from;
        this.to = to;
    }

    /** Replaces the rows of tables; those that others refer to come first. */
    void copy(List<String> tables) throws SQLException {
        try (Connection read = from.getConnection();
                Connection write = to.getConnection()) {
            read.setTransactionIsolation(
                    isPostgres(read) ? Connection.TRANSACTION_REPEATABLE_READ : Connection.TRANSACTION_SERIALIZABLE);
            read.setAutoCommit(false);
            write.setAutoCommit(false);
            try {
                for (int i = tables.size() - 1; i >= 0; i--) {
                    try (Statement s = write.createStatement()) {
                        s.executeUpdate("delete from " + tables.get(i));
                    }
                }
                for (String table : tables) {
                    copy(read, write, table);
                }
                write.commit();
            } finally {
                write.rollback();
                read.rollback();
                read.setAutoCommit(true);
                write.setAutoCommit(true);
            }
        }
    }

    private static boolean isPostgres(Connection c) throws SQLException {
        return c.getMetaData().getDatabaseProductName().equals("PostgreSQL");
    }

    private static void copy(Connection read, Connection write, String table) throws SQLException {
        List<Column> columns = columns(write, table);
        String names = columns.stream().map(Column::name).collect(Collectors.joining(", "));
        String places = columns.stream().map(c -> "?").collect(Collectors.joining(", "));
        try (Statement select = read.createStatement();
                PreparedStatement insert =
                        write.prepareStatement("insert into " + table + " (" + names + ") values (" + places + ")")) {
            select.setFetchSize(BATCH);
            int waiting = 0;
            try (ResultSet row = select.executeQuery("select " + names + " from " + table)) {
                while (row.next()) {
                    for (int i = 1; i <= columns.size(); i++) {
                        insert.setObject(i, columns.get(i - 1).value(row, i));
                    }
                    insert.addBatch();
                    if (++waiting % BATCH == 0) {
                        insert.executeBatch();
                    }
                }
            }
            insert.executeBatch();
        }
    }

    /** A column with what kind of value its database keeps; SQLite keeps booleans as numbers. */
    private record Column(String name, String type) {
        @Nullable
        Object value(ResultSet row, int at) throws SQLException {
            Object value = switch (type) {
                case "bool", "boolean" -> row.getBoolean(at);
                case "bytea" -> row.getBytes(at);
                case "int8", "bigint" -> row.getLong(at);
                case "int4", "integer" -> row.getInt(at);
                case "float8", "double precision" -> row.getDouble(at);
                default -> row.getString(at);
            };
            return row.wasNull() ? null : value;
        }
    }

    private static List<Column> columns(Connection c, String table) throws SQLException {
        List<Column> columns = new ArrayList<>();
        try (ResultSet found = c.getMetaData().getColumns(null, null, table, null)) {
            while (found.next()) {
                columns.add(new Column(
                        found.getString("COLUMN_NAME"),
                        found.getString("TYPE_NAME").toLowerCase(java.util.Locale.ROOT)));
            }
        }
        return columns;
    }
}
