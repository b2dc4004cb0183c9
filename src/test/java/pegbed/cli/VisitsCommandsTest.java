package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.session.VisitedPegs;
import pegbed.storage.disk.PegFile;

class VisitsCommandsTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder;

    private Path peg;

    @BeforeEach
    void sample() throws IOException {
        peg = folder.resolve("nine.peg.json");
        Files.copy(Path.of("sample-pegs/tansy-cut-9.peg.json"), peg);
    }

    private JsonNode json(Object... words) throws IOException {
        Ran ran = Ran.pegbed(words);
        assertEquals(0, ran.status(), ran.err());
        return JSON.readTree(ran.out());
    }

    /** The sample's second visit was made 8 cm higher than its first. */
    @Test
    void theSecondVisitOfTheSampleIsAtItsLevel() throws IOException {
        JsonNode level = json("level", peg, "--json").path("level");
        assertEquals(
                0.08, level.path("higher_m").asDouble(), 2 * level.path("sd_m").asDouble());
        assertTrue(level.path("sd_m").asDouble() < 0.03);
    }

    @Test
    void arrivingAsksForChecksAndEachTellsTheLevelBetter() throws IOException {
        JsonNode arrived = json("level", peg, "--arrive", "--json");
        assertEquals(3, arrived.path("visits").asInt());
        assertEquals(3, arrived.path("checks").size());
        assertEquals(0.12, arrived.path("level").path("sd_m").asDouble(), 0.001);
        assertTrue(arrived.path("checks").get(0).path("why").asText().contains("well plumbed"));
        JsonNode checked = json("level", peg, "--json", "--check", "s4 0 5'2", "--check", "s2 80R 2'5");
        assertEquals(2, checked.path("added").size());
        double one = checked.path("added").get(0).path("level").path("sd_m").asDouble();
        double two = checked.path("added").get(1).path("level").path("sd_m").asDouble();
        assertTrue(two < one && one < 0.12);
        Ran again = Ran.pegbed("level", peg, "--check", "edge 3 0");
        assertEquals(2, again.status());
    }

    /** Both visits' boards measured: the level is their difference, known to a centimetre. */
    @Test
    void aBoardMeasureIsASharpReading() throws IOException {
        Files.copy(Path.of("sample-pegs/tansy-cut-14.peg.json"), folder.resolve("14.peg.json"));
        Path other = folder.resolve("14.peg.json");
        double first = JSON.readTree(Files.readString(other))
                .path("visits")
                .get(0)
                .path("board_to_water_m")
                .asDouble();
        JsonNode level = json("level", other, "--arrive", "--board", (first + 0.10) + "m", "--json")
                .path("level");
        assertEquals(-0.10, level.path("higher_m").asDouble(), 0.002);
        assertEquals(0.01, level.path("sd_m").asDouble(), 0.001);
    }

    /** Lines and the map follow the level: 10 cm more water is 10 cm more depth at the same place. */
    @Test
    void everythingIsAtTodaysLevelAtOnce() throws IOException {
        Path other = folder.resolve("14.peg.json");
        Files.copy(Path.of("sample-pegs/tansy-cut-14.peg.json"), other);
        double before =
                json("lines", other, "--json").path("deepest").path("depth_m").asDouble();
        double board = JSON.readTree(Files.readString(other))
                .path("visits")
                .get(0)
                .path("board_to_water_m")
                .asDouble();
        json("level", other, "--arrive", "--board", (board - 0.10) + "m", "--json");
        double after =
                json("lines", other, "--json").path("deepest").path("depth_m").asDouble();
        assertEquals(before + 0.10, after, 0.01);
    }

    @Test
    void aDugOutWaterStartsAfreshAndLosesNothing() throws IOException {
        int before = Files.readString(peg).split("\"depth_m\"").length;
        JsonNode dug = json("level", peg, "--arrive", "--dug-out", "--json");
        assertTrue(dug.path("afresh").asBoolean());
        assertEquals(0, dug.path("against").get(0).path("readings_used").asInt());
        assertEquals(before, Files.readString(peg).split("\"depth_m\"").length);
        Ran first = Ran.pegbed("level", folder.resolve("none.peg.json"));
        assertEquals(2, first.status());
    }

    @Test
    void theSamplesVisitsDoNotDiffer() throws IOException {
        assertEquals(0, json("compare", peg, "--json").path("places").size());
        Ran bad = Ran.pegbed("compare", peg, "--from", "2", "--to", "2");
        assertEquals(2, bad.status());
        assertEquals(1, bad.err().strip().lines().count());
    }

    @Test
    void theShelfListsFindsAndDeletesSafely() throws IOException {
        JsonNode all = json("shelf", folder, "--json");
        assertEquals(1, all.size());
        assertEquals("Tansy Cut", all.get(0).path("water").asText());
        assertEquals(30, all.get(0).path("readings").asInt());
        assertEquals(1, Ran.pegbed("shelf", folder, "--find", "hobbrel").status());
        assertEquals(
                2, Ran.pegbed("shelf", folder, "--find", "hobbrel", "--delete").status());
        assertEquals(
                0, Ran.pegbed("shelf", folder, "--find", "nine", "--delete").status());
        assertTrue(Files.exists(folder.resolve("deleted/nine.peg.json")));
    }

    /** Lines, map and check say it of a peg whose bottom was dug, and only of such a one. */
    @Test
    void whereTheBottomChangedIsSaidWhereverThePegIsLookedAt() throws IOException, InputException {
        Path dug = folder.resolve("dug.peg.json");
        PegFile.save(dug, VisitedPegs.dugOut(), Optional.empty());
        Path picture = folder.resolve("dug.png");
        JsonNode change = json("lines", dug, "--json").path("changes").get(0);
        assertEquals(VisitedPegs.HOLE.xMetres(), change.path("x_m").asDouble(), 1);
        assertEquals(VisitedPegs.HOLE.yMetres(), change.path("y_m").asDouble(), 1);
        assertEquals(3, change.path("since_visit").asInt());
        assertEquals(
                change,
                json("map", dug, "--out", picture, "--json").path("changes").get(0));
        String sentence = "! " + change.path("words").asText();
        assertTrue(Ran.pegbed("lines", dug).out().lines().anyMatch(sentence::equals));
        assertTrue(Ran.pegbed("map", dug, "--out", picture).out().lines().anyMatch(sentence::equals));
        Ran check = Ran.pegbed("check", dug);
        assertEquals(1, check.status());
        assertTrue(check.out().contains(change.path("words").asText()));
        JsonNode checked = JSON.readTree(Ran.pegbed("check", dug, "--json").out());
        assertEquals(change, checked.path("changes").get(0));
        assertEquals(0, json("lines", peg, "--json").path("changes").size());
        assertTrue(!Ran.pegbed("lines", peg).out().contains("The bottom has changed"));
    }

    @Test
    void arrivingTwiceIsRefused() {
        assertEquals(0, Ran.pegbed("level", peg, "--arrive").status());
        Ran again = Ran.pegbed("level", peg, "--arrive");
        assertEquals(2, again.status());
        assertTrue(again.err().contains("it is today's already"), again.err());
    }
}
