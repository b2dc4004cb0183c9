package pegbed.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What the start script asks of Java, seen by a stand-in for Java that prints its words and exits with 7. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {
    private static final Path SCRIPT = Path.of("src", "main", "launcher", "pegbed");

    @TempDir
    private Path folder;

    private Path home;
    private Path java;
    private Path program;
    private Path script;

    @BeforeEach
    void programWithItsArchive() throws IOException, InterruptedException {
        folder = folder.toRealPath();
        home = Files.createDirectories(folder.resolve("home"));
        java = Files.createDirectories(folder.resolve("some java"));
        Files.writeString(java.resolve("release"), "JAVA_VERSION=\"17.0.1\"\n");
        Path command = Files.createDirectories(java.resolve("bin")).resolve("java");
        Files.writeString(command, "#!/bin/sh\nprintf '%s\\n' \"$@\"\nexit 7\n");
        assertTrue(command.toFile().setExecutable(true));
        program = Files.createDirectories(folder.resolve("the program"));
        script = Files.copy(SCRIPT, program.resolve("pegbed"));
        assertTrue(script.toFile().setExecutable(true));
        Files.writeString(program.resolve("pegbed.jar"), "jar");
        Files.writeString(program.resolve("pegbed.jsa"), "archive");
        ClassArchive.writeChecksums(program.resolve("pegbed.jar"), java);
    }

    private Ended start(Path started, String... words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(started.toString()));
        command.addAll(Arrays.asList(words));
        return Ended.of(folder, Map.of("JAVA_HOME", java.toString(), "HOME", home.toString()), command);
    }

    /** Asserts that the archive is or isn't given to Java, and that nothing else about the start changes. */
    private void assertStarts(boolean withArchive, Path started) throws IOException, InterruptedException {
        Ended ended = start(started, "lines", "my peg.peg.json");
        assertEquals(7, ended.status());
        assertEquals("", ended.err());
        assertTrue(
                ended.out()
                        .endsWith(String.join(
                                "\n", "-jar", program.resolve("pegbed.jar").toString(), "lines", "my peg.peg.json\n")),
                ended.out());
        assertEquals(
                withArchive,
                ended.out().contains("-XX:SharedArchiveFile=" + program.resolve("pegbed.jsa") + "\n"),
                ended.out());
        try (var kept = Files.list(home)) {
            assertEquals(List.of(), kept.toList());
        }
    }

    @Test
    void anArchiveThatIsAsItWasMadeIsTaken() throws IOException, InterruptedException {
        assertStarts(true, script);
    }

    @Test
    void linksToTheScriptAreFollowed() throws IOException, InterruptedException {
        Path bin = Files.createDirectories(folder.resolve("a bin"));
        Path absolute = Files.createSymbolicLink(bin.resolve("absolute"), script);
        Files.createSymbolicLink(bin.resolve("relative"), Path.of("..", "the program", "pegbed"));
        Path linkToLink = Files.createSymbolicLink(folder.resolve("link"), Path.of("a bin", "relative"));
        Path linkedFolder = Files.createSymbolicLink(folder.resolve("linked"), program);
        assertStarts(true, absolute);
        assertStarts(true, linkToLink);
        assertStarts(true, linkedFolder.resolve("pegbed"));
    }

    @Test
    void aJavaBehindALinkIsFollowed() throws IOException, InterruptedException {
        Path links = Files.createDirectories(folder.resolve("links").resolve("bin"));
        Files.createSymbolicLink(links.resolve("java"), java.resolve("bin").resolve("java"));
        java = links.getParent();
        assertStarts(true, script);
    }

    @Test
    void anArchiveCutShortIsLeft() throws IOException, InterruptedException {
        Files.writeString(program.resolve("pegbed.jsa"), "arch");
        assertStarts(false, script);
    }

    @Test
    void anArchiveWithOneByteChangedIsLeft() throws IOException, InterruptedException {
        Files.writeString(program.resolve("pegbed.jsa"), "archivf");
        assertStarts(false, script);
    }

    @Test
    void anEmptyArchiveAndEmptyChecksumsAreLeft() throws IOException, InterruptedException {
        Files.writeString(program.resolve("pegbed.jsa"), "");
        Files.writeString(program.resolve("pegbed.jsa.cksum"), "");
        assertStarts(false, script);
    }

    @Test
    void anArchiveThatIsAFolderIsLeft() throws IOException, InterruptedException {
        Files.delete(program.resolve("pegbed.jsa"));
        Files.createDirectory(program.resolve("pegbed.jsa"));
        assertStarts(false, script);
    }

    @Test
    void anArchiveWithoutChecksumsIsLeft() throws IOException, InterruptedException {
        Files.delete(program.resolve("pegbed.jsa.cksum"));
        assertStarts(false, script);
    }

    @Test
    void anArchiveThatCanNotBeReadIsLeft() throws IOException, InterruptedException {
        // The one who may read everything may read this too.
        if (program.resolve("pegbed.jsa").toFile().setReadable(false)
                && !Files.isReadable(program.resolve("pegbed.jsa"))) {
            assertStarts(false, script);
        }
        Files.delete(program.resolve("pegbed.jsa"));
        Files.createSymbolicLink(program.resolve("pegbed.jsa"), Path.of("nowhere"));
        assertStarts(false, script);
    }

    @Test
    void anArchiveOfAnotherJarIsLeft() throws IOException, InterruptedException {
        Files.writeString(program.resolve("pegbed.jar"), "newer jar");
        assertStarts(false, script);
    }

    @Test
    void anArchiveOfAnotherJavaIsLeft() throws IOException, InterruptedException {
        Files.writeString(java.resolve("release"), "JAVA_VERSION=\"21.0.1\"\n");
        assertStarts(false, script);
        Files.delete(java.resolve("release"));
        assertStarts(false, script);
    }

    @Test
    void anArchiveThatWasMovedIsLeft() throws IOException, InterruptedException {
        program = Files.move(program, folder.resolve("moved"));
        assertStarts(false, program.resolve("pegbed"));
    }

    @Test
    void withoutTheJarItSaysHowToMakeIt() throws IOException, InterruptedException {
        Files.delete(program.resolve("pegbed.jar"));
        Ended ended = start(script, "--help");
        assertEquals(2, ended.status());
        assertEquals("", ended.out());
        assertTrue(ended.err().startsWith("pegbed.jar is missing in " + program + "; make it with mvn"), ended.err());
    }

    @Test
    void withoutJavaItSaysSo() throws IOException, InterruptedException {
        java = folder.resolve("none");
        Ended ended = start(script, "--help");
        assertEquals(2, ended.status());
        assertEquals("", ended.out());
        assertTrue(ended.err().startsWith("Java is missing; install Java 17"), ended.err());
    }

    @Test
    void benchesRunWithJavasSecondCompilerAndAllElseWithout() throws IOException, InterruptedException {
        assertFalse(start(script, "bench", "quality").out().contains("TieredStopAtLevel"));
        assertTrue(start(script, "lines", "bench").out().contains("-XX:TieredStopAtLevel=1\n"));
        assertTrue(start(script).out().contains("-XX:TieredStopAtLevel=1\n"));
    }
}
