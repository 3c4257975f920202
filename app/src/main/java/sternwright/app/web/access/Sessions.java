package sternwright.app.web.access;

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
     * Signs a person out everywhere, at once: after a lock, a new role or a new password.
     *
     * @param accountId the account
     */
    public void end(String accountId) {
        sessions.findByPrincipalName(accountId).keySet().forEach(sessions::deleteById);
    }
}
