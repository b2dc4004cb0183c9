package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.storage.disk.PegFile;

class DayCommandTest {
    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void copy() throws IOException {
        file = folder.resolve("a.peg.json");
        Files.copy(Path.of("sample-pegs/tansy-cut-14.peg.json"), file);
    }

    @Test
    void tellsWhatVisitsTeachAndOffersATarget() throws IOException {
        Files.copy(
                Path.of("sample-pegs/sallow-cut-5.peg.json"), file, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        byte[] before = Files.readAllBytes(file);
        Ran told = day();
        assertTrue(told.out().contains("What 12 visits gave"), told.out());
        assertTrue(told.out().contains("2 ft 6 in did best in"), told.out());
        JsonNode json = new ObjectMapper().readTree(day("--json").out());
        assertEquals(0.762, json.get("target_offered").get("depth_m").asDouble());
        assertEquals(
                12, json.get("lessons").get("by_depth").get(0).get("visits").asInt());
        Ran lines = Ran.pegbed("lines", file, "--by-itself", "--start-on", "across");
        assertTrue(lines.out().contains("2 ft 6 in did best in"), lines.out());
        assertTrue(lines.out().contains("Start on line 1, as you wished."), lines.out());
        JsonNode plan = new ObjectMapper()
                .readTree(Ran.pegbed("lines", file, "--by-itself", "--start-on", "across", "--json")
                        .out());
        assertEquals(0.762, plan.get("target_offered").get("depth_m").asDouble());
        assertTrue(plan.get("starts_as_wished").asBoolean());
        assertEquals("across", plan.get("lines").get(0).get("zone").asText());
        Ran refused = Ran.pegbed("lines", file, "--start-on", "middle");
        assertEquals(2, refused.status());
        assertTrue(
                refused.err().contains("--start-on takes track, across, short or margin, not 'middle'."),
                refused.err());
        assertArrayEquals(before, Files.readAllBytes(file), "looking changes nothing");
    }

    @Test
    void drawsTheDayAndTheCardHasItOnASecondPage() throws IOException {
        Files.copy(
                Path.of("sample-pegs/sallow-cut-5.peg.json"), file, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        Path svg = folder.resolve("day.svg");
        Ran drawn = day("--out", svg.toString(), "--look", "dark");
        assertEquals(0, drawn.status(), drawn.err());
        String picture = Files.readString(svg);
        assertTrue(picture.contains("Fish an hour by depth, 12 visits"), picture);
        assertTrue(picture.contains("24 Oct 2026"), picture);
        Path pdf = folder.resolve("card.pdf");
        assertEquals(0, Ran.pegbed("card", file, "--by-itself", "--out", pdf).status());
        try (PDDocument card = Loader.loadPDF(pdf.toFile())) {
            assertEquals(2, card.getNumberOfPages());
            assertTrue(new PDFTextStripper().getText(card).contains("2 ft 6 in did best in"));
        }
        Path html = folder.resolve("card.html");
        assertEquals(0, Ran.pegbed("card", file, "--by-itself", "--out", html).status());
        assertTrue(Files.readString(html).contains("<h2>The fishing</h2>"));
        Ran refused = day("--out", svg.toString(), "--look", "pink");
        assertEquals(2, refused.status());
        assertTrue(refused.err().contains("'pink' is not one of light"), refused.err());
    }

    @Test
    void nothingFishedIsNotDrawn() {
        Path png = folder.resolve("day.png");
        Ran refused = day("--out", png.toString());
        assertEquals(2, refused.status());
        assertTrue(refused.err().contains("day.png was not drawn: nothing was fished yet."), refused.err());
        assertFalse(Files.exists(png));
    }

    private Ran day(String... words) {
        String[] all = new String[words.length + 3];
        all[0] = "day";
        all[1] = file.toString();
        all[2] = "--by-itself";
        System.arraycopy(words, 0, all, 3, words.length);
        return Ran.pegbed((Object[]) all);
    }

    @Test
    void notesMendsAndTells() throws InputException, IOException {
        Ran noted = day(
                "--add",
                "line 1 start",
                "--add",
                "fish F1 1lb8",
                "--add",
                "line 2 feed pellets, pot",
                "--water",
                "12.5");
        assertEquals(0, noted.status(), noted.err());
        assertTrue(noted.out().contains("line 1  fish, F1, 1 lb 8 oz"), noted.out());
        assertTrue(noted.out().contains("feed, pellets, pot"), noted.out());
        assertTrue(noted.out().contains("Water 12.5 °C."), noted.out());
        Ran mended = day("--change", "2", "line 1 fish 2 F1 3lb");
        assertTrue(mended.out().contains("2 fish, F1, 3 lb"), mended.out() + mended.err());
        assertFalse(mended.out().contains("1 lb 8 oz"), mended.out());
        JsonNode json =
                new ObjectMapper().readTree(day("--delete", "3", "--json").out());
        assertEquals(2, json.get("events").size());
        assertEquals(2, json.get("lines").get(0).get("fish").asInt());
        assertEquals(2, PegFile.read(file).peg().today().day().events().size());
    }

    @Test
    void aRefusedEventLeavesTheFileAsItWas() throws IOException {
        byte[] before = Files.readAllBytes(file);
        Ran refused = day("--add", "line 1 start", "--add", "line 9 fish");
        assertEquals(2, refused.status());
        assertTrue(refused.err().contains("There is no line 9"), refused.err());
        assertArrayEquals(before, Files.readAllBytes(file));
        assertTrue(day("--delete", "1").err().contains("which has none"));
        assertTrue(day("--visit", "7").err().contains("There is no visit 7"));
        assertTrue(
                day("--water", "100").err().contains("between -5"),
                day("--water", "100").err());
    }

    @Test
    void theLogGoesOutAsATableAndComesBackTheSame() throws InputException, IOException {
        Path table = folder.resolve("log.csv");
        assertEquals(
                0,
                day("--add", "line 1 start", "--add", "fish =F1 1lb8", "--add", "stop", "--out", table.toString())
                        .status());
        Path other = folder.resolve("b.peg.json");
        Files.copy(Path.of("sample-pegs/tansy-cut-14.peg.json"), other);
        Ran brought = Ran.pegbed("day", other.toString(), "--by-itself", "--events", table.toString());
        assertEquals(0, brought.status(), brought.err());
        assertEquals(
                PegFile.read(file).peg().today().day().events(),
                PegFile.read(other).peg().today().day().events());
    }
}
