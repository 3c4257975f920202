package sternwright.app.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as the operating system starts it: its exit status, and its words on the right stream. */
class B05_RealProcessTest {
    @TempDir
    Path folder;

    @Test
    void exitStatusAndStreams() throws IOException, InterruptedException {
        Path yard = folder.resolve("yard");
        assertEquals(0, run("new", "yard", yard.toString()));
        assertTrue(Files.readString(folder.resolve("out")).contains("yard.yaml"));
        assertEquals("", Files.readString(folder.resolve("err")));
        assertEquals(2, run("--yard", folder.toString(), "boats"));
        assertEquals("", Files.readString(folder.resolve("out")));
        assertTrue(
                Files.readString(folder.resolve("err"), StandardCharsets.UTF_8).contains("this folder is not a yard"));
    }

    private int run(String... args) throws IOException, InterruptedException {
        ProcessBuilder program = new ProcessBuilder(
                ProcessHandle.current().info().command().orElse("java"),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                "sternwright.app.Main");
        program.command().addAll(List.of(args));
        program.environment().remove("JAVA_TOOL_OPTIONS");
        return program.redirectOutput(folder.resolve("out").toFile())
                .redirectError(folder.resolve("err").toFile())
                .start()
                .waitFor();
    }
}
