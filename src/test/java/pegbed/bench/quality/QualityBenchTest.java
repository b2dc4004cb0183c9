package pegbed.bench.quality;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.bench.practice.Fan;
import pegbed.bench.practice.GrossError;
import pegbed.bench.practice.PracticePeg;
import pegbed.bench.practice.SimulatedPlumbing;
import pegbed.findings.Confidence;
import pegbed.geometry.PegWater;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;

/** On one invented peg that can be mapped and one whose banks cross. */
class QualityBenchTest {
    @TempDir
    private Path folder;

    private PracticePeg cut;

    @BeforeEach
    void write() throws IOException, InputException {
        CutPeg.write(folder.resolve("cut"));
        cut = PracticePeg.all(folder).get(0);
        SimulatedPlumbing plumbing = new SimulatedPlumbing(cut, 1);
        StringBuilder table = new StringBuilder("distance_m,angle_deg,depth_m\n");
        for (Place place : Fan.of(PegWater.of(cut.empty()), 30, false)) {
            Reading reading = plumbing.read(place);
            table.append(String.format(
                    Locale.ROOT,
                    "%.2f,%.1f,%.3f%n",
                    reading.place().distanceMetres(),
                    reading.place().angleDegrees(),
                    reading.depthMetres()));
        }
        Files.writeString(folder.resolve("cut").resolve("fan30.csv"), table);
    }

    private void writeRefused() throws IOException {
        CutPeg.write(folder.resolve("refused"));
        Files.writeString(folder.resolve("refused").resolve("banks.csv"), """
                bank,x_m,y_m
                near,-12,5
                near,12,5
                far,-12,-5
                far,12,-5
                """);
    }

    @Test
    void everyMethodHasARowAndOnlyThoseWithDoubtAreHeldToIt() throws IOException, InputException {
        BenchReport report = QualityBench.report(List.of(folder), List.of("fan30"), true);
        JsonNode tables = report.json().path("tables");
        JsonNode rows = tables.get(0).path("rows");

        assertEquals(
                List.of(
                        "Pegbed",
                        "thin-plate smoother",
                        "plain Gaussian process",
                        "triangulation",
                        "natural neighbours"),
                rows.findValuesAsText("method"));
        for (JsonNode row : rows) {
            assertEquals("fan30", row.path("readings").asText());
            assertTrue(row.path("depth_rmse_m").asDouble() < 0.3, row.toString());
            assertTrue(row.path("slope_rmse").asDouble() > 0);
            assertEquals(1, row.path("flats_right").path("of").asInt());
            boolean doubt = rows.get(0) == row || rows.get(1) == row || rows.get(2) == row;
            for (String key : List.of(
                    "coverage_50", "coverage_90", "coverage_99", "near_bank_coverage_90", "crps_m", "log_score")) {
                assertEquals(doubt, row.path(key).isNumber(), key + " of " + row);
            }
            if (doubt) {
                assertTrue(row.path("coverage_50").asDouble()
                        <= row.path("coverage_90").asDouble());
                assertTrue(row.path("coverage_90").asDouble()
                        <= row.path("coverage_99").asDouble());
            }
        }
        // A plan of the usual four lines at most, reported with odds and words.
        int lines = 0;
        for (JsonNode row : tables.get(1).path("rows")) {
            lines += row.path("named").asText().equals("lines")
                    ? row.path("count").asInt()
                    : 0;
        }
        assertTrue(lines >= 1 && lines <= 4, "lines: " + lines);
        assertEquals("pegs", tables.get(3).path("table").asText());
        assertEquals(5, tables.get(3).path("rows").size());
    }

    @Test
    void markdownHasAHeadingAUnitAndADash() throws IOException, InputException {
        String text =
                QualityBench.report(List.of(folder), List.of("fan30"), false).markdown();

        assertTrue(
                text.startsWith("### Methods, " + folder.getFileName() + "\n\n| readings | method | depth RMSE, m |"));
        assertTrue(text.contains("| CRPS, m | log score, −ln(1/m) |"));
        assertTrue(text.contains("| fan30 | triangulation |") && text.contains("| – |"));
        assertFalse(text.contains("### Pegs"), "pegs are reported only when asked for");
    }

    @Test
    void severalFoldersHaveATableEachAndTheOddsTogether() throws IOException, InputException {
        BenchReport report = QualityBench.report(List.of(folder, folder), List.of("fan30"), false);
        List<String> folders = report.json().path("tables").findValuesAsText("folder");

        assertEquals(8, folders.size());
        assertEquals(2, folders.stream().filter(f -> f.equals("all folders")).count());
    }

