package sternwright.app.api;

import java.util.Collection;
import sternwright.app.files.problem.KnownNames;

/** What an address names is not there: status 404 with the nearest known name. */
final class NotThere extends RuntimeException {
    private static final long serialVersionUID = 1;

    NotThere(String kind, String id, Collection<String> known) {
        super("There is no " + kind + " \"" + id + "\". " + KnownNames.advice(id, known));
    }
}
