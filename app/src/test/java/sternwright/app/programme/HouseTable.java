package sternwright.app.programme;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;
import tools.jackson.dataformat.csv.CsvSchema;

/** The house table of service practice, one line for each rule. */
final class HouseTable {
    private HouseTable() {}

    static List<Line> lines() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(HouseTable.class.getResourceAsStream("/reference/service/house-table.csv"))) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(l -> !l.startsWith("#"))
                    .reduce("", (a, b) -> a + b + "\n");
            CsvMapper mapper =
                    CsvMapper.builder().enable(CsvReadFeature.TRIM_SPACES).build();
            try (MappingIterator<Map<String, String>> it = mapper.readerFor(Map.class)
                    .with(CsvSchema.emptySchema().withHeader())
                    .readValues(text)) {
                return it.readAll().stream().map(Line::new).toList();
            }
        }
    }

    /** One rule and the row of the table it comes from. */
    record Line(Map<String, String> cells) {
        String cell(String column) {
            return Objects.requireNonNull(cells.get(column), column);
        }

        @Override
        public String toString() {
            return cell("rule");
        }
    }
}
