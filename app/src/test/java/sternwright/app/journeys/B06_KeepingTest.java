package sternwright.app.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sternwright.app.command.CommandProgram;

/** A yard begun as files is taken into a store, worked on, backed up, restored elsewhere and written out as files again. */
class B06_KeepingTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-10-01");

    @TempDir
    Path root;

    private record Said(int status, String out, String err) {}

    @Test
    void fromFilesToTheStoreAndBack() throws Exception {
        String yard = root.resolve("yard").toString();
        assertEquals(0, run("new", "yard", yard).status);
        assertEquals(0, run("--yard", yard, "new", "boat", "--arrangement", "saildrive", "--id", "tern").status);
        Said dueInFiles = run("--yard", yard, "due", "tern");

        Said taken = run("--yard", yard, "import", "folder");
        assertEquals(0, taken.status, taken.err);
        assertTrue(taken.out.contains("kept there from now on"), taken.out);
        assertEquals(dueInFiles, run("--yard", yard, "due", "tern"));

        Said recorded =
                run("--yard", yard, "record", "tern", "--work", "change-engine-oil", "--hours", "12", "--who", "AB");
        assertEquals(0, recorded.status, recorded.err);
        assertTrue(Files.notExists(root.resolve("yard/history/tern.csv")), "the files stay as they were");

        Path file = root.resolve("yard.backup");
        Said backup = run("--yard", yard, "backup", file.toString());
        assertEquals(0, backup.status, backup.err);
        assertTrue(backup.out.contains("every hash right"), backup.out);
        assertEquals(2, run("--yard", yard, "backup", file.toString()).status, "never over a file");
        assertEquals(0, run("verify", file.toString()).status);
        assertEquals(0, run("--yard", yard, "verify").status);

        String other = root.resolve("other").toString();
        Said restored = run("--yard", other, "restore", file.toString());
        assertEquals(0, restored.status, restored.err);
        assertEquals(run("--yard", yard, "due", "tern"), run("--yard", other, "due", "tern"));

        Path out = root.resolve("out");
        Said written = run("--yard", other, "export", "folder", out.toString());
        assertEquals(0, written.status, written.err);
        assertTrue(Files.readString(out.resolve("history/tern.csv")).contains("change-engine-oil"));
        assertEquals(
                Files.readString(root.resolve("yard/boats/tern.yaml")),
                Files.readString(out.resolve("boats/tern.yaml")));
        assertEquals(run("--yard", other, "due", "tern"), run("--yard", out.toString(), "due", "tern"));
        assertEquals(2, run("--yard", other, "export", "folder", out.toString()).status, "never into a filled folder");
        assertEquals(2, run("--yard", other, "import", "folder", out.toString()).status, "never over another yard");
    }

    @Test
    void whatIsNoBackupIsToldAndNothingIsMade() throws Exception {
        Path text = Files.writeString(root.resolve("letter.txt"), "Dear yard");
        for (String file :
                new String[] {text.toString(), root.resolve("nowhere").toString()}) {
            Said said = run("--yard", root.resolve("y").toString(), "restore", file);
            assertEquals(2, said.status, said.err);
            assertTrue(said.err.contains("a file made by sternwright backup"), said.err);
            assertEquals(2, run("verify", file).status);
        }
        assertTrue(Files.notExists(root.resolve("y/.desk/yard.db")));
    }

    private static Said run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = new CommandProgram(TODAY, new PrintWriter(out), new PrintWriter(err)).run(args);
        return new Said(status, out.toString(), err.toString());
    }
}
