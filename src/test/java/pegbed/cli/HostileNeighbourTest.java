package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A file that no honest program wrote is left out with a sentence, and the pegs beside it are answered. */
class HostileNeighbourTest {
    @TempDir
    private Path folder;

    private Path sound;

    @BeforeEach
    void soundPeg() throws IOException {
        sound = folder.resolve("tansy-9.peg.json");
        Files.writeString(sound, """
                {
                "format": "pegbed-peg", "version": 1,
                "venue": "Mallowfield Pools", "water": "Tansy Cut", "number": "9",
                "near_bank": [{"x_m": -9, "y_m": -0.5}, {"x_m": 9, "y_m": -0.5}],
                "far_bank": [{"x_m": -9, "y_m": 12}, {"x_m": 9, "y_m": 12}],
                "visits": [{"readings": [
                {"distance_m": 4, "angle_deg": 0, "depth_m": 1.2},
                {"distance_m": 8, "angle_deg": 10, "depth_m": 1.6}]}]
                }
                """);
    }

    /** What stands in the only shot of the neighbour's only rig. */
    private void neighbour(String shot) throws IOException {
        Files.writeString(
                folder.resolve("tansy-10.peg.json"),
                Files.readString(sound)
                        .replace("\"9\"", "\"10\"")
                        .replace(
                                "\"visits\"",
                                "\"wishes\": {\"rig_templates\": [{\"name\": \"a\", \"up_to_m\": 1, \"float_g\": 0.2,"
                                        + " \"tip_to_body_m\": 0.1, \"hook_length_m\": 0.15, \"shots\": [" + shot
                                        + "]}]},\n\"visits\""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"longText", "longNumber", "longName", "deep"})
    void isLeftOutWithASentence(String what) throws IOException {
        neighbour(
                switch (what) {
                    case "longText" -> "{\"shot\": \"" + "x".repeat(1_000_001) + "\"}";
                    case "longNumber" -> "{\"lowest_m\": " + "1".repeat(1_001) + "}";
                    case "longName" -> "{\"" + "n".repeat(10_001) + "\": 1}";
                    default -> "{\"shot\": " + "[".repeat(70) + "]".repeat(70) + "}";
                });
        Ran shelf = Ran.pegbed("shelf", folder);
        assertEquals(0, shelf.status(), shelf.err());
        assertTrue(shelf.out().contains("tansy-9.peg.json"), shelf.out());
        assertTrue(shelf.out().contains("! It is damaged at "), shelf.out());
        Ran lines = Ran.pegbed("lines", sound);
        assertEquals(0, lines.status(), lines.err());
        assertTrue(lines.err().contains("tansy-10.peg.json is damaged and was passed over"), lines.err());
        Ran check = Ran.pegbed("check", folder.resolve("tansy-10.peg.json"));
        assertFalse(check.err().contains("error of the program's own"), check.err());
    }
}
