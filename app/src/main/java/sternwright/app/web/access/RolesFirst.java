package sternwright.app.web.access;

import jakarta.annotation.security.RolesAllowed;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Looks at the role before anything of what was sent is read; the guard around each controller looks once more. */
@Configuration(proxyBeanMethods = false)
class RolesFirst implements WebMvcConfigurer, HandlerInterceptor {
    private static final Logger LOG = LoggerFactory.getLogger(RolesFirst.class);

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this);
    }

    @Override
    public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
        if (handler instanceof HandlerMethod method) {
            RolesAllowed own = AnnotatedElementUtils.findMergedAnnotation(method.getMethod(), RolesAllowed.class);
            RolesAllowed said = own == null
                    ? AnnotatedElementUtils.findMergedAnnotation(method.getBeanType(), RolesAllowed.class)
                    : own;
            if (said != null && Arrays.stream(said.value()).noneMatch(request::isUserInRole)) {
                LOG.warn("{} {} was refused to a role that may not", request.getMethod(), method.getShortLogMessage());
                throw new AccessDeniedException("not for this role");
            }
        }
        return true;
    }
}
