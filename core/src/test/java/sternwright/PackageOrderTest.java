package sternwright;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One way through the house: each package may use only what stands before it in the list. */
class PackageOrderTest {
    /** The order. A new package is added here, at the place where it belongs. */
    static final List<String> ORDER = List.of(
            "measure", "finding", "boat", "yard", "history", "service", "due", "protection", "visit", "season", "job");

    private static final String ROOT = "sternwright";

    private final JavaClasses core =
            new ClassFileImporter(List.of(new ImportOption.DoNotIncludeTests())).importPackages(ROOT);

    @Test
    void eachPackageUsesOnlyWhatStandsBeforeIt() {
        List<String> wrong = new ArrayList<>();
        for (JavaClass type : core) {
            String from = top(type);
            if (from.isEmpty()) {
                continue;
            }
            assertTrue(ORDER.contains(from), "package " + from + " is missing in the order " + ORDER);
            for (Dependency d : type.getDirectDependenciesFromSelf()) {
                String to = top(d.getTargetClass());
                if (!to.isEmpty() && ORDER.indexOf(to) > ORDER.indexOf(from)) {
                    wrong.add(d.getDescription());
                }
            }
        }
        assertTrue(wrong.isEmpty(), "each may use only what stands before it in " + ORDER + ": " + wrong);
    }

    @Test
    void noCyclesBetweenPackages() {
        slices().matching("sternwright.(**)")
                .should()
                .beFreeOfCycles()
                .allowEmptyShould(true)
                .check(core);
    }

    private static String top(JavaClass type) {
        String name = type.getPackageName();
        if (!name.startsWith(ROOT + ".")) {
            return "";
        }
        String rest = name.substring(ROOT.length() + 1);
        int dot = rest.indexOf('.');
        return dot < 0 ? rest : rest.substring(0, dot);
    }
}
