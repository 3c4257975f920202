package sternwright.app.files.sheet;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.resolver.CoreScalarResolver;
import sternwright.app.files.problem.KnownNames;
import sternwright.app.files.problem.Problem;
import sternwright.app.files.shape.Block;
import sternwright.app.files.shape.Field;
import sternwright.app.files.shape.Path;
import sternwright.app.files.shape.Reading;

/**
 * A table whose columns are the fields of a block and whose rows are read to records.
 *
 * @param <R> one row
 */
public final class Sheet<R> {
    private static final CoreScalarResolver RESOLVER = new CoreScalarResolver(true);
    private static final String BYTE_ORDER_MARK = "\uFEFF";
    private static final int[] NO_TEXT = new int[0];

    /**
     * One row with the line it starts in.
     *
     * @param <R> what it is read to
     * @param line counted from 1
     * @param value the record
     */
    public record Row<R>(int line, R value) {}

    private final Block<R> columns;
    private final Set<String> rare;

    /**
     * Describes a table.
     *
     * @param columns its columns in the order they are written
     */
    public Sheet(Block<R> columns) {
        this(columns, Set.of());
    }

    /**
     * Describes a table with columns that are only written where some row needs them.
     *
     * @param columns its columns in the order they are written
     * @param rare names of such columns
     */
    public Sheet(Block<R> columns, Set<String> rare) {
        this.columns = columns;
        this.rare = Set.copyOf(rare);
    }

    /**
     * The columns.
     *
     * @return the block that describes a row
     */
    public Block<R> columns() {
        return columns;
    }

    /**
     * Reads a table.
     *
     * @param text the whole file
     * @param reading the file being read
     * @param problems takes everything that is wrong
     * @return the rows that are right; use them only if there is no problem
     */
    public List<Row<R>> read(String text, Reading reading, List<Problem> problems) {
        List<Row<R>> rows = new ArrayList<>();
        String plain = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .fieldSeparator(separator(plain))
                .ignoreDifferentFieldCount(true)
                .ofCsvRecord(plain)) {
            int[] places = new int[0];
            boolean header = true;
            for (CsvRecord line : csv) {
                if (header) {
                    places = places(line, reading);
                    header = false;
                } else {
                    row(line, places, reading).ifPresent(rows::add);
                }
            }
            if (header) {
                problems.add(new Problem(reading.file(), 0, "", "the table is empty", "a header: " + header(), ""));
            }
        } catch (CsvParseException broken) {
            problems.add(new Problem(
                    reading.file(),
                    0,
                    "",
                    "broken table: " + broken.getMessage(),
                    "",
                    "Look for a quote that is not closed."));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        problems.addAll(reading.problems());
        return rows;
    }

    /** For each column of the file the position of its field; −1 where there is none. */
    private int[] places(CsvRecord header, Reading reading) {
        List<String> known = names();
        int[] places = new int[header.getFieldCount()];
        Node line = cell("header", mark(header), true);
        for (int i = 0; i < places.length; i++) {
            String name = header.getField(i).strip();
            int place = known.indexOf(name);
            if (place < 0) {
                String advice = KnownNames.advice(name, known);
                reading.note(line, Path.TOP.field(name), "unknown column", "one of " + header(), advice);
            } else if (Arrays.stream(places, 0, i).anyMatch(p -> p == place)) {
                reading.note(line, Path.TOP.field(name), "given twice", "", "Keep one of the two columns.");
            }
            places[i] = place;
        }
        return places;
    }

    private Optional<Row<R>> row(CsvRecord line, int[] places, Reading reading) {
        Mark mark = mark(line);
        @Nullable Node[] nodes = new Node[columns.fields().size()];
        boolean blank = true;
        for (int i = 0; i < line.getFieldCount(); i++) {
            String text = line.getField(i).strip();
            blank &= text.isEmpty();
            if (i >= places.length && !text.isEmpty()) {
                Node node = cell(text, mark, true);
                reading.note(
                        node,
                        Path.TOP,
                        "more cells than the header has",
                        places.length + " cells",
                        "Quote cells with a separator in them.");
                return Optional.empty();
            }
            if (i < places.length && places[i] >= 0 && !text.isEmpty()) {
                nodes[places[i]] =
                        cell(text, mark, columns.fields().get(places[i]).isText());
            }
        }
        if (blank) {
            return Optional.empty();
        }
        R value = columns.make(nodes, cell("", mark, true), Path.TOP, reading);
        return value == null ? Optional.empty() : Optional.of(new Row<>((int) line.getStartingLineNumber(), value));
    }

