package sternwright.app.web.access;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.authentication.LoginUrlAuthenticationEntryPoint;

/** Leads to the page that asks who it is; a part of a page that loads by itself leads the whole page there. */
final class AskWhoItIs implements AuthenticationEntryPoint {
    private final AuthenticationEntryPoint page = new LoginUrlAuthenticationEntryPoint("/sign-in");

    @Override
    public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException why)
            throws IOException, ServletException {
        if (request.getHeader("HX-Request") == null) {
            page.commence(request, response, why);
        } else {
            response.setStatus(HttpServletResponse.SC_UNAUTHORIZED);
            response.setHeader("HX-Redirect", "/sign-in");
        }
    }
}
