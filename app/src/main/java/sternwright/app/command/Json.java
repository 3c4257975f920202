package sternwright.app.command;

import java.io.PrintWriter;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Answers for other programs: records as they are, names in lower case with hyphens, dates as ISO 8601. */
final class Json {
    private Json() {}

    static void print(Object answer, PrintWriter out) {
        JsonMapper mapper = JsonMapper.builder()
                .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
                .enable(SerializationFeature.INDENT_OUTPUT)
                .build();
        out.println(mapper.writeValueAsString(answer));
    }
}
