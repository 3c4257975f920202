package sternwright.app.files.sheet;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.Node;
import sternwright.app.files.shape.Numbers;
import sternwright.app.files.shape.Path;
import sternwright.app.files.shape.Reading;
import sternwright.app.files.shape.Shape;

/** A quarter of the working day, 1 to 4. */
record QuarterOfDay() implements Shape<Integer> {
    private static final Numbers ONE_TO_FOUR = new Numbers(true, 1.0, false, 4.0);

    @Override
    public @Nullable Integer read(Node node, Path path, Reading reading) {
        Double value = ONE_TO_FOUR.read(node, path, reading);
        return value == null ? null : Integer.valueOf(value.intValue());
    }

    @Override
    public Object write(Integer value) {
        return value;
    }

    @Override
    public Map<String, Object> schema() {
        return ONE_TO_FOUR.schema();
    }

    @Override
    public String words() {
        return ONE_TO_FOUR.words();
    }
}
