package sternwright.app.web.page;

import java.io.Serializable;
import java.util.List;

/**
 * What is said once on the next page, after something was done. It rests in the session in between.
 *
 * @param key key of the text
 * @param values what fills its places
 */
public record Notice(String key, List<String> values) implements Serializable {
    /** Name among the things handed to the next page. */
    static final String NAME = "notice";

    /** Copies the list. */
    public Notice {
        values = List.copyOf(values);
    }
}
