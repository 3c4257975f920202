package sternwright.app.api.access;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.UsernamePasswordAuthenticationFilter;
import sternwright.app.account.ApiTokens;

/** Guards what other programs ask for: a token each time, no session, no cookie. */
@Configuration(proxyBeanMethods = false)
public class ApiAccess {
    @Bean
    @Order(1)
    static SecurityFilterChain programs(HttpSecurity http, ApiTokens tokens) {
        http.securityMatcher("/api/**", "/calendar/**");
        http.authorizeHttpRequests(may -> may.anyRequest().authenticated());
        // A session whose cookie comes along by chance is left as it is.
        http.sessionManagement(s ->
                s.sessionCreationPolicy(SessionCreationPolicy.STATELESS).sessionFixation(fixation -> fixation.none()));
        http.csrf(AbstractHttpConfigurer::disable);
        http.requestCache(AbstractHttpConfigurer::disable);
        http.addFilterBefore(new TokenFilter(tokens), UsernamePasswordAuthenticationFilter.class);
        http.exceptionHandling(e -> e.authenticationEntryPoint((request, response, unknown) -> refuse(
                        response,
                        HttpStatus.UNAUTHORIZED,
                        "A token that works is needed. Make one on the page Settings, Tokens."))
                .accessDeniedHandler((request, response, denied) ->
                        refuse(response, HttpStatus.FORBIDDEN, "Your role may not do this.")));
        http.headers(headers -> headers.contentSecurityPolicy(
                        policy -> policy.policyDirectives("default-src 'none'; frame-ancestors 'none'"))
                .httpStrictTransportSecurity(strict -> strict.includeSubDomains(false)));
        return http.build();
    }

    private static void refuse(HttpServletResponse response, HttpStatus status, String detail) throws IOException {
        response.setStatus(status.value());
        if (status == HttpStatus.UNAUTHORIZED) {
            response.setHeader(HttpHeaders.WWW_AUTHENTICATE, "Bearer");
        }
        response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        response.getOutputStream()
                .print("{\"type\":\"about:blank\",\"title\":\"%s\",\"status\":%d,\"detail\":\"%s\"}"
                        .formatted(status.getReasonPhrase(), status.value(), detail));
    }
}
