package sternwright.app.web.page;

import java.time.Duration;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.web.server.ResponseStatusException;

/** Somebody tries too often; the answer says how long to wait. */
public final class TooSoon extends ResponseStatusException {
    private static final long serialVersionUID = 1;

    private final long seconds;

    private TooSoon(Duration wait) {
        super(HttpStatus.TOO_MANY_REQUESTS);
        this.seconds = wait.toSeconds() + 1;
    }

    /**
     * Ends the request unless trying is free.
     *
     * @param wait how long to wait
     */
    public static void check(Duration wait) {
        if (!wait.isZero()) {
            throw new TooSoon(wait);
        }
    }

    @Override
    public HttpHeaders getHeaders() {
        HttpHeaders headers = new HttpHeaders();
        headers.set(HttpHeaders.RETRY_AFTER, Long.toString(seconds));
        return headers;
    }
}
