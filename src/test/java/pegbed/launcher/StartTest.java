package pegbed.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The finished program, started by its script, with the class data archive whole, damaged and gone. */
@Tag("slow")
@DisabledOnOs(OS.WINDOWS)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StartTest {
    private static final Path BUILT = Path.of("target");
    private static final Path PEG = Path.of("sample-pegs", "tansy-cut-14.peg.json");

    private Path program;
    private Path archive;
    private Path work;
    private Ended whole;

    @BeforeAll
    void aCopyWithAnArchiveOfItsOwn(@TempDir Path folder) throws IOException, InterruptedException {
        program = Files.createDirectory(folder.resolve("program")).toRealPath();
        work = Files.createDirectory(folder.resolve("work"));
        Files.copy(BUILT.resolve("pegbed"), program.resolve("pegbed"), StandardCopyOption.COPY_ATTRIBUTES);
        Path jar = Files.copy(BUILT.resolve("pegbed.jar"), program.resolve("pegbed.jar"));
        archive = ClassArchive.archive(jar);
        ClassArchive.main(new String[] {jar.toString(), PEG.toString()});
        whole = lines();
    }

    private Ended lines() throws IOException, InterruptedException {
        String java = System.getProperty("java.home");
        return Ended.of(
                work,
                Map.of("JAVA_HOME", java, "HOME", work.toString(), "PEGBED_HOME", "none"),
                List.of(
                        program.resolve("pegbed").toString(),
                        "lines",
                        PEG.toAbsolutePath().toString(),
                        "--json"));
    }

    /** The command does and says what it always does, and leaves no crash report where it was started. */
    private void assertAsEver() throws IOException, InterruptedException {
        assertEquals(whole, lines());
        try (var left = Files.list(work)) {
            assertEquals(List.of(), left.toList());
        }
    }

    @Test
    void theBuildLeavesTheScriptThatCanBeExecutedAndAnArchiveThatJavaTakes() throws IOException, InterruptedException {
        assertTrue(Files.isExecutable(BUILT.resolve("pegbed")));
        Path jar = BUILT.resolve("pegbed.jar").toRealPath();
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        // -Xshare:on ends with an error where an archive can't be used.
        Ended ended = Ended.of(
                work,
                Map.of(),
                List.of(
                        java,
                        "-XX:+UseSerialGC",
                        "-Xshare:on",
                        "-XX:SharedArchiveFile=" + ClassArchive.archive(jar),
                        "-jar",
                        jar.toString(),
                        "--version"));
        assertEquals(0, ended.status(), ended.toString());
    }

    @Test
    void aCommandIsDone() throws IOException, InterruptedException {
        assertEquals(0, whole.status(), whole.err());
        assertEquals("", whole.err());
        assertTrue(whole.out().startsWith("{") && whole.out().endsWith("}\n"), whole.out());
        assertAsEver();
    }

    @Test
    void lettersComeThroughWithoutALocale() throws IOException, InterruptedException {
        // The test itself must be able to name the file.
        assumeTrue(Charset.forName(System.getProperty("sun.jnu.encoding")).equals(StandardCharsets.UTF_8));
        for (String locale : List.of("C", "POSIX", "")) {
            Path peg = Files.copy(PEG, work.resolve("für.peg.json"));
            try {
                Ended ended = Ended.of(
                        work,
                        Map.of("JAVA_HOME", System.getProperty("java.home"), "LC_ALL", locale, "LANG", ""),
                        List.of(program.resolve("pegbed").toString(), "add", "für.peg.json", "5 0 5'8 für"));
                assertEquals(0, ended.status(), ended.err());
                assertTrue(ended.out().contains("note: für"), ended.out());
                assertTrue(Files.readString(peg).contains("\"note\": \"für\""), locale);
            } finally {
                Files.delete(peg);
                Files.delete(work.resolve(".pegbed-earlier/für.peg.json.1"));
                Files.delete(work.resolve(".pegbed-earlier/für.peg.json.lock"));
                Files.delete(work.resolve(".pegbed-earlier"));
            }
        }
    }

    @Test
    void aFolderThatIsGoneIsSaid() throws IOException, InterruptedException {
        String start = "mkdir gone && cd gone && rmdir ../gone && exec \"$0\" lines \"$1\" 2>&1";
        Ended ended = Ended.of(
                work,
                Map.of("JAVA_HOME", System.getProperty("java.home")),
                List.of(
                        "sh",
                        "-c",
                        start,
                        program.resolve("pegbed").toString(),
                        PEG.toAbsolutePath().toString()));
        assertEquals(2, ended.status(), ended.toString());
        // The shell has a line of its own before it.
        assertTrue(
                ended.out().endsWith("is no longer there; go to another one with cd, and start Pegbed there.\n"),
                ended.toString());
    }

    @Test
    void anArchiveCutShortChangesNothing() throws IOException, InterruptedException {
        byte[] kept = Files.readAllBytes(archive);
        try {
            assertTrue(archive.toFile().setWritable(true));
            for (long size : List.of(kept.length / 2L, 4096L, 0L)) {
                try (FileChannel channel = FileChannel.open(archive, StandardOpenOption.WRITE)) {
                    channel.truncate(size);
                }
                assertAsEver();
            }
            Files.delete(archive);
            assertAsEver();
        } finally {
            Files.write(archive, kept);
        }
    }

    @Test
    void anArchiveOfAnotherJavaChangesNothingEvenWhereItsChecksumIsRight() throws IOException, InterruptedException {
        byte[] kept = Files.readAllBytes(archive);
        byte[] others = kept.clone();
        // The header names the Java that made the archive, within its first kilobyte.
        int at = new String(kept, 0, 1024, StandardCharsets.ISO_8859_1).indexOf(System.getProperty("java.vm.name"));
        assertTrue(at > 0);
        others[at] = '?';
        try {
            assertTrue(archive.toFile().setWritable(true));
            Files.write(archive, others);
            ClassArchive.writeChecksums(program.resolve("pegbed.jar"), Path.of(System.getProperty("java.home")));
            assertAsEver();
        } finally {
            Files.write(archive, kept);
            ClassArchive.writeChecksums(program.resolve("pegbed.jar"), Path.of(System.getProperty("java.home")));
        }
    }
}
