package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The commands for lines, rigs and the card. */
class CardCommandTest {
    private static final Path PEG = Path.of("sample-pegs/tansy-cut-14.peg.json");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"card.pdf,%PDF", "card.PNG,PNG", "card.svg,<?xml", "card.html,<!DOCTYPE html>"})
    void writesEachKind(String name, String start) throws IOException {
        Path file = folder.resolve(name);
        Ran ran = Ran.pegbed("card", PEG, "--out", file);
        assertEquals(0, ran.status(), ran.err());
        String head = new String(Files.readAllBytes(file), 0, 16, StandardCharsets.ISO_8859_1);
        assertTrue(head.contains(start), head);
    }

    @ParameterizedTest
    @CsvSource({"card.png,true", "card.SVG,true", "card.pdf,false", "card.html,false"})
    void aPictureSaysThatTheFishingIsNotOnIt(String name, boolean said) {
        Path fished = Path.of("sample-pegs/sallow-cut-5.peg.json");
        Ran ran = Ran.pegbed("card", fished, "--out", folder.resolve(name));
        assertEquals(0, ran.status(), ran.err());
        assertEquals(said, ran.out().contains("the fishing is not on it"), ran.out());
        assertFalse(Ran.pegbed("card", PEG, "--out", folder.resolve(name)).out().contains("fishing"));
    }

    @ParameterizedTest
    @CsvSource({"card.doc", "card", "pdf"})
    void refusesOtherKinds(String name) {
        Ran ran = Ran.pegbed("card", PEG, "--out", folder.resolve(name));
        assertEquals(2, ran.status());
        assertTrue(ran.err().contains("must end in .pdf, .png, .svg or .html."), ran.err());
        assertFalse(Files.exists(folder.resolve(name)));
    }

    @ParameterizedTest
    @CsvSource({
        "--most-rigs,0,--most-rigs takes a whole number between 1 and 12; not 0.",
        "--most-lines,13,--most-lines takes a whole number between 1 and 12; not 13.",
        "--margins,9,--margins takes a whole number between 0 and 6; not 9."
    })
    void refusesWishesThatCannotBe(String option, String value, String said) {
        Ran ran = Ran.pegbed("lines", PEG, option, value);
        assertEquals(2, ran.status());
        assertTrue(ran.err().contains(said), ran.err());
        assertEquals(1, ran.err().strip().lines().count(), ran.err());
    }

    @Test
    void linesAndRigsAreInTheJson() throws IOException {
        JsonNode answer = new ObjectMapper()
                .readTree(Ran.pegbed("lines", PEG, "--json", "--margins", "0", "--dead-depth")
                        .out());
        assertEquals(2, answer.path("lines").size());
        for (JsonNode line : answer.path("lines")) {
            assertEquals(
                    line.path("depth_m").asDouble(), line.path("hook_to_tip_m").asDouble(), 1e-9);
            for (String key : new String[] {"distance", "direction", "clock", "aim", "why", "zone", "order"}) {
                assertFalse(line.path(key).asText().isBlank(), key);
            }
            assertTrue(line.path("checks").size() > 0);
        }
        assertEquals(2, answer.path("rigs").size());
        assertEquals(0, answer.path("rigs").path(0).path("overdepth_m").asDouble());
        assertTrue(answer.has("deepest") && answer.has("flats") && answer.has("slopes"));
    }

    @Test
    void theTableNamesEveryLine() {
        String out = Ran.pegbed("lines", PEG).out();
        for (String zone : new String[] {"track", "across", "left margin", "right margin"}) {
            assertTrue(out.lines().anyMatch(row -> row.matches("  \\d  " + zone + " +section .*rig \\d")), zone);
        }
        assertTrue(out.contains("Start on line 1."), out);
    }
}
