package sternwright.bench.serve;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.context.annotation.ClassPathScanningCandidateComponentProvider;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.core.type.filter.AnnotationTypeFilter;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** Every address pattern that the program's controllers answer, so that none is left out of a measurement unseen. */
final class Routes {
    private static final String PROGRAM = "sternwright.app";

    private Routes() {}

    /** Patterns such as {@code /boats/{id}}, in order. */
    static Set<String> all() {
        ClassPathScanningCandidateComponentProvider scan = new ClassPathScanningCandidateComponentProvider(false);
        scan.addIncludeFilter(new AnnotationTypeFilter(Controller.class));
        Set<String> patterns = new TreeSet<>();
        scan.findCandidateComponents(PROGRAM).forEach(found -> {
            try {
                Class<?> type = Class.forName(found.getBeanClassName(), false, Routes.class.getClassLoader());
                for (Method method : type.getDeclaredMethods()) {
                    GetMapping mapping = AnnotatedElementUtils.findMergedAnnotation(method, GetMapping.class);
                    if (mapping != null) {
                        patterns.addAll(Arrays.asList(mapping.path()));
                    }
                }
            } catch (ClassNotFoundException e) {
                throw new IllegalStateException(found.getBeanClassName() + " was found and is not there", e);
            }
        });
        return patterns;
    }
}