    /** A cell knows no quotes: what the column expects decides whether 12 is a text or a number. */
    private static Node cell(String text, Mark mark, boolean isText) {
        Tag tag = isText ? Tag.STR : RESOLVER.resolve(text, true);
        return new ScalarNode(tag, true, text, ScalarStyle.PLAIN, Optional.of(mark), Optional.of(mark));
    }

    private static Mark mark(CsvRecord line) {
        return new Mark("", 0, (int) line.getStartingLineNumber() - 1, 0, NO_TEXT, 0);
    }

    private static char separator(String text) {
        String header = text.lines().findFirst().orElse("");
        long commas = header.chars().filter(c -> c == ',').count();
        long semicolons = header.chars().filter(c -> c == ';').count();
        long tabs = header.chars().filter(c -> c == '\t').count();
        return tabs > Math.max(commas, semicolons) ? '\t' : semicolons > commas ? ';' : ',';
    }

    /**
     * The header line.
     *
     * @return the columns with commas
     */
    public String header() {
        return String.join(",", names());
    }

    /**
     * Writes a table with its header.
     *
     * @param rows the rows
     * @return the whole file
     */
    public String write(List<R> rows) {
        StringWriter text = new StringWriter();
        try {
            write(rows::stream, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /**
     * Writes a table with its header row by row, so that a long one is never held.
     *
     * @param rows the rows; asked for twice where the table has columns that are seldom written
     * @param to takes the whole file
     * @throws IOException if it cannot be written
     */
    public void write(Supplier<Stream<R>> rows, Writer to) throws IOException {
        Set<String> needed = rare.isEmpty() ? Set.of() : needed(rows.get());
        List<String> written = names().stream()
                .filter(n -> !rare.contains(n) || needed.contains(n))
                .toList();
        to.write(String.join(",", written) + "\n");
        try (Stream<R> all = rows.get()) {
            lines(all.<Map<?, ?>>map(r -> (Map<?, ?>) columns.write(r)).iterator(), written, ',', to);
        }
    }

    private Set<String> needed(Stream<R> rows) {
        List<Field<R, ?>> fields =
                columns.fields().stream().filter(f -> rare.contains(f.name())).toList();
        Set<String> needed = new HashSet<>();
        try (Stream<R> all = rows) {
            all.takeWhile(r -> needed.size() < fields.size())
                    .forEach(r -> fields.stream()
                            .filter(f -> f.writes(r))
                            .map(Field::name)
                            .forEach(needed::add));
        }
        return needed;
    }

    /**
     * A table with rows added at its end; what stands in it stays as it is, unless a column has to be added.
     *
     * @param before the table, right and with a header
     * @param rows to add
     * @return the longer table
     */
    public String append(String before, List<R> rows) {
        List<String> header;
        char separator = separator(before.startsWith(BYTE_ORDER_MARK) ? before.substring(1) : before);
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .fieldSeparator(separator)
                .detectBomHeader(false)
                .ofCsvRecord(before.startsWith(BYTE_ORDER_MARK) ? before.substring(1) : before)) {
            header = csv.iterator().next().getFields().stream()
                    .map(String::strip)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        List<Map<?, ?>> trees =
                rows.stream().<Map<?, ?>>map(r -> (Map<?, ?>) columns.write(r)).toList();
        if (trees.stream().anyMatch(t -> !header.containsAll(t.keySet()))) {
            List<R> all = new ArrayList<>();
            read(before, new Reading("", LocalDate.MAX), new ArrayList<>()).forEach(r -> all.add(r.value()));
            all.addAll(rows);
            return write(all);
        }
        String end = before.endsWith("\n") ? "" : "\n";
        StringWriter more = new StringWriter();
        try {
            lines(trees.iterator(), header, separator, more);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return before + end + more;
    }

    private List<String> names() {
        return columns.fields().stream().map(Field::name).toList();
    }

    /** What it writes to stays open. */
    private static void lines(Iterator<Map<?, ?>> trees, List<String> order, char separator, Writer to)
            throws IOException {
        CsvWriter csv = CsvWriter.builder()
                .fieldSeparator(separator)
                .lineDelimiter(LineDelimiter.LF)
                .build(to);
        while (trees.hasNext()) {
            Map<?, ?> tree = trees.next();
            csv.writeRecord(order.stream()
                    .map(name -> tree.get(name) == null ? "" : String.valueOf(tree.get(name)))
                    .toList());
        }
        csv.flush();
    }
}
