package pegbed.storage.peg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.storage.disk.PegFile;

/** The published schema agrees with what is written and with what is refused. */
class PegSchemaTest {
    private static final Schema SCHEMA = schema();

    private static Schema schema() {
        try {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(Files.readString(Path.of("docs/peg-file.schema.json")));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static List<Error> errors(String json) {
        return SCHEMA.validate(json, InputFormat.JSON);
    }

    private static String example() throws IOException {
        Matcher matcher = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(Path.of("docs/peg-file.md")));
        assertEquals(true, matcher.find());
        return matcher.group(1);
    }

    @Test
    void theSchemaIsItselfADraft202012Schema() throws IOException {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertEquals(
                List.of(), meta.validate(Files.readString(Path.of("docs/peg-file.schema.json")), InputFormat.JSON));
    }

    @Test
    void theExampleInTheDocumentationIsAPegFileAsPegbedWritesIt() throws IOException, InputException {
        String example = example();
        assertEquals(List.of(), errors(example));
        Peg peg = PegRoundTripTest.whole(example.getBytes(StandardCharsets.UTF_8));
        assertEquals(example, PegWriter.text(peg));
    }

    /** A file put into the folder is a case of this test. */
    @Test
    void everySamplePegIsValidAndSavedAgainByteForByte() throws IOException, InputException {
        try (Stream<Path> files = Files.list(Path.of("sample-pegs"))) {
            List<Path> pegs = files.filter(file -> file.toString().endsWith(PegFile.ENDING))
                    .toList();
            assertFalse(pegs.isEmpty());
            for (Path peg : pegs) {
                String text = Files.readString(peg);
                assertEquals(List.of(), errors(text), peg.toString());
                assertEquals(text, PegWriter.text(PegRoundTripTest.whole(Files.readAllBytes(peg))), peg.toString());
            }
        }
    }

    @Test
    void thePegWithEveryFieldIsValid() {
        assertEquals(List.of(), errors(PegWriter.text(SamplePeg.peg())));
        assertEquals(List.of(), errors(PegWriter.text(Peg.EMPTY)));
    }

    @Property(tries = 200)
    @Domain(RandomPegs.class)
    void everythingThatIsWrittenIsValid(@ForAll Peg peg) {
        assertEquals(List.of(), errors(PegWriter.text(peg)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "format": "pegbed-peg"     | "format": "other"
            "version": 1               | "version": 2
            "version": 1               | "version": "1"
            "venue": "Mallowfield Pools" | "venue": 5
            "depth_unit": "feet"       | "depth_unit": "fathoms"
            "distance_unit": "sections" | "distance_unit": "yards"
            [2.6, 4, 5.5, 7, 8.5, 10, 11.5, 13] | []
            [2.6, 4, 5.5, 7, 8.5, 10, 11.5, 13] | [2.6, "4"]
            "x_m": -8                  | "x_m": "left"
            {"x_m": -8, "y_m": 0.6}    | {"x_m": -8}
            {"x_m": -8, "y_m": 0.6}    | 5
            "depth_m": 0.2             | "depth_m": -0.2
            "name": "leaning post"     | "name": " "
            "kind": "snag"             | "kind": "shark"
            [[3.5, 4.2]]               | [[3.5]]
            [[3.5, 4.2]]               | [[3.5, 4.2], [4, 5]]
            "radius_m": 0.5            | "radius_m": -1
            "target_m": 0.762          | "target_m": 31
            "across_lines": 2          | "across_lines": 7
            "across_lines": 2          | "across_lines": 1.5
            "most_rigs": 2             | "most_rigs": 0
            {"x_m": -2.75, "y_m": 10.5} | {"x_m": -2.75}
            "name": "ledge"            | "name": ""
            "up_to_m": 1.05            | "up_to_m": "shallow"
            "float": "4×12"            | "float": 12
            "float_g": 0.2             | "float_g": 0
            "shot": "No.10"            | "shot": "No.2"
            "count": 4                 | "count": 0
            "lowest_m": 0.15           | "lowest_m": -1
            "board_to_water_m": 0.42   | "board_to_water_m": 6
            "board_to_water_m": 0.42   | "afresh": 1
            "2026-05-02T07:30:00+01:00" | "yesterday"
            "depth_m": 1.6764          | "depth_m": 30.5
            "depth_m": 1.6764          | "depth": 1.6764
            "distance_m": 10,          | "distance_m": -10,
            "distance_m": 10,          |
            "angle_deg": 0,            | "angle_deg": 400,
            "sd_distance_m": 0.1       | "sd_distance_m": 9
            "sd_direction_deg": 1.5    | "sd_direction_deg": 50
            "bottom": "silt"           | "bottom": "jelly"
            "note": "foot of the slope" | "note": 7
            "left_limit_m": -7.5,      | "latitude_deg": 52,
            """)
    void aBadFileFailsTheSchemaAndIsNotReadWhole(String good, String bad) throws IOException, InputException {
        String example = example();
        String spoilt = example.replaceFirst(Pattern.quote(good), Matcher.quoteReplacement(bad == null ? "" : bad));
        assertFalse(example.equals(spoilt), "nothing was spoilt by " + bad);
        assertFalse(errors(spoilt).isEmpty(), () -> "the schema accepts " + bad);
        try {
            Opened opened = PegReader.read("spoilt.peg.json", spoilt.getBytes(StandardCharsets.UTF_8));
            assertEquals(Opened.Recovered.class, opened.getClass(), () -> "read as if nothing were wrong: " + bad);
        } catch (InputException refused) {
            assertFalse(refused.getMessage().isBlank());
        }
    }
}
