package sternwright.app.web.page;

import java.time.Duration;
import java.util.List;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.MethodParameter;
import org.springframework.core.io.ClassPathResource;
import org.springframework.http.CacheControl;
import org.springframework.web.bind.support.WebDataBinderFactory;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.method.support.ModelAndViewContainer;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.springframework.web.servlet.resource.VersionResourceResolver;
import sternwright.app.desk.open.OpenYard;
import sternwright.app.files.problem.BadInput;
import sternwright.measure.unit.YardUnits;
import sternwright.yard.Yard;

/** Puts the pages together: controllers get their {@link Page}, browsers their files. */
@Configuration(proxyBeanMethods = false)
class PageSetting implements WebMvcConfigurer {
    private final ObjectProvider<PageFrame> frame;
    private final Assets assets = new Assets();

    PageSetting(ObjectProvider<PageFrame> frame) {
        this.frame = frame;
    }

    @Bean
    static PageFrame pageFrame(
            ObjectProvider<RequestMappingHandlerMapping> mappings, OpenYard yard, ObjectProvider<PageSetting> setting) {
        return new PageFrame(
                () -> mappings.stream()
                        .filter(m -> m.getClass() == RequestMappingHandlerMapping.class)
                        .findFirst()
                        .orElseThrow(),
                () -> sign(yard),
                setting.getObject().assets);
    }

    private static YardSign sign(OpenYard yard) {
        try {
            Yard known = yard.yard();
            return new YardSign(known.name(), known.invented(), known.units());
        } catch (BadInput unreadable) {
            return new YardSign("", false, YardUnits.METRIC);
        }
    }

    @Override
    public void addResourceHandlers(ResourceHandlerRegistry registry) {
        registry.addResourceHandler("/assets/**")
                .addResourceLocations(
                        new ClassPathResource(Assets.PLACE),
                        new ClassPathResource(Assets.HTMX.substring(0, Assets.HTMX.lastIndexOf('/') + 1)))
                .setCacheControl(CacheControl.maxAge(Duration.ofDays(365)).immutable())
                .resourceChain(true)
                .addResolver(new VersionResourceResolver().addFixedVersionStrategy(assets.version(), "/**"));
        registry.addResourceHandler("/font/**")
                .addResourceLocations(new ClassPathResource("sternwright/app/paper/font/"))
                .setCacheControl(CacheControl.maxAge(Duration.ofDays(30)));
        registry.setOrder(Integer.MAX_VALUE - 1);
    }

    @Override
    public void addArgumentResolvers(List<HandlerMethodArgumentResolver> resolvers) {
        resolvers.add(new PageArgument(frame));
    }

    /** Gives each controller the page of its request. */
    private record PageArgument(ObjectProvider<PageFrame> frame) implements HandlerMethodArgumentResolver {
        @Override
        public boolean supportsParameter(MethodParameter parameter) {
            return parameter.getParameterType() == Page.class;
        }

        @Override
        public Object resolveArgument(
                MethodParameter parameter,
                @org.jspecify.annotations.Nullable ModelAndViewContainer container,
                NativeWebRequest request,
                @org.jspecify.annotations.Nullable WebDataBinderFactory binder) {
            return new Page(
                    java.util.Objects.requireNonNull(
                            request.getNativeRequest(jakarta.servlet.http.HttpServletRequest.class)),
                    frame.getObject());
        }
    }
}
