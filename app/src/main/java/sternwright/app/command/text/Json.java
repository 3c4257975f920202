package sternwright.app.command.text;

import java.io.PrintWriter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Answers for other programs: records as they are, names in lower case with hyphens, dates as ISO 8601. */
public final class Json {
    private Json() {}

    public static void print(Object answer, PrintWriter out) {
        out.println(mapper().writeValueAsString(answer));
    }

    /** The same as a tree, for tables with the same names. */
    public static JsonNode tree(Object answer) {
        return mapper().valueToTree(answer);
    }

    private static JsonMapper mapper() {
        return Mapper.MAPPER;
    }

    /** Made on first use: most commands print no JSON. */
    private static final class Mapper {
        private static final JsonMapper MAPPER = JsonMapper.builder()
                .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
                .enable(SerializationFeature.INDENT_OUTPUT)
                .build();
    }
}
