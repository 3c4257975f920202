package sternwright.app.web.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.Utf8ByteOutput;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/** What all pages of a running program have in common: templates, files that travel with it, its index, the yard's sign. */
public final class PageFrame {
    private final TemplateEngine templates = TemplateEngine.createPrecompiled(ContentType.Html);
    private final Supplier<RequestMappingHandlerMapping> mapping;
    private final Supplier<YardSign> sign;
    private final Assets assets;

    @Nullable
    private volatile List<Section> index;

    PageFrame(Supplier<RequestMappingHandlerMapping> mapping, Supplier<YardSign> sign, Assets assets) {
        this.mapping = mapping;
        this.sign = sign;
        this.assets = assets;
    }

    View view(String template, Map<String, Object> values) {
        return new TemplateView(templates, template, values);
    }

    String asset(String name) {
        return assets.path(name);
    }

    YardSign yard() {
        return sign.get();
    }

    List<Section> index() {
        List<Section> known = index;
        if (known == null) {
            Set<String> paths = new HashSet<>();
            mapping.get().getHandlerMethods().keySet().forEach(m -> paths.addAll(m.getPatternValues()));
            known = Arrays.stream(Section.values())
                    .filter(s -> paths.contains(s.path()))
                    .toList();
            index = known;
        }
        return known;
    }

    /** A template with what it shows. It is written whole before anything is sent, so that a mistake never sends half a page. */
    private record TemplateView(TemplateEngine templates, String template, Map<String, Object> values) implements View {
        @Override
        public String getContentType() {
            return "text/html;charset=UTF-8";
        }

        @Override
        public void render(@Nullable Map<String, ?> model, HttpServletRequest request, HttpServletResponse response)
                throws IOException {
            Utf8ByteOutput page = new Utf8ByteOutput();
            templates.render(template, values, page);
            response.setContentType(getContentType());
            response.setContentLength(page.getContentLength());
            page.writeTo(response.getOutputStream());
        }
    }
}
