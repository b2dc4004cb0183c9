package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbed.geodesy.LocalFrame;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.model.Position;
import pegbed.notation.LatitudeLongitude;
import pegbed.storage.disk.PegFile;

/** {@code pegbed position} on the sample peg 14, whose marks are the leaning post and the split ash. */
class PositionCommandTest {
    @TempDir
    private Path folder;

    private Path peg;

    @BeforeEach
    void sample() throws IOException {
        peg = folder.resolve("14.peg.json");
        Files.copy(Path.of("sample-pegs/tansy-cut-14.peg.json"), peg);
    }

    private Ran position(String... words) {
        String[] all = new String[words.length + 2];
        all[0] = "position";
        all[1] = peg.toString();
        System.arraycopy(words, 0, all, 2, words.length);
        return Ran.pegbed((Object[]) all);
    }

    private Position kept() throws InputException {
        return PegFile.read(peg).peg().position().orElseThrow();
    }

    @Test
    void aTypedPositionIsKeptWithTheAccuracyOfItsFix() throws Exception {
        assertEquals(1, position().status());
        Ran set = position("--at", "52.1234,-1.2345", "--bearing", "312.5", "--accuracy", "4");
        assertEquals(0, set.status(), set.err());
        assertEquals(new Position(52.1234, -1.2345, 312.5, OptionalDouble.of(4)), kept());
        assertEquals(
                "Seat at 52.1234,-1.2345 within 4.0 m (95 in 100); straight out is 312.5 degrees true.",
                set.out().strip());
        assertEquals(set.out(), position().out());
        assertEquals(0, position("--bearing", "10").status());
        assertEquals(new Position(52.1234, -1.2345, 10, OptionalDouble.of(4)), kept());
        JsonNode json = new ObjectMapper().readTree(position("--json").out());
        assertEquals(4, json.path("position_accuracy_m").asDouble());
    }

    @Test
    void takenOutAgainTheFileIsAsItWas() throws Exception {
        byte[] before = Files.readAllBytes(peg);
        position("--at", "52.1234,-1.2345", "--bearing", "312.5", "--accuracy", "4");
        assertEquals(0, position("--none").status());
        assertArrayEquals(before, Files.readAllBytes(peg));
    }

    @Test
    void marksGiveItAndSayHowWellTheyAgree() throws Exception {
        Position meant = new Position(52.1234, -1.2345, 312.5);
        String post = "leaning post=" + where(meant, "leaning post");
        String ash = "split ash=" + where(meant, "split ash");
        Ran two = position("--mark", post, "--mark", ash);
        assertEquals(0, two.status(), two.err());
        assertTrue(two.out().contains("leaning post comes to lie"), two.out());
        assertEquals(312.5, kept().bearingDegrees(), 0.1);
        assertEquals(52.1234, kept().latitudeDegrees(), 1e-7);
        Ran one = position("--at", "52.1234,-1.2345", "--mark", ash, "--json");
        assertEquals(0, one.status(), one.err());
        assertTrue(
                new ObjectMapper().readTree(one.out()).path("residuals").get(0).has("residual_m"));
        assertEquals(312.5, kept().bearingDegrees(), 0.1);
    }

    /** Where a mark of the peg would be on the earth, to a centimetre. */
    private String where(Position position, String name) throws InputException {
        Place mark = PegFile.read(peg).peg().marks().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow()
                .place();
        double[] at = {mark.xMetres(), mark.yMetres()};
        LocalFrame.of(position).toEarth(at);
        return new LatitudeLongitude(at[1], at[0]).text();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--bearing 20 | A bearing alone says nothing without a position",
                "--accuracy 4 | --accuracy alone says nothing without a position",
                "--at 52,-1 | A position alone does not say which way the peg looks",
                "--at 90,0 --bearing 3 | The latitude 90 is too near a pole",
                "--at 52.1 --bearing 3 | '52.1' is no place on the earth",
                "--at 52,-1 --bearing 361 | --bearing is a true bearing between 0 and 360",
                "--at 52,-1 --bearing 3 --accuracy -1 | --accuracy is a number of metres between 0 and 1000000",
                "--mark oak=52,-1 | The peg has no mark 'oak'; it has",
                "--at 52,-1 --bearing 3 --mark oak=52,-1 | --mark finds the bearing",
                "--none --bearing 3 | --none takes the position out"
            })
    void badInputGetsOneSentenceAndChangesNothing(String words, String sentence) throws IOException {
        byte[] before = Files.readAllBytes(peg);
        Ran ran = position(words.split(" "));
        assertEquals(2, ran.status());
        assertTrue(ran.err().startsWith(sentence), ran.err());
        assertEquals(1, ran.err().strip().lines().count());
        assertArrayEquals(before, Files.readAllBytes(peg));
    }
}
