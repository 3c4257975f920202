package sternwright.app.files.shape;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * A number with its limits.
 *
 * @param whole whole numbers only
 * @param low lowest, null for none
 * @param lowOpen the lowest itself is not allowed
 * @param high highest, null for none
 */
public record Numbers(
        boolean whole,
        @Nullable Double low,
        boolean lowOpen,
        @Nullable Double high) implements Shape<Double> {
    private static final Set<Tag> NUMBER = Set.of(Tag.INT, Tag.FLOAT);

    /**
     * Any finite number.
     *
     * @return the shape
     */
    public static Numbers any() {
        return new Numbers(false, null, false, null);
    }

    /**
     * A number of at least 0.
     *
     * @return the shape
     */
    public static Numbers notNegative() {
        return any().atLeast(0);
    }

    /**
     * A number above 0.
     *
     * @return the shape
     */
    public static Numbers positive() {
        return new Numbers(false, 0.0, true, null);
    }

    /**
     * The same with a lowest value.
     *
     * @param lowest allowed
     * @return the shape
     */
    public Numbers atLeast(double lowest) {
        return new Numbers(whole, lowest, false, high);
    }

    /**
     * The same with a highest value.
     *
     * @param highest allowed
     * @return the shape
     */
    public Numbers atMost(double highest) {
        return new Numbers(whole, low, lowOpen, highest);
    }

    /**
     * A whole number of at least so many.
     *
     * @param lowest allowed
     * @return the shape
     */
    public static Shape<Integer> count(int lowest) {
        return new Count(new Numbers(true, (double) lowest, false, null));
    }

    @Override
    public @Nullable Double read(Node node, Path path, Reading reading) {
        if (!(node instanceof ScalarNode scalar) || !NUMBER.contains(node.getTag())) {
            reading.wrong(node, path, words(), advice(node));
            return null;
        }
        Double value = number(scalar.getValue());
        if (value == null || !Double.isFinite(value) || outside(value)) {
            reading.wrong(node, path, words(), "");
            return null;
        }
        return value;
    }

    private boolean outside(double value) {
        boolean tooLow = low != null && (lowOpen ? value <= low : value < low);
        boolean tooHigh = high != null && value > high;
        return tooLow || tooHigh || (whole && value != Math.rint(value));
    }

    private static @Nullable Double number(String text) {
        try {
            return Double.valueOf(text);
        } catch (NumberFormatException notDecimal) {
            return null;
        }
    }

    /** People write the unit behind the figure and the decimal comma of their country. */
    private static String advice(Node node) {
        String text = node instanceof ScalarNode scalar ? scalar.getValue() : "";
        if (text.matches("[-+]?[0-9]+,[0-9]+")) {
            return "Write a decimal point: " + text.replace(',', '.') + ".";
        }
        return text.matches("[-+]?[0-9.]+ *\\p{L}.*")
                ? "Write the figure alone; the unit stands in the field's name."
                : "";
    }

    @Override
    public Object write(Double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15 ? (Object) value.longValue() : (Object) value;
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", whole ? "integer" : "number");
        if (low != null) {
            schema.put(lowOpen ? "exclusiveMinimum" : "minimum", write(low));
        }
        if (high != null) {
            schema.put("maximum", write(high));
        }
        return schema;
    }

    @Override
    public String words() {
        String what = whole ? "a whole number" : "a number";
        if (low != null && high != null) {
            return what + (lowOpen ? " above " : " from ") + write(low) + (lowOpen ? " up to " : " to ") + write(high);
        }
        if (low != null) {
            return what + (lowOpen ? " above " : " of at least ") + write(low);
        }
        return high == null ? what : what + " of at most " + write(high);
    }

    /** A whole number read to an {@link Integer}. */
    private record Count(Numbers number) implements Shape<Integer> {
        @Override
        public @Nullable Integer read(Node node, Path path, Reading reading) {
            Double value = number.read(node, path, reading);
            return value == null ? null : Integer.valueOf(value.intValue());
        }

        @Override
        public Object write(Integer value) {
            return value;
        }

        @Override
        public Map<String, Object> schema() {
            return number.schema();
        }

        @Override
        public String words() {
            return number.words();
        }
    }
}