    @Test
    void aPegWithBanksThatCanNotBeUsedIsListedAndLeftOut() throws IOException, InputException {
        List<BenchTable> alone =
                QualityBench.report(List.of(folder), List.of("fan30"), false).tables();
        writeRefused();
        BenchReport report = QualityBench.report(List.of(folder), List.of("fan30"), false);

        assertEquals(1, report.leftOut().size());
        assertEquals("refused", report.leftOut().get(0).peg());
        assertTrue(report.leftOut().get(0).reason().contains("bank"));
        assertEquals(alone.get(0).rows(), report.tables().get(0).rows(), "the means are those without it");
        assertTrue(report.markdown().contains("refused: "));
    }

    @Test
    void aTableThatNoPegHasIsAnError() {
        InputException e =
                assertThrows(InputException.class, () -> QualityBench.report(List.of(folder), List.of("fan99"), false));
        assertTrue(e.getMessage().contains("fan99.csv"), e.getMessage());
    }

    @Test
    void aFolderThatIsNotThereIsAnError() {
        InputException e = assertThrows(
                InputException.class,
                () -> QualityBench.report(List.of(folder.resolve("none")), List.of("fan30"), false));
        assertTrue(e.getMessage().startsWith("There is no folder"), e.getMessage());
    }

    @Test
    void oneGrossErrorIsMadeAndKnownForWhatItIs() throws InputException {
        Peg peg = cut.with(folder.resolve("cut").resolve("fan30.csv"));
        for (int seed = 0; seed < 20; seed++) {
            GrossError error = GrossError.in(cut, peg, new Random(seed));
            for (int i = 0; i < peg.readings().size(); i++) {
                double moved = error.peg().readings().get(i).depthMetres()
                        - peg.readings().get(i).depthMetres();
                assertEquals(i == error.reading() ? error.metres() : 0, moved, 1e-12);
                assertFalse(GrossError.isGross(cut, peg.readings().get(i)), "as it was read");
            }
            assertTrue(Math.abs(error.metres()) >= 0.3 && Math.abs(error.metres()) <= 1.5);
        }
        assertNotEquals(
                GrossError.in(cut, peg, new Random(1)).reading(),
                GrossError.in(cut, peg, new Random(2)).reading());
        assertTrue(GrossError.isGross(cut, Reading.of(5, 0, 2.8)));
    }

    @Test
    void grossErrorsAreCountedOverThreeDraws() throws IOException, InputException {
        writeRefused();
        BenchReport report = GrossErrorBench.report(List.of(folder));
        JsonNode rows = report.json().path("tables").get(0).path("rows");

        assertEquals(1, rows.get(0).path("maps").asInt());
        assertTrue(rows.get(0).path("reported").isNull());
        assertEquals(3, rows.get(1).path("reported").path("of").asInt());
        assertTrue(rows.get(1).path("depth_rmse_m").asDouble()
                > rows.get(0).path("depth_rmse_m").asDouble());
        assertEquals(1, report.leftOut().size());
    }

    @Test
    void oddsGoIntoTheBinTheyReach() {
        assertEquals(0, Calibration.bin(0));
        assertEquals(1, Calibration.bin(0.2));
        assertEquals(2, Calibration.bin(0.79));
        assertEquals(3, Calibration.bin(0.8));
        assertEquals(4, Calibration.bin(0.9));
        assertEquals(4, Calibration.bin(1));
    }

    @Test
    void anOutcomeIsStrictOrMerelyRight() {
        SurveyedBottom.Answer answer =
                new SurveyedBottom.Answer(new Place(0, 5), Confidence.SURE, OptionalDouble.of(0.85));

        assertTrue(Outcome.of(answer, 0.05, 0.2).strict());
        Outcome right = Outcome.of(answer, 0.08, 0.25);
        assertTrue(right.right() && !right.strict());
        assertFalse(Outcome.of(answer, 0.02, 0.31).right());
        assertFalse(Outcome.of(answer, Double.NaN, Double.NaN).right(), "partly land");
    }

    @Test
    void landIsNearWhereTheWaterEnds() {
        // Water from y = −1 to 11 m; land nodes from −1.1 and 11.1 on.
        assertTrue(cut.truth().isLandWithin(0, -0.5, 0.75));
        assertFalse(cut.truth().isLandWithin(0, 0, 0.75));
        assertFalse(cut.truth().isLandWithin(12.9, 5, 0.75), "off the grid nothing is known to be land");
    }
}
