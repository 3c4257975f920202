package sternwright.app.web.access;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.web.filter.OncePerRequestFilter;
import sternwright.app.account.SignInLimit;

/** Lets nobody try passwords faster than the limit; a refused try costs no hash. */
final class SignInLimitFilter extends OncePerRequestFilter {
    private final SignInLimit limit;

    SignInLimitFilter(SignInLimit limit) {
        this.limit = limit;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        boolean tries =
                request.getMethod().equals("POST") && request.getRequestURI().equals("/sign-in");
        Duration wait = tries ? limit.wait(SignInOutcome.name(request), request.getRemoteAddr()) : Duration.ZERO;
        if (wait.isZero()) {
            chain.doFilter(request, response);
        } else {
            response.setHeader(HttpHeaders.RETRY_AFTER, Long.toString(wait.toSeconds() + 1));
            response.sendError(HttpStatus.TOO_MANY_REQUESTS.value());
        }
    }
}
