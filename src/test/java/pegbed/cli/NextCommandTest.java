package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.Extras;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Visit;
import pegbed.storage.disk.PegFile;

class NextCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path SAMPLE = Path.of("sample-pegs/tansy-cut-14.peg.json");

    @TempDir
    private Path folder;

    private Path peg;

    @BeforeEach
    void make() throws IOException {
        Path readings = folder.resolve("readings.csv");
        Path banks = folder.resolve("banks.csv");
        peg = folder.resolve("peg.peg.json");
        Files.writeString(readings, "distance_m,angle_deg,depth_m\n2,0,1.2\n");
        Files.writeString(banks, "bank,x_m,y_m\nnear,-12,-1\nnear,12,-1\nfar,-12,11\nfar,12,11\n");
        assertEquals(
                0,
                Ran.pegbed("new", peg, "--readings", readings, "--banks", banks, "--reach", 13)
                        .status());
    }

    @Test
    void theKeysAreTheContractsAndTheFirstStandsAtTheTop() throws IOException {
        Ran ran = Ran.pegbed("next", peg, "--count", 3, "--json");
        assertEquals(0, ran.status(), ran.err());
        JsonNode answer = JSON.readTree(ran.out());

        assertEquals(3, answer.path("next").size());
        for (JsonNode reading : answer.path("next")) {
            assertTrue(reading.path("distance_m").isNumber());
            assertTrue(reading.path("angle_deg").isNumber());
            assertTrue(reading.path("section").asText().matches("s\\d+([+-][\\d.]+)?"), reading.toString());
            assertFalse(reading.path("aim").asText().isBlank());
            assertTrue(reading.path("why").asText().endsWith("."));
            assertTrue(reading.path("stop").isBoolean());
        }
        JsonNode first = answer.path("next").path(0);
        first.properties().forEach(field -> assertEquals(field.getValue(), answer.path(field.getKey())));
        // 2 m is read; the opening's second place is .3e + 1 straight out, e about 10.5 m.
        assertEquals(4.1, first.path("distance_m").asDouble(), 0.3);
        assertEquals(0, first.path("angle_deg").asDouble());
    }

    @Test
    void aSuggestionCanBeAddedAsItIsTold() throws IOException {
        JsonNode next = JSON.readTree(Ran.pegbed("next", peg, "--json").out());
        Ran added = Ran.pegbed(
                "add",
                peg,
                next.path("section").asText() + " " + next.path("angle_deg").asText() + " 5'");

        assertEquals(0, added.status(), added.err());
        JsonNode after = JSON.readTree(Ran.pegbed("next", peg, "--json").out());
        assertTrue(
                after.path("distance_m").asDouble() > next.path("distance_m").asDouble(),
                "the opening goes on outward");
    }

    @Test
    void inWordsItSaysWhereAndWhy() {
        Ran ran = Ran.pegbed("next", SAMPLE);

        assertEquals(0, ran.status(), ran.err());
        assertTrue(ran.out().contains("section "), ran.out());
        assertTrue(ran.out().matches("(?s).*[Ii]t would .*"), ran.out());
    }

    @Test
    void aCheckLineIsOfferedWhereThereIsAPattern() throws IOException {
        JsonNode answer = JSON.readTree(Ran.pegbed("next", SAMPLE, "--json").out());

        assertEquals(2, answer.path("check_line").size());
        assertTrue(JSON.readTree(Ran.pegbed("next", peg, "--json").out())
                .path("check_line")
                .isMissingNode());
    }

    @Test
    void aCountThatIsNoneIsRefusedInOneSentence() {
        Ran ran = Ran.pegbed("next", peg, "--count", 0);

        assertEquals(2, ran.status());
        assertTrue(ran.err().contains("--count"), ran.err());
        assertEquals(1, ran.err().strip().lines().count());
    }

    @Test
    void atALaterVisitTheLevelComesFirst() throws IOException, InputException {
        Peg nine = PegFile.read(Path.of("sample-pegs/tansy-cut-9.peg.json")).peg();
        List<Visit> visits = new ArrayList<>(nine.visits());
        visits.add(new Visit(Optional.empty(), OptionalDouble.empty(), List.of(), "", Extras.NONE));
        Path third = folder.resolve("third.peg.json");
        PegFile.save(third, nine.withVisits(visits), Optional.empty());
        JsonNode next = JSON.readTree(Ran.pegbed("next", third, "--json").out());
        JsonNode check = JSON.readTree(Ran.pegbed("level", third, "--json").out())
                .path("checks")
                .path(0);
        assertEquals(
                check.path("distance_m").asDouble(), next.path("distance_m").asDouble());
        assertEquals(check.path("angle_deg").asDouble(), next.path("angle_deg").asDouble());
        assertTrue(Ran.pegbed("next", third).out().contains("It tells how high the water stands today: about "));
    }
}
