package sternwright.app.truth;

import java.io.IOException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** The published schemas are the shapes by which the program reads. */
class SchemaPublicationTest {
    private static final JsonMapper JSON =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    @ParameterizedTest
    @EnumSource(Published.class)
    void isPublished(Published kind) throws IOException {
        Page.mustSay(
                "app/src/main/resources/sternwright/schema/" + kind.id + ".schema.json",
                JSON.writeValueAsString(kind.schema()).replace("\r\n", "\n") + "\n");
    }
}
