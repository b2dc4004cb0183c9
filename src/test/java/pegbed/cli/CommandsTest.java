package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.findings.Pegs;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.storage.disk.PegFile;

class CommandsTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder;

    private Path readings;
    private Path banks;
    private Path peg;

    @BeforeEach
    void tables() throws IOException {
        readings = folder.resolve("readings.csv");
        banks = folder.resolve("banks.csv");
        peg = folder.resolve("peg.peg.json");
        Files.writeString(readings, "distance_m,angle_deg,depth_m\n" + rows(1));
        StringBuilder lines = new StringBuilder("bank,x_m,y_m\n");
        for (int x = -14; x <= 14; x += 2) {
            lines.append("near,").append(x).append(",-1\n");
        }
        for (int x = -14; x <= 14; x += 2) {
            lines.append("far,").append(x).append(",11\n");
        }
        Files.writeString(banks, lines);
    }

    private static String rows(double unit) {
        Peg plumbed = Pegs.plumbed(Pegs.straight(), (x, y) -> Pegs.ledges(x, y) + 0.005 * x);
        StringBuilder rows = new StringBuilder();
        for (Reading r : plumbed.readings()) {
            rows.append(String.format(
                    Locale.ROOT,
                    "%.2f,%.1f,%.7f%n",
                    r.place().distanceMetres(),
                    r.place().angleDegrees(),
                    r.depthMetres() / unit));
        }
        return rows.toString();
    }

    private Ran make() {
        return Ran.pegbed("new", peg, "--readings", readings, "--banks", banks, "--reach", 14);
    }

    @Test
    void newMakesAPegAndLinesAnswersByTheContract() throws IOException {
        Ran made = make();
        assertEquals(0, made.status(), made.err());
        assertEquals("", made.err());
        Ran lines = Ran.pegbed("lines", peg, "--json");
        assertEquals(0, lines.status());
        JsonNode answer = JSON.readTree(lines.out());
        JsonNode deepest = answer.path("deepest");
        for (String key :
                List.of("distance_m", "angle_deg", "x_m", "y_m", "depth_m", "sd_m", "slope", "p_flat", "area_m2")) {
            assertTrue(deepest.path(key).isNumber(), key);
        }
        assertEquals(1.7, deepest.path("depth_m").asDouble(), 0.1);
        assertEquals(
                deepest.path("depth_m").asDouble() / 2, answer.path("target_m").asDouble(), 0.001);
        List<String> zones = new ArrayList<>();
        for (JsonNode flat : answer.path("flats")) {
            zones.add(flat.path("zone").asText());
            assertTrue(flat.path("p").isNumber());
            assertTrue(List.of("sure", "likely", "worth a reading", "none")
                    .contains(flat.path("words").asText()));
        }
        assertEquals(List.of("across", "left margin", "right margin"), zones);
        assertTrue(answer.path("slopes").size() > 2);
    }

    @Test
    void aTargetIsMetresOrSaidWithItsUnit() throws IOException {
        make();
        for (String said : List.of("0.8382", "2'9", "33in", "83.82cm", "2ft9", "0,8382")) {
            JsonNode answer = JSON.readTree(
                    Ran.pegbed("lines", peg, "--json", "--target", said).out());
            assertEquals(0.838, answer.path("target_m").asDouble(), 0.0006, said);
        }
        Ran bad = Ran.pegbed("lines", peg, "--target", "shallow");
        assertEquals(2, bad.status());
        assertTrue(bad.err().contains("shallow"), bad.err());
    }

    @Test
    void depthsAnswersEveryPointAndLeavesLandEmpty() throws IOException {
        make();
        Path points = folder.resolve("points.csv");
        Files.writeString(points, "x_m,y_m\n0,4\n0,12\n-3,9.5\n");
        Ran depths = Ran.pegbed("depths", peg, "--points", points);
        assertEquals(0, depths.status(), depths.err());
        List<String> rows = depths.out().lines().toList();
        assertEquals("x_m,y_m,depth_m,sd_m,disc_depth_m,slope", rows.get(0));
        assertEquals(4, rows.size());
        assertEquals("0,12,,,,", rows.get(2));
        String[] track = rows.get(1).split(",");
        assertEquals(1.7, Double.parseDouble(track[2]), 0.05);
        assertTrue(Double.parseDouble(track[3]) > 0 && Double.parseDouble(track[3]) < 0.1);
        String[] ledge = rows.get(3).split(",");
        assertEquals(0.8, Double.parseDouble(ledge[4]), 0.08);
        assertTrue(Double.parseDouble(ledge[5]) < 0.2);
    }

    @Test
    void feetGiveTheSameAnswersAsMetres() throws IOException {
        make();
        Path feet = folder.resolve("feet.csv");
        Files.writeString(feet, "distance_m,angle_deg,depth_ft\n" + rows(0.3048));
        Path other = folder.resolve("feet.peg.json");
        assertEquals(
                0,
                Ran.pegbed("new", other, "--readings", feet, "--banks", banks, "--reach", 14)
                        .status());
        assertEquals(
                Ran.pegbed("lines", peg, "--json").out(),
                Ran.pegbed("lines", other, "--json").out());
    }

    @Test
    void addTakesTypedLinesAllOrNone() throws Exception {
        make();
        int before = PegFile.read(peg).peg().readings().size();
        Ran added = Ran.pegbed("add", peg, "9 -20 2'9 silt soft here", "s3 11:30 5ft6");
        assertEquals(0, added.status(), added.err());
        Peg after = PegFile.read(peg).peg();
        assertEquals(before + 2, after.readings().size());
        Reading last = after.readings().get(before);
        assertEquals("2'9", last.typed().depth());
        assertEquals(33 * 0.0254, last.depthMetres(), 1e-9);
        assertEquals("soft here", last.note());
        byte[] bytes = Files.readAllBytes(peg);
        Ran refused = Ran.pegbed("add", peg, "9 -20 2'9", "9 -20 2'99");
        assertEquals(2, refused.status());
        assertTrue(refused.err().contains("2'99"), refused.err());
        assertEquals(new String(bytes, StandardCharsets.UTF_8), Files.readString(peg));
    }

    @Test
    void checkSaysNoWhereReadingsContradict() throws IOException {
        make();
        assertEquals(0, Ran.pegbed("check", peg).status());
        Ran warned = Ran.pegbed("add", peg, "4.6 1 1'2", "5 180 2'");
        assertEquals(0, warned.status(), warned.err());
        assertTrue(warned.err().contains("lies on land; it is kept, and marked"), warned.err());
        Ran check = Ran.pegbed("check", peg);
        assertEquals(1, check.status());
        assertTrue(check.out().contains("the others expect"), check.out());
        JsonNode answer = JSON.readTree(Ran.pegbed("check", peg, "--json").out());
        assertTrue(answer.path("found").size() >= 2);
    }

    @Test
    void aDamagedFileIsReadAsFarAsItGoesButNotChanged() throws IOException {
        make();
        String sound = Files.readString(peg);
        String cut = sound.substring(0, sound.length() - 200);
        Files.writeString(peg, cut);
        Ran lines = Ran.pegbed("lines", peg);
        assertEquals(0, lines.status(), lines.err());
        assertTrue(lines.err().startsWith("Warning: peg.peg.json is damaged at line "), lines.err());
        assertEquals(1, Ran.pegbed("check", peg).status());
        Ran add = Ran.pegbed("add", peg, "9 -20 2'9");
        assertEquals(2, add.status());
        assertEquals(cut, Files.readString(peg));
    }

    @Test
    void newDoesNotWriteOverAPeg() throws IOException {
        make();
        Ran again = make();
        assertEquals(2, again.status());
        assertTrue(again.err().contains("--replace"), again.err());
        assertEquals(
                0,
                Ran.pegbed("new", peg, "--readings", readings, "--banks", banks, "--replace")
                        .status());
    }

    @Test
    void wordsThatAreNoCommandGetOneSentence() {
        for (Ran ran : List.of(Ran.pegbed("plumb"), Ran.pegbed("lines"), Ran.pegbed("lines", peg, "--what"))) {
            assertEquals(2, ran.status());
            assertEquals(1, ran.err().strip().lines().count(), ran.err());
            assertTrue(ran.err().contains("--help"), ran.err());
        }
    }
}
