package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Bad input gets one sentence and exit status 2, and nothing is written. */
class BadInputTest {
    private static final String HEADER = "distance_m,angle_deg,depth_m\n";
    private static final String GOOD = HEADER + "5,0,1.5\n7,10,1.2\n";
    private static final String BANKS = "bank,x_m,y_m\nnear,-12,-1\nnear,12,-1\nfar,-12,11\nfar,12,11\n";

    @TempDir
    private Path folder;

    private Path readings;
    private Path banks;
    private Path peg;

    @BeforeEach
    void paths() {
        readings = folder.resolve("readings.csv");
        banks = folder.resolve("banks.csv");
        peg = folder.resolve("peg.peg.json");
    }

    static Stream<Arguments> tables() {
        return Stream.of(
                Arguments.of("empty readings", "", BANKS, "readings.csv"),
                Arguments.of("no header", "5,0,1.5\n7,10,1.2\n", BANKS, "distance_m"),
                Arguments.of("wrong column", "distance_m,angle_deg,deep\n5,0,1.5\n", BANKS, "depth_m"),
                Arguments.of("text in a number", HEADER + "5,0,deep\n", BANKS, "deep"),
                Arguments.of("not a number", HEADER + "5,0,NaN\n", BANKS, "NaN"),
                Arguments.of("infinity", HEADER + "Infinity,0,1.2\n", BANKS, "Infinity"),
                Arguments.of("negative depth", HEADER + "5,0,-1.2\n", BANKS, "-1.2"),
                Arguments.of("depth over 30 m", HEADER + "5,0,31\n", BANKS, "30"),
                Arguments.of(
                        "readings that disagree", HEADER + "5,0,1.2\n6,0,1.3\n5,0,2.4\n", BANKS, "Readings 1 and 3"),
                Arguments.of("empty banks", GOOD, "", "banks.csv"),
                Arguments.of("one bank point", GOOD, "bank,x_m,y_m\nnear,0,-1\n", "near bank"),
                Arguments.of("one far point", GOOD, "bank,x_m,y_m\nnear,-9,-1\nnear,9,-1\nfar,0,9\n", "far bank"),
                Arguments.of(
                        "crossing banks",
                        GOOD,
                        "bank,x_m,y_m\nnear,-12,-1\nnear,12,6\nfar,-12,11\nfar,12,-1\n",
                        "cross"),
                Arguments.of(
                        "far bank behind the seat",
                        GOOD,
                        "bank,x_m,y_m\nnear,-12,-1\nnear,12,-1\nfar,-12,-5\nfar,12,-5\n",
                        "far bank"),
                Arguments.of("unknown bank", GOOD, "bank,x_m,y_m\nleft,-12,-1\nnear,12,-1\n", "left"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("tables")
    void isRefusedWithOneSentence(String name, String readingRows, String bankRows, String named) throws IOException {
        Files.writeString(readings, readingRows);
        Files.writeString(banks, bankRows);
        Ran ran = Ran.pegbed("new", peg, "--readings", readings, "--banks", banks);
        assertEquals(2, ran.status(), ran.out());
        assertTrue(ran.err().contains(named), ran.err());
        assertEquals(1, ran.err().strip().lines().count(), ran.err());
        assertTrue(ran.err().strip().endsWith("."), ran.err());
        assertFalse(Files.exists(peg));
        assertEquals("", ran.out());
    }

    @Test
    void onLandIsWarnedOfAndKept() throws IOException {
        Files.writeString(readings, GOOD + "12.5,3,0.4\n");
        Files.writeString(banks, BANKS);
        Ran ran = Ran.pegbed("new", peg, "--readings", readings, "--banks", banks, "--reach", 13);
        assertEquals(0, ran.status());
        assertTrue(ran.err().contains("Reading 3 at 12.5 m, 3° lies on land"), ran.err());
        assertTrue(Ran.pegbed("lines", peg, "--json").out().contains("lies on land"));
    }

    @Test
    void whatIsNotAPegIsRefused() throws IOException {
        for (String content : new String[] {"", "hello", "{}", "[1, 2]", "{\"format\": \"other\", \"version\": 1}"}) {
            Files.writeString(peg, content);
            for (String command : new String[] {"lines", "check"}) {
                Ran ran = Ran.pegbed(command, peg);
                assertEquals(2, ran.status(), content);
                assertEquals(1, ran.err().strip().lines().count(), ran.err());
            }
            assertEquals(content, Files.readString(peg));
        }
        Ran missing = Ran.pegbed("lines", folder.resolve("none.peg.json"));
        assertEquals(2, missing.status());
        assertTrue(missing.err().contains("There is no file"), missing.err());
        assertEquals(2, Ran.pegbed("lines", folder).status());
    }

    @Test
    void aNewerVersionIsRefusedAndLeftAlone() throws IOException {
        Files.writeString(peg, "{\"format\": \"pegbed-peg\", \"version\": 99}");
        Ran ran = Ran.pegbed("add", peg, "5 0 4'");
        assertEquals(2, ran.status());
        assertTrue(ran.err().contains("later Pegbed"), ran.err());
        assertEquals("{\"format\": \"pegbed-peg\", \"version\": 99}", Files.readString(peg));
    }

    @Test
    void aFolderThatIsNotThereIsNamed() throws IOException {
        Files.writeString(readings, GOOD);
        Files.writeString(banks, BANKS);
        Ran ran = Ran.pegbed(
                "new", folder.resolve("missing").resolve("p.peg.json"), "--readings", readings, "--banks", banks);
        assertEquals(2, ran.status());
        assertEquals(1, ran.err().strip().lines().count(), ran.err());
    }

    @Test
    void aReachThatIsNoPoleIsRefused() throws IOException {
        Files.writeString(readings, GOOD);
        Files.writeString(banks, BANKS);
        for (String reach : new String[] {"0", "-3", "NaN", "99", "long"}) {
            Ran ran = Ran.pegbed("new", peg, "--readings", readings, "--banks", banks, "--reach", reach);
            assertEquals(2, ran.status(), reach);
            assertFalse(Files.exists(peg));
        }
    }
}
