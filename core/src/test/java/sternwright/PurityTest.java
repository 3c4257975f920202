package sternwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The core is pure: no clock, file, network, database or log; solver types stay where they are hidden. */
class PurityTest {
    private final JavaClasses core =
            new ClassFileImporter(List.of(new ImportOption.DoNotIncludeTests())).importPackages("sternwright");

    @Test
    void noFilesNetworkDatabaseOrLog() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.io..", "java.nio.file..", "java.net..", "java.sql..", "java.util.logging..")
                .because("files, network and stores live in app; the core gets records and gives records")
                .allowEmptyShould(true)
                .check(core);
    }

    @Test
    void noClock() {
        for (Class<?> type :
                new Class<?>[] {LocalDate.class, LocalDateTime.class, ZonedDateTime.class, Instant.class, Clock.class
                }) {
            noClasses()
                    .should()
                    .callMethod(type, type == Clock.class ? "systemDefaultZone" : "now")
                    .because("today is an argument, so that every run can be repeated")
                    .allowEmptyShould(true)
                    .check(core);
        }
    }

    @Test
    void solverTypesStayInVisitAndSeason() {
        noClasses()
                .that()
                .resideOutsideOfPackages("sternwright.visit..", "sternwright.season..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("com.google.ortools..")
                .because("a solver is a detail of the two planners")
                .allowEmptyShould(true)
                .check(core);
    }
}
