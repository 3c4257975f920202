package sternwright.app.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import sternwright.app.account.Role;

/** Who may open what. */
class RolesTest extends PageTest {
    @Test
    void everyPageSaysWhoMayOpenIt() {
        List<String> silent = desk().part(RequestMappingHandlerMapping.class).getHandlerMethods().values().stream()
                .filter(m -> m.getBeanType().getPackageName().startsWith("sternwright"))
                .filter(m -> !says(m))
                .map(HandlerMethod::toString)
                .toList();
        assertEquals(List.of(), silent, "put one of the annotations of web.access on these");
    }

    private static boolean says(HandlerMethod method) {
        return method.getBeanType() != null
                && List.of(RolesAllowed.class, PermitAll.class).stream()
                        .anyMatch(a -> AnnotatedElementUtils.hasAnnotation(method.getMethod(), a)
                                || AnnotatedElementUtils.hasAnnotation(method.getBeanType(), a));
    }

    @ParameterizedTest
    @EnumSource(value = Role.class, names = "MANAGER", mode = EnumSource.Mode.EXCLUDE)
    void peopleAndAuditAreTheManagersAlone(Role role) {
        as(role, page -> {
            open(page, "/settings/people", 403);
            assertTrue(page.locator("h1").innerText().startsWith("This is not open to you"));
            open(page, "/settings/audit", 403);
            open(page, "/boats", 200);
        });
    }

    @Test
    void aPageThatIsNotThereSaysSo() {
        as(Role.SURVEYOR, page -> {
            open(page, "/nowhere", 404);
            assertEquals("There is no such page", page.locator("h1").innerText());
            open(page, "/settings", 200);
        });
    }
}
