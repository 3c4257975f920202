package sternwright.app.files.shape;

import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.Node;

/** A date of something that has happened; the schema cannot know what today is. */
record PastDate(Shape<LocalDate> date) implements Shape<LocalDate> {
    @Override
    public @Nullable LocalDate read(Node node, Path path, Reading reading) {
        LocalDate day = date.read(node, path, reading);
        if (day != null && day.isAfter(reading.today())) {
            reading.note(
                    node,
                    path,
                    day + " lies in the future",
                    "a date up to " + reading.today(),
                    "Check the year, or give --date if you work on another day.");
            return null;
        }
        return day;
    }

    @Override
    public Object write(LocalDate value) {
        return date.write(value);
    }

    @Override
    public Map<String, Object> schema() {
        return date.schema();
    }

    @Override
    public String words() {
        return date.words();
    }
}
