package sternwright.app.api.access;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;
import sternwright.app.account.ApiTokens;
import sternwright.app.account.SignedIn;

/** Finds out by its token who asks. */
final class TokenFilter extends OncePerRequestFilter {
    private static final String BEARER = "Bearer ";
    private static final String CALENDAR = "/calendar/";

    private final ApiTokens tokens;

    TokenFilter(ApiTokens tokens) {
        this.tokens = tokens;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        person(request).ifPresent(TokenFilter::signIn);
        chain.doFilter(request, response);
    }

    private Optional<SignedIn> person(HttpServletRequest request) {
        String path = request.getRequestURI();
        if (path.startsWith(CALENDAR)) {
            String secret = path.substring(CALENDAR.length()).split("/", 2)[0];
            return tokens.person(secret, ApiTokens.Kind.CALENDAR);
        }
        String header = request.getHeader(HttpHeaders.AUTHORIZATION);
        return header != null && header.regionMatches(true, 0, BEARER, 0, BEARER.length())
                ? tokens.person(header.substring(BEARER.length()).strip(), ApiTokens.Kind.PROGRAM)
                : Optional.empty();
    }

    private static void signIn(SignedIn person) {
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(
                UsernamePasswordAuthenticationToken.authenticated(person, null, person.getAuthorities()));
        SecurityContextHolder.setContext(context);
    }
}
