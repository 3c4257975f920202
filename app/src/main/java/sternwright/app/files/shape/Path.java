package sternwright.app.files.shape;

import org.jspecify.annotations.Nullable;

/**
 * The way to a field inside a file.
 *
 * @param parent the way to what contains it, null at the top
 * @param step name of the field, or position or id in a list
 * @param inList whether the step goes into a list
 */
public record Path(@Nullable Path parent, String step, boolean inList) {
    /** The whole file. */
    public static final Path TOP = new Path(null, "", false);

    /**
     * The way to a field of what this leads to.
     *
     * @param name field
     * @return the longer way
     */
    public Path field(String name) {
        return new Path(this, name, false);
    }

    /**
     * The way to one member of the list this leads to.
     *
     * @param name its id, or its position counted from 1
     * @return the longer way
     */
    public Path member(String name) {
        return new Path(this, name, true);
    }

    @Override
    public String toString() {
        if (parent == null) {
            return "";
        }
        String before = parent.toString();
        if (inList) {
            return before + "[" + step + "]";
        }
        return before.isEmpty() ? step : before + "." + step;
    }
}
