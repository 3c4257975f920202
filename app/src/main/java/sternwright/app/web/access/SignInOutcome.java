package sternwright.app.web.access;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Objects;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;
import sternwright.app.account.Account;
import sternwright.app.account.Accounts;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SignInLimit;

/** Counts failures, notes both outcomes in the audit, and after signing in goes on to the page that was asked for. */
final class SignInOutcome extends SavedRequestAwareAuthenticationSuccessHandler
        implements AuthenticationFailureHandler {
    private final SignInLimit limit;
    private final Accounts accounts;
    private final AuditTrail audit;

    SignInOutcome(SignInLimit limit, Accounts accounts, AuditTrail audit) {
        this.limit = limit;
        this.accounts = accounts;
        this.audit = audit;
        setDefaultTargetUrl("/");
    }

    @Override
    public void onAuthenticationSuccess(HttpServletRequest request, HttpServletResponse response, Authentication who)
            throws IOException, ServletException {
        limit.signedIn(name(request));
        audit.note("sign-in.done", "", "");
        super.onAuthenticationSuccess(request, response, who);
    }

    @Override
    public void onAuthenticationFailure(
            HttpServletRequest request, HttpServletResponse response, AuthenticationException why) throws IOException {
        limit.failed(name(request), request.getRemoteAddr());
        // A name that is not known is not noted: people type their password into the wrong field.
        audit.note(
                "sign-in.failed",
                accounts.byName(name(request)).map(Account::name).orElse(""),
                "");
        getRedirectStrategy().sendRedirect(request, response, "/sign-in?failed");
    }

    /** The name as typed; empty if there is none. */
    static String name(HttpServletRequest request) {
        return Objects.requireNonNullElse(request.getParameter("name"), "");
    }
}
