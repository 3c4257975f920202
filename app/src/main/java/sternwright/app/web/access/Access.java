package sternwright.app.web.access;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import java.util.List;
import org.springframework.aop.ClassFilter;
import org.springframework.aop.support.ComposablePointcut;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.beans.factory.config.BeanDefinition;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Role;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.dao.DaoAuthenticationProvider;
import org.springframework.security.authorization.method.AuthorizationManagerBeforeMethodInterceptor;
import org.springframework.security.authorization.method.Jsr250AuthorizationManager;
import org.springframework.security.config.annotation.method.configuration.EnableMethodSecurity;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configuration.EnableWebSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.UsernamePasswordAuthenticationFilter;
import org.springframework.security.web.context.SecurityContextHolderFilter;
import org.springframework.security.web.csrf.CsrfFilter;
import org.springframework.security.web.firewall.HttpFirewall;
import org.springframework.security.web.firewall.StrictHttpFirewall;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter.CrossOriginOpenerPolicy;
import org.springframework.security.web.header.writers.CrossOriginResourcePolicyHeaderWriter.CrossOriginResourcePolicy;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.session.config.SessionRepositoryCustomizer;
import org.springframework.session.jdbc.JdbcIndexedSessionRepository;
import org.springframework.session.jdbc.PostgreSqlJdbcIndexedSessionRepositoryCustomizer;
import sternwright.app.account.Accounts;
import sternwright.app.account.AuditTrail;
import sternwright.app.account.SignInLimit;
import sternwright.app.account.SignInNames;

/** Guards every page. What is not opened here by name is for people who have signed in. */
@Configuration(proxyBeanMethods = false)
public class Access {
    /** Apart from the parts below: Spring takes a class of this kind for a part to be made before all guards, with all it makes. */
    @Configuration(proxyBeanMethods = false)
    @EnableWebSecurity
    @EnableMethodSecurity(prePostEnabled = false)
    static class On {}

    /** Looks for roles in the product's own parts alone: looking through all of the framework's takes a tenth of a start. */
    @Bean
    @Role(BeanDefinition.ROLE_INFRASTRUCTURE)
    static AuthorizationManagerBeforeMethodInterceptor roles() {
        ClassFilter own = type -> type.getName().startsWith(OWN);
        return new AuthorizationManagerBeforeMethodInterceptor(
                new ComposablePointcut(own)
                        .intersection(AuthorizationManagerBeforeMethodInterceptor.jsr250()
                                .getPointcut()),
                new Jsr250AuthorizationManager());
    }

    private static final String OWN = "sternwright.";

    /** What may be asked for without signing in. */
    public static final List<String> OPEN = List.of(
            "/assets/**",
            "/font/**",
            "/favicon.ico",
            "/health",
            "/phone",
            "/phone/*",
            "/error",
            "/look",
            "/sign-in",
            "/first-start",
            "/password/*",
            "/estimate/*",
            "/estimate/*/pdf");

    /** No script, style, picture or frame from anywhere else, and none written into a page. */
    static final String CONTENT_POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self';"
            + " font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; form-action 'self';"
            + " base-uri 'none'; frame-ancestors 'none'";

    /** Argon2id with 19 MiB, two passes and one lane (OWASP, Password Storage Cheat Sheet). */
    @Bean
    static PasswordEncoder passwordHash() {
        return new Argon2PasswordEncoder(16, 32, 1, 19 * 1024, 2);
    }

    @Bean
    static AuthenticationProvider signingIn(SignInNames names, PasswordEncoder hash) {
        DaoAuthenticationProvider provider = new DaoAuthenticationProvider(names::of);
        provider.setPasswordEncoder(hash);
        // Whether an account is locked is told to nobody who does not know its password.
        provider.setPreAuthenticationChecks(account -> {});
        provider.setPostAuthenticationChecks(new StillOpen());
        return provider;
    }

    /**
     * Two requests of one session may add the same thing to it at once; the later one leads and none fails. The statement reads the
     * same in SQLite.
     */
    @Bean
    static SessionRepositoryCustomizer<JdbcIndexedSessionRepository> sessionsAtOnce() {
        return new PostgreSqlJdbcIndexedSessionRepositoryCustomizer();
    }

    @Bean
    static HttpFirewall firewall(KnownHosts hosts) {
        StrictHttpFirewall firewall = new StrictHttpFirewall();
        firewall.setAllowedHostnames(hosts::knows);
        firewall.setAllowedHttpMethods(List.of("GET", "HEAD", "POST", "PUT", "PATCH", "DELETE"));
        return firewall;
    }

    @Bean
    static SecurityFilterChain pages(
            HttpSecurity http,
            Accounts accounts,
            SignInLimit limit,
            AuditTrail audit,
            @Value("${server.servlet.session.cookie.name}") String cookie) {
        SignInOutcome outcome = new SignInOutcome(limit, accounts, audit);
        http.authorizeHttpRequests(may -> may.dispatcherTypeMatchers(DispatcherType.ERROR, DispatcherType.FORWARD)
                .permitAll()
                .requestMatchers(OPEN.toArray(String[]::new))
                .permitAll()
                .anyRequest()
                .authenticated());
        http.formLogin(form -> form.loginPage("/sign-in")
                .usernameParameter("name")
                .passwordParameter("password")
                .successHandler(outcome)
                .failureHandler(outcome));
        http.logout(
                out -> out.logoutUrl("/sign-out").logoutSuccessUrl("/sign-in").deleteCookies(cookie));
        http.exceptionHandling(e -> e.authenticationEntryPoint(new AskWhoItIs()));
        http.addFilterBefore(new TooLargeFilter(), CsrfFilter.class);
        http.addFilterBefore(new SessionAge(), SecurityContextHolderFilter.class);
        http.addFilterBefore(new FirstStartFilter(accounts), UsernamePasswordAuthenticationFilter.class);
        http.addFilterBefore(new SignInLimitFilter(limit), UsernamePasswordAuthenticationFilter.class);
        http.headers(Access::headers);
        return http.build();
    }

    /** Browsers are told to stay with https for names of this machine; the name localhost belongs to other programs too. */
    private static boolean named(HttpServletRequest request) {
        return request.isSecure() && !request.getServerName().equalsIgnoreCase("localhost");
    }

    private static void headers(HeadersConfigurer<HttpSecurity> headers) {
        headers.contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_POLICY));
        headers.frameOptions(frame -> frame.deny());
        headers.httpStrictTransportSecurity(strict -> strict.requestMatcher(Access::named)
                .includeSubDomains(false)
                .maxAgeInSeconds(Duration.ofDays(365).toSeconds()));
        headers.referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.SAME_ORIGIN));
        headers.permissionsPolicyHeader(
                policy -> policy.policy("camera=(), geolocation=(), microphone=(), payment=(), usb=()"));
        headers.crossOriginOpenerPolicy(policy -> policy.policy(CrossOriginOpenerPolicy.SAME_ORIGIN));
        headers.crossOriginResourcePolicy(policy -> policy.policy(CrossOriginResourcePolicy.SAME_ORIGIN));
    }
}
