package sternwright.app.web.access;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import org.springframework.stereotype.Component;

/** The sessions of people who are signed in. */
@Component
public class Sessions {
    private final FindByIndexNameSessionRepository<? extends Session> sessions;

    Sessions(FindByIndexNameSessionRepository<? extends Session> sessions) {
        this.sessions = sessions;
    }

    /**
     * A place where a person is signed in.
     *
     * @param id of the session
     * @param begun when it began
     * @param used when it was last used
     */
    public record Place(String id, Instant begun, Instant used) {
        /** Never with its id, which opens it. */
        @Override
        public String toString() {
            return "session since " + begun;
        }
    }

    /**
     * Where a person is signed in.
     *
     * @param accountId the account
     * @return the newest first
     */
    public List<Place> of(String accountId) {
        return sessions.findByPrincipalName(accountId).values().stream()
                .filter(s -> !s.isExpired())
                .map(s -> new Place(s.getId(), s.getCreationTime(), s.getLastAccessedTime()))
                .sorted(Comparator.comparing(Place::begun).reversed())
                .toList();
    }

    /**
     * Signs a person out everywhere but here.
     *
     * @param accountId the account
     * @param here id of the session that stays
     */
    public void endOthers(String accountId, String here) {
        sessions.findByPrincipalName(accountId).keySet().stream()
                .filter(id -> !id.equals(here))
                .forEach(sessions::deleteById);
    }

    /**
     * Signs a person out everywhere, at once: after a lock, a new role or a new password.
     *
     * @param accountId the account
     */
    public void end(String accountId) {
        sessions.findByPrincipalName(accountId).keySet().forEach(sessions::deleteById);
    }
}
