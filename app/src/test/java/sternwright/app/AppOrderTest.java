package sternwright.app;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.time.LocalDate;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;

/** One way through the program: files, paper and store know the core; the desk knows those; what people see knows the desk. */
class AppOrderTest {
    private static final String EDGES = "sternwright.app.%s..";

    private final JavaClasses app = new ClassFileImporter(java.util.List.of(new ImportOption.DoNotIncludeTests()))
            .importPackages("sternwright.app");

    @Test
    void filesPaperAndStoreKnowTheCoreOnly() {
        String[] edges = {"files", "paper", "store"};
        for (String edge : edges) {
            for (String other : new String[] {"files", "paper", "store", "desk", "command", "web", "api"}) {
                if (!edge.equals(other) && !(edge.equals("store") && other.equals("files"))) {
                    forbid(edge, other, "what reads and writes facts knows the core only");
                }
            }
        }
    }

    @Test
    void theDeskIsNotToldWhoAsks() {
        for (String face : new String[] {"command", "web", "api"}) {
            forbid("desk", face, "a deed is the same whoever asks for it");
        }
    }

    @Test
    void facesDoNotKnowEachOther() {
        String[] faces = {"command", "web", "api"};
        for (String one : faces) {
            for (String other : faces) {
                if (!one.equals(other)) {
                    forbid(one, other, "each face shows the deeds of the desk by itself");
                }
            }
        }
    }

    @Test
    void noCycles() {
        slices().matching("sternwright.app.(*)..").should().beFreeOfCycles().check(app);
        for (String inner : new String[] {"command", "desk", "web"}) {
            slices().matching("sternwright.app." + inner + ".(*)..")
                    .should()
                    .beFreeOfCycles()
                    .check(app);
        }
    }

    @Test
    void theClockIsReadAtTheEntryOnly() {
        for (Class<?> type : new Class<?>[] {LocalDate.class, LocalDateTime.class}) {
            noClasses()
                    .that()
                    .resideInAnyPackage("sternwright.app.files..", "sternwright.app.paper..", "sternwright.app.desk..")
                    .should()
                    .callMethod(type, "now")
                    .because("today is an argument, so that every run can be repeated")
                    .check(app);
        }
    }

    private void forbid(String from, String to, String because) {
        noClasses()
                .that()
                .resideInAPackage(EDGES.formatted(from))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(EDGES.formatted(to))
                .because(because)
                .allowEmptyShould(true)
                .check(app);
    }
}
