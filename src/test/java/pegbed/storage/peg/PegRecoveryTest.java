package pegbed.storage.peg;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.model.Hazard;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Pole;
import pegbed.model.Reading;
import pegbed.storage.disk.FaultyFiles;
import pegbed.storage.disk.PegFile;

/** Damaged files: what stands whole is kept, what is lost is named, and nothing but one sentence is ever thrown. */
class PegRecoveryTest {
    private static final String TEXT = PegWriter.text(SamplePeg.peg());
    private static final List<Reading> READINGS = read(TEXT).readings();

    private static Peg read(String text) {
        try {
            return PegReader.read("p.peg.json", bytes(text)).peg();
        } catch (InputException e) {
            throw new AssertionError(e);
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static Opened.Recovered recovered(String text) throws InputException {
        Opened opened = PegReader.read("p.peg.json", bytes(text));
        return assertInstanceOf(Opened.Recovered.class, opened);
    }

    private static String refusal(byte[] bytes) {
        String sentence = assertThrows(InputException.class, () -> PegReader.read("p.peg.json", bytes))
                .getMessage();
        assertTrue(sentence.startsWith("p.peg.json ") && sentence.endsWith("."), sentence);
        assertFalse(sentence.contains("\n"), sentence);
        return sentence;
    }

    /** Offsets in TEXT behind the last brace of each reading. */
    private static List<Integer> readingEnds() {
        List<Integer> ends = new ArrayList<>();
        int start = 0;
        for (String line : TEXT.split("\n", -1)) {
            if (line.contains("\"depth_m\"") && line.contains("\"distance_m\"")) {
                ends.add(start + line.lastIndexOf('}') + 1);
            }
            start += line.length() + 1;
        }
        return ends;
    }

    @Test
    void aFileThatBreaksOffAnywhereKeepsWhatStandsWhole() {
        List<Integer> ends = readingEnds();
        assertEquals(READINGS.size(), ends.size());
        byte[] whole = bytes(TEXT);
        int formatEnds = TEXT.indexOf("\"pegbed-peg\",") + "\"pegbed-peg\",".length();
        for (int cut = 0; cut < whole.length - 1; cut++) {
            byte[] start = Arrays.copyOf(whole, cut);
            int letters = new String(start, StandardCharsets.UTF_8).length();
            int complete = (int) ends.stream().filter(end -> end <= letters).count();
            try {
                Opened.Recovered left =
                        assertInstanceOf(Opened.Recovered.class, PegReader.read("p.peg.json", start), "cut at " + cut);
                assertEquals(READINGS.subList(0, complete), left.peg().readings(), "cut at " + cut);
                assertTrue(
                        left.lost().stream().anyMatch(entry -> entry.contains("breaks off here")),
                        "cut at " + cut + " " + left.lost());
            } catch (InputException refused) {
                assertTrue(cut < formatEnds, "refused when cut at " + cut + ": " + refused.getMessage());
            }
        }
    }

    @Test
    void aNumberThatIsCutIsNotTakenForAShorterOne() throws InputException {
        String text =
                TEXT.substring(0, TEXT.indexOf("\"board_to_water_m\": 0.42") + "\"board_to_water_m\": 0.4".length());
        assertTrue(recovered(text).peg().today().boardToWaterMetres().isEmpty());
    }

    @Test
    void theFirstDamageIsToldByLineColumnAndReason() throws InputException {
        String text = TEXT.replaceFirst("\"depth_m\": 0.7112", "\"depth_m\": -0.7112");
        Opened.Recovered left = recovered(text);
        int line = (int) text.substring(0, text.indexOf("-0.7112")).lines().count();
        assertEquals("line " + line + ", column 9", left.where());
        assertTrue(
                left.why()
                        .startsWith("Reading 5 of visit 1: depth_m must be a number between 0 and 30, not -0.7112."
                                + " Lost: {\"typed_distance\": \"s4\""),
                left.why());
        assertEquals(1, left.lost().size());
        List<Reading> rest = new ArrayList<>(READINGS);
        rest.remove(4);
        assertEquals(rest, left.peg().readings());
        assertEquals(Fingerprint.of(bytes(text)), left.fingerprint());
    }

    /** Each spoils one thing; the sentence names it and the readings that stay are counted. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "distance_m": 2,     | "distance_m": -2,     | 10 | Reading 1 of visit 1: distance_m must be a number between 0 and 100000, not -2.
            "distance_m": 2,     | "distance_m": 1e999,  | 10 | Reading 1 of visit 1: distance_m must be a number
            "distance_m": 2,     | "distance_m": "2",    | 10 | Reading 1 of visit 1: distance_m must be a number
            "distance_m": 2,     |                       | 10 | Reading 1 of visit 1: distance_m is missing.
            "distance_m": 2,     | "distance_m": 2, "distance_m": 3, | 10 | Reading 1 of visit 1: distance_m stands twice.
            "angle_deg": -40     | "angle_deg": 999      | 10 | Reading 1 of visit 1: angle_deg must be
            "angle_deg": -40     | "angle_deg": NaN      | 10 | This line is not JSON and was left out: {"typed_distance": "s0"
            "bottom": "firm"     | "bottom": "jelly"     | 11 | Reading 2 of visit 1: bottom must be one of unknown, firm, gravel
            "sd_distance_m": 0.1 | "sd_distance_m": 77   | 11 | Reading 2 of visit 1: sd_distance_m must be between 0 and 5, not 77.
            "sd_distance_m": 0.1 | "sd_distance_m": null | 11 | Reading 2 of visit 1: sd_distance_m must be a number, not null.
            "2026-05-02T07:32:00+01:00" | "noon"         | 11 | Reading 3 of visit 1: time must be a time such as
            "board_to_water_m": 0.42 | "board_to_water_m": 9 | 11 | Visit 1: board_to_water_m must be between -5 and 5, not 9.
            "start": "2026-05-02T07:30:00+01:00" | "start": 7 | 11 | Visit 1: start must be a text in quotes, not 7.
            "note": "dry week"   | "note": "dry week", "note": "wet" | 11 | Visit 1: note stands twice; the first was taken.
            "venue": "Mallowfield Pools" | "venue": []   | 11 | The peg: venue must be a text in quotes, not [].
            "latitude_deg": 52.123456 | "latitude_deg": 91 | 11 | The peg: the position is lost: latitude_deg must be
            "position_accuracy_m": 4 | "position_accuracy_m": -4 | 11 | The peg: position_accuracy_m must be between 0 and 1000000, not -4.
            "depth_unit": "centimetres" | "depth_unit": "ells" | 11 | The peg: depth_unit must be one of feet, centimetres, metres, not "ells".
            [2.6, 4, 5.5         | [2.6, 5.6, 5.5        | 11 | The peg: the pole is lost, and the usual one taken: The sections of a pole must get longer
            [2.6, 4, 5.5         | [2.6, [4], 5.5        | 11 | The peg: the pole is lost, and the usual one taken: pole_joints_m holds [4]
            "pole_joints_m": [2.6, 4, 5.5, 7, 8.5, 10, 11.5, 13] | "pole_joints_m": 13 | 11 | The peg: the pole is lost, and the usual one taken: pole_joints_m must be a list of numbers, not 13.
            "left_limit_m": -7.5 | "left_limit_m": 7.5   | 11 | The peg: the limits are lost: The left limit must lie to the left
            {"x_m": -8, "y_m": 0.6} | {"x_m": -8}        | 11 | Point 1 of the near bank: y_m is missing.
            {"x_m": -8, "y_m": 0.6} | [-8, 0.6]          | 11 | Point 1 of the near bank must be an object {...}.
            {"x_m": 4, "y_m": 8} | {"x_m": "4", "y_m": 8} | 11 | Point 1 of island 2: x_m must be a number
            "name": "white pipe" | "name": "Leaning Post" | 11 | Mark 2: there is another mark of that name
            "name": "white pipe" | "name": ""            | 11 | Mark 2: A mark needs a name.
            "kind": "snag"       | "kind": "shark"       | 11 | Hazard 1: kind must be one of snag, lilies or reeds
            "kind": "snag",      |                       | 11 | Hazard 1: kind is missing; taken for other.
            [[3.5, 4.2]]         | [[3.5, 4.2], [1, 1]]  | 11 | Hazard 1: A hazard is one point with a radius
            [[3.5, 4.2]]         | [[3.5, "x"]]          | 11 | Hazard 1: outline_m holds "x" where a number of metres should stand.
            [[3.5, 4.2]]         | [3.5, 4.2]            | 11 | Hazard 1: outline_m must be a list of [x, y].
            "radius_m": 0.5      | "radius_m": 500       | 11 | Hazard 1: radius_m must be between 0 and 100, not 500.
            "target_m": 0.762    | "target_m": -1        | 11 | The wishes: target_m must be between 0 and 30, not -1.
            "across_lines": 3    | "across_lines": 1.5   | 11 | The wishes: across_lines must be a whole number, not 1.5.
            "shot": "No.10"      | "shot": "No.2"        | 11 | Item 1 of rig_templates: shot must be a size such as No.10.
            "tip_to_body_m": 0.06 | "tip_to_body_m": 5   | 11 | Item 1 of rig_templates: tip_to_body_m must be a number between 0 and 1, not 5.
            "version": 1         | "version": 0          | 11 | The peg: version must be 1.
            "version": 1,        |                       | 11 | The peg: version must be 1.
            "format": "pegbed-peg", |                    | 11 | The peg: format must be "pegbed-peg".
            "near_bank": [       | "near_bank": 5, "x": [ | 11 | Near_bank must be a list [...].
            """)
    void oneBadValueCostsNoMoreThanWhatItSpoils(String good, String bad, int readings, String why)
            throws InputException {
        String text = TEXT.replaceFirst(
                java.util.regex.Pattern.quote(good), java.util.regex.Matcher.quoteReplacement(bad == null ? "" : bad));
        assertFalse(text.equals(TEXT), "nothing was spoilt by " + bad);
        Opened.Recovered left = recovered(text);
        assertTrue(left.why().startsWith(why), left.why());
        assertEquals(readings, left.peg().readings().size());
        assertEquals(2, left.peg().visits().size());
        PegRoundTripTest.whole(PegWriter.bytes(left.peg()));
    }

    @Test
    void whatIsLostFallsBackToWhatIsUsual() throws InputException {
        assertEquals(
                Pole.USUAL,
                recovered(TEXT.replace("[2.6, 4, 5.5", "[0, 4, 5.5")).peg().pole());
        assertEquals(
                Hazard.Kind.OTHER,
                recovered(TEXT.replace("\"snag\", \"typed", "\"shark\", \"typed"))
                        .peg()
                        .hazards()
                        .get(0)
                        .kind());
    }

    /** Any one byte of any line of a reading, struck out or turned into something else, costs that reading at most. */
    @Test
    void oneByteOfAReadingGoneOrTurnedCostsThatReadingAtMost() throws InputException {
        List<Integer> ends = readingEnds();
        for (int reading : new int[] {0, 6, 10}) {
            int end = ends.get(reading);
            int start = TEXT.lastIndexOf("\n", end - 1) + 1;
            Set<Reading> others = new HashSet<>(READINGS);
            others.remove(READINGS.get(reading));
            for (int at = start; at <= end; at++) {
                for (String instead : List.of("", "x", "}", "{", "]", "[", "\"", ",", "7", "\n", "\\", ":", "\u0000")) {
                    String text = TEXT.substring(0, at) + instead + TEXT.substring(at + 1);
                    Peg left = PegReader.read("p.peg.json", bytes(text)).peg();
                    assertTrue(
                            new HashSet<>(left.readings()).containsAll(others),
                            () -> "lost others by <" + instead + "> in " + text.substring(start, end + 1));
                }
            }
        }
    }

    /** The same between the readings, where the lists and visits open and close: the readings are there or named. */
    @Test
    void oneByteOfTheFrameOfTheVisitsGoneOrTurnedKeepsOrNamesEveryReading() throws InputException {
        int start = TEXT.indexOf("\"visits\"") + "\"visits\": [".length();
        int stop = TEXT.indexOf("\"log\"") - 10;
        List<String> spoilt = new ArrayList<>();
        List<Integer> ends = readingEnds();
        for (int at = start; at < stop; at++) {
            int end = TEXT.indexOf("\n", at);
            if (ends.contains(end) || ends.contains(end - 1)) {
                continue;
            }
            for (String instead : List.of("", "x", "}", "{", "]", "[", "\"", ",", "7", "\\", ":")) {
                spoilt.add(TEXT.substring(0, at) + instead + TEXT.substring(at + 1));
            }
        }
        int total = 0;
        for (String text : spoilt) {
            Opened opened = PegReader.read("p.peg.json", bytes(text));
            int missing = READINGS.size() - opened.peg().readings().size();
            if (missing > 0) {
                assertInstanceOf(Opened.Recovered.class, opened, text);
                total += missing;
            }
        }
        assertTrue(total * 40 < spoilt.size() * READINGS.size(), "lost " + total);
    }

    /** Any one line of the file, missing or unreadable, costs what it says and no reading on another line. */
    @Test
    void oneLineGoneCostsNoReadingOfAnother() throws InputException {
        List<String> lines = TEXT.lines().toList();
        int next = 0;
        for (int i = 1; i < lines.size(); i++) {
            boolean isReading = next < READINGS.size()
                    && lines.get(i)
                            .contains("\"depth_m\": "
                                    + NumberText.text(READINGS.get(next).depthMetres()))
                    && lines.get(i).contains("\"distance_m\"");
            List<Reading> others = new ArrayList<>(READINGS);
            if (isReading) {
                others.remove(next++);
            }
            for (String instead : List.of("", "?!#")) {
                List<String> spoilt = new ArrayList<>(lines);
                spoilt.set(i, instead);
                Opened left = PegReader.read("p.peg.json", bytes(String.join("\n", spoilt) + "\n"));
                String told = "without line " + lines.get(i);
                assertEquals(others, left.peg().readings(), told);
                assertEquals(2, left.peg().visits().size(), told);
                for (int visit = 0; visit < 2; visit++) {
                    boolean holdsIt = isReading && (next - 1 < 7) == (visit == 0);
                    assertEquals(
                            (visit == 0 ? 7 : 4) - (holdsIt ? 1 : 0),
                            left.peg().visits().get(visit).readings().size(),
                            told);
                }
            }
        }
        assertEquals(READINGS.size(), next);
    }

    @Test
    void manyBrokenLinesAreLeftOutAndNamed() throws InputException {
        Opened.Recovered left = recovered(TEXT.replaceAll("\"typed_depth\": \"5'(\\d)\",", "\"typed_depth\": 5'$1,"));
        assertEquals(
                List.of(READINGS.get(1), READINGS.get(3), READINGS.get(5), READINGS.get(8), READINGS.get(10)),
                left.peg().readings());
        assertEquals(8, left.lost().size());
        assertTrue(left.lost().get(0).contains("This line is not JSON and was left out: {\"typed_distance\": \"s0\""));
    }

    @Test
    void zeroBytesAtTheEndAreACut() throws InputException {
        byte[] whole = Arrays.copyOf(bytes(TEXT), bytes(TEXT).length + 4096);
        Opened opened = PegReader.read("p.peg.json", whole);
        assertEquals(READINGS, opened.peg().readings());
        assertInstanceOf(Opened.Recovered.class, opened);
    }

    @Test
    void lettersThatAreNotUtf8AreNamed() throws InputException {
        byte[] latin = TEXT.replace("dry week", "d\u00e9sert").getBytes(StandardCharsets.ISO_8859_1);
        Opened.Recovered left = assertInstanceOf(Opened.Recovered.class, PegReader.read("p.peg.json", latin));
        assertEquals("d\uFFFDsert", left.peg().visits().get(1).note());
        assertEquals(READINGS.size(), left.peg().readings().size());
        assertTrue(left.lost().stream().anyMatch(entry -> entry.contains("not UTF-8")));
    }

    @Test
    void textAfterTheEndIsNamed() throws InputException {
        assertTrue(recovered(TEXT + "{}").why().startsWith("There is more text after the end"));
        assertEquals(READINGS, recovered(TEXT + "xyz").peg().readings());
        assertEquals(READINGS, recovered(TEXT + "]]]").peg().readings());
    }

    @Test
    void whatIsNotAPegIsRefused() {
        assertTrue(refusal(new byte[0]).contains("is empty"));
        assertTrue(refusal(new byte[4096]).contains("nothing but zero bytes"));
        for (String encoding : List.of("UTF-16", "UTF-16LE", "UTF-16BE", "UTF-32BE")) {
            assertTrue(refusal(TEXT.getBytes(Charset.forName(encoding))).contains("is not UTF-8"), encoding);
        }
        for (String other : List.of(
                "{}",
                "[]",
                "5",
                "null",
                "\"pegbed-peg\"",
                " ",
                "\uFEFF",
                "{",
                "{\"format\": \"geo\"}",
                "[{\"format\":",
                "{\"format\": 5}",
                "{\"format\": [\"pegbed-peg\"]}",
                "{\"type\": \"FeatureCollection\", \"features\": []}",
                "distance_m,angle_deg\n1,2\n",
                "%PDF-1.7 \u00b5",
                "{\"visits\": [{\"readings\": [1, 2]}]}")) {
            assertTrue(refusal(bytes(other)).contains("is not a peg file"), other);
        }
        byte[] noise = new byte[10_000];
        new Random(7).nextBytes(noise);
        refusal(noise);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2", "1.5", "1e300", "99999999999999999999"})
    void aLaterVersionIsRefused(String version) {
        String sentence = refusal(bytes(TEXT.replace("\"version\": 1", "\"version\": " + version)));
        assertTrue(sentence.contains("was written by a later Pegbed"), sentence);
    }

    @Test
    void hugeThingsAreBounded() throws InputException {
        for (String huge : List.of(
                "[".repeat(100_000),
                "{\"a\":".repeat(100_000),
                "1".repeat(5_000_000),
                "1e" + "9".repeat(5_000_000),
                "\"" + "x".repeat(10_000_000) + "\"")) {
            Opened.Recovered inALine = recovered(TEXT.replace("\"target_m\": 0.762", "\"target_m\": " + huge));
            assertEquals(READINGS, inALine.peg().readings());
            assertTrue(inALine.why().length() < 500);
            String alone = "{\"format\": \"pegbed-peg\", \"version\": 1, \"venue\": " + huge;
            assertTrue(recovered(alone).lost().stream().allMatch(entry -> entry.length() < 500));
            assertTrue(refusal(bytes("{\"a\": " + huge)).length() < 500);
        }
    }

    @Test
    void manyTroublesAreCounted() throws InputException {
        StringBuilder readings = new StringBuilder();
        for (int i = 0; i < 250; i++) {
            readings.append("{\"distance_m\": 1, \"angle_deg\": 0, \"depth_m\": 99},\n");
        }
        String text = "{\"format\": \"pegbed-peg\", \"version\": 1, \"visits\": [{\"readings\": [\n" + readings
                + "{\"distance_m\": 1, \"angle_deg\": 0, \"depth_m\": 1}]}]}";
        Opened.Recovered left = recovered(text);
        assertEquals(1, left.peg().readings().size());
        assertEquals(101, left.lost().size());
        assertEquals("And 150 more.", left.lost().get(100));
        assertTrue(left.lost().get(6).startsWith("Line 8, column 1: Reading 7 of visit 1: depth_m must be"));
    }

    @Test
    void theFileItselfStaysUntouched(@TempDir Path folder) throws IOException, InputException {
        Path file = Files.writeString(folder.resolve("p.peg.json"), TEXT.substring(0, TEXT.length() / 2));
        byte[] before = Files.readAllBytes(file);
        assertInstanceOf(Opened.Recovered.class, PegFile.read(file));
        assertArrayEquals(before, Files.readAllBytes(file));
        assertEquals(1, folder.toFile().list().length);
        assertTrue(assertThrows(InputException.class, () -> PegFile.read(folder))
                .getMessage()
                .contains("is a folder"));
        assertTrue(assertThrows(InputException.class, () -> PegFile.read(folder.resolve("none.peg.json")))
                .getMessage()
                .startsWith("There is no file"));
        FaultyFiles broken = new FaultyFiles(0, FaultyFiles.Fault.REFUSED);
        assertEquals(
                "p.peg.json could not be read: the disk said no.",
                assertThrows(InputException.class, () -> PegFile.read(file, broken))
                        .getMessage());
    }

    @Property(tries = 3000)
    void randomDamageIsNeverMoreThanASentence(@ForAll Random random) throws InputException {
        byte[] bytes = bytes(TEXT);
        for (int i = 1 + random.nextInt(6); i > 0; i--) {
            bytes = damaged(bytes, random);
        }
        Opened opened;
        try {
            opened = PegReader.read("p.peg.json", bytes);
        } catch (InputException refused) {
            assertFalse(refused.getMessage().isBlank());
            return;
        }
        if (opened instanceof Opened.Recovered left) {
            assertTrue(left.where().matches("line \\d+, column \\d+"), left.where());
            assertFalse(left.why().isBlank());
            assertFalse(left.lost().isEmpty());
        }
        byte[] again = PegWriter.bytes(opened.peg());
        assertArrayEquals(again, PegWriter.bytes(PegRoundTripTest.whole(again)));
    }

    private static byte[] damaged(byte[] bytes, Random random) {
        if (bytes.length < 10) {
            return bytes;
        }
        int at = random.nextInt(bytes.length);
        int length = Math.min(bytes.length - at, 1 + random.nextInt(random.nextBoolean() ? 4 : 400));
        byte[] result = bytes.clone();
        switch (random.nextInt(5)) {
            case 0 -> result[at] = (byte) random.nextInt(256);
            case 1 -> result[at] ^= (byte) (1 << random.nextInt(8));
            case 2 -> Arrays.fill(result, at, at + length, (byte) 0);
            case 3 -> {
                result = new byte[bytes.length - length];
                System.arraycopy(bytes, 0, result, 0, at);
                System.arraycopy(bytes, at + length, result, at, bytes.length - at - length);
            }
            default -> {
                result = new byte[bytes.length + length];
                System.arraycopy(bytes, 0, result, 0, at + length);
                System.arraycopy(bytes, at, result, at + length, bytes.length - at);
            }
        }
        return result;
    }
}
