package sternwright.app.web.page;

import org.springframework.http.HttpStatus;
import org.springframework.web.server.ResponseStatusException;

/** What an address names is not there, or not for this person; the page does not tell which. */
public final class Missing extends ResponseStatusException {
    private static final long serialVersionUID = 1;

    /**
     * Ends the request.
     *
     * @param what key of the words for what is missing
     */
    public Missing(String what) {
        super(HttpStatus.NOT_FOUND, what);
    }
}
