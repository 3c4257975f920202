package sternwright.app.web.access;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Where the pages have their own https, plain http hands out the root certificate and leads on to https; nothing else. It stands
 * before everything, so that no session is ever begun in the clear.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
public final class PlainDoor extends OncePerRequestFilter {
    private static final List<String> PLAIN =
            List.of("/phone", "/assets/", "/font/", "/favicon.ico", "/health", "/error");

    private final ObjectProvider<OwnHttps> https;
    private final KnownHosts hosts;

    PlainDoor(ObjectProvider<OwnHttps> https, KnownHosts hosts) {
        this.https = https;
        this.hosts = hosts;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        OwnHttps own = https.getIfAvailable();
        String path = request.getRequestURI();
        if (own == null || request.isSecure() || PLAIN.stream().anyMatch(path::startsWith)) {
            chain.doFilter(request, response);
        } else if (!reads(request) || !hosts.knows(request.getServerName())) {
            response.setStatus(HttpServletResponse.SC_FORBIDDEN);
            response.setContentType(MediaType.TEXT_PLAIN_VALUE);
            response.getOutputStream().print("Only over https: " + own.secureAddress() + "\n");
        } else {
            String query = request.getQueryString();
            response.setStatus(HttpServletResponse.SC_MOVED_TEMPORARILY);
            response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
            response.setHeader(
                    HttpHeaders.LOCATION,
                    "https://" + request.getServerName() + ":" + own.securePort() + path
                            + (query == null ? "" : "?" + query));
        }
    }

    private static boolean reads(HttpServletRequest request) {
        return request.getMethod().equals("GET") || request.getMethod().equals("HEAD");
    }
}
