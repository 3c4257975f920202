package sternwright.app.web.access;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.springframework.web.filter.OncePerRequestFilter;
import sternwright.app.account.Accounts;

/** As long as nobody has an account, every page leads to the one that makes the owner's. */
final class FirstStartFilter extends OncePerRequestFilter {
    private static final List<String> STAYS =
            List.of("/assets/", "/font/", "/first-start", "/look", "/health", "/favicon.ico", "/phone");

    private final Accounts accounts;

    FirstStartFilter(Accounts accounts) {
        this.accounts = accounts;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (STAYS.stream().anyMatch(request.getRequestURI()::startsWith) || accounts.any()) {
            chain.doFilter(request, response);
        } else {
            response.sendRedirect("/first-start");
        }
    }
}
