package sternwright.app.issued;

import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Papers as text and back: records as they are. What a later version no longer knows is passed over. */
final class IssuedText {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .disable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .build();

    private IssuedText() {}

    static String of(Record paper) {
        return MAPPER.writeValueAsString(paper);
    }

    static <T extends Record> T read(String text, Class<T> kind) {
        return MAPPER.readValue(text, kind);
    }
}
