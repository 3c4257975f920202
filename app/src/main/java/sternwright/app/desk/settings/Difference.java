package sternwright.app.desk.settings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sternwright.app.files.shape.Shape;

/** What differs between two things of one shape, field by field, for the audit. */
public final class Difference {
    private final Map<String, String> fields = new LinkedHashMap<>();

    private Difference() {}

    /**
     * Compares.
     *
     * @param <T> what they are
     * @param shape their shape
     * @param before as it was
     * @param after as it is
     * @return such as {@code labour-per-hour 85 → 90}, several parted by semicolons; empty if nothing differs
     */
    public static <T> String of(Shape<T> shape, T before, T after) {
        Map<String, String> was = fields(shape.write(before));
        Map<String, String> is = fields(shape.write(after));
        Set<String> names = new LinkedHashSet<>(was.keySet());
        names.addAll(is.keySet());
        List<String> said = new ArrayList<>();
        for (String name : names) {
            String old = was.getOrDefault(name, "–");
            String now = is.getOrDefault(name, "–");
            if (!old.equals(now)) {
                said.add(name + " " + old + " → " + now);
            }
        }
        return String.join("; ", said);
    }

    private static Map<String, String> fields(Object tree) {
        Difference all = new Difference();
        all.put("", tree);
        return all.fields;
    }

    private void put(String path, Object tree) {
        if (tree instanceof Map<?, ?> map) {
            map.forEach((k, v) -> put(path.isEmpty() ? k.toString() : path + "." + k, v));
        } else if (tree instanceof List<?> list && list.stream().anyMatch(m -> m instanceof Map)) {
            for (int i = 0; i < list.size(); i++) {
                Object id = list.get(i) instanceof Map<?, ?> member ? member.get("id") : null;
                put(path + "[" + (id == null ? i + 1 : id) + "]", list.get(i));
            }
        } else {
            fields.put(path, tree.toString());
        }
    }
}
