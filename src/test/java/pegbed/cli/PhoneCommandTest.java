package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.page.PhonePage;

/** The command that hands Pegbed over to a phone. */
class PhoneCommandTest {
    private static final Path PEG = Path.of("sample-pegs/tansy-cut-14.peg.json");

    @TempDir
    private Path folder;

    @Test
    void builtWithoutThePageItSaysHowToBuildIt() {
        assumeTrue(PhonePage.class.getResource("parts/index.html") == null, "this build has the page");
        Ran ran = Ran.pegbed("phone", "--out", folder.resolve("page"));
        assertEquals(2, ran.status());
        assertEquals(
                "This Pegbed was built without the page for a phone; build it with 'mvn -P phone package'.",
                ran.err().strip());
        assertTrue(Files.notExists(folder.resolve("page")));
    }

    @Test
    void anEmptyNameIsRefused() {
        Ran ran = Ran.pegbed("phone", "--out", "");
        assertEquals(2, ran.status());
        assertEquals(
                "--out is empty; give a folder, or the name of a file that ends in .html.",
                ran.err().strip());
    }

    @Test
    @Tag("phone")
    void writesTheFolderThatWasBuilt() throws IOException {
        Path out = folder.resolve("web/page");
        Ran ran = Ran.pegbed("phone", "--out", out);
        assertEquals(0, ran.status(), ran.err());
        assertTrue(ran.out().startsWith("Wrote " + out + ". Put the whole folder on web space of your own"), ran.out());
        for (String name : PhonePage.PARTS) {
            assertArrayEquals(
                    Files.readAllBytes(Path.of("target/phone", name)), Files.readAllBytes(out.resolve(name)), name);
        }
    }

    @Test
    @Tag("phone")
    void writesOneFileWithThePegInside() throws IOException {
        Path out = folder.resolve("peg.html");
        Ran ran = Ran.pegbed("phone", PEG, "--out", out);
        assertEquals(0, ran.status(), ran.err());
        assertTrue(Files.readString(out).contains("\"name\":\"tansy-cut-14.peg.json\""));
    }

    @Test
    @Tag("phone")
    void aFileInTheFoldersPlaceIsRefused() throws IOException {
        Path out = Files.createFile(folder.resolve("page"));
        Ran ran = Ran.pegbed("phone", "--out", out);
        assertEquals(2, ran.status());
        assertTrue(ran.err().strip().endsWith(" is a file; give a folder, or the name of a file that ends in .html."));
    }
}
