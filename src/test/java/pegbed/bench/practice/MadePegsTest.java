package pegbed.bench.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.bench.quality.QualityBench;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;

class MadePegsTest {
    @TempDir
    private Path folder;

    @Test
    void madePegsAreReadAsPracticePegs() throws IOException, InputException {
        MadePegs.main(new String[] {folder.toString(), "5", "3"});
        List<PracticePeg> pegs = PracticePeg.all(folder);

        assertEquals(5, pegs.size());
        for (PracticePeg peg : pegs) {
            assertTrue(peg.deepestMetres() > 1 && peg.deepestMetres() < 3.5, peg.name() + ": " + peg.deepestMetres());
            assertTrue(peg.tasks().stream().anyMatch(PracticePeg.Task::feasible), peg.name());
            assertEquals(peg.deepestMetres(), deepest(peg), 0.01, peg.name());
        }
        assertTrue(pegs.get(4).empty().banks().far().isEmpty(), "every fifth is open water");
    }

    private static double deepest(PracticePeg peg) {
        double reach = peg.empty().pole().reachMetres();
        double most = 0;
        for (double y = 0; y < reach; y += 0.25) {
            for (double x = -reach; x < reach; x += 0.25) {
                double r = Math.hypot(x, y);
                if (r <= reach - 0.4 && (r <= 7 || Math.toDegrees(Math.atan2(Math.abs(x), y)) <= 62)) {
                    double depth = peg.truth().disc(x, y).depth();
                    most = Math.max(most, Double.isNaN(depth) ? 0 : depth);
                }
            }
        }
        return most;
    }

    @Test
    void theSameSeedMakesTheSamePegs() throws IOException, InputException {
        MadePegs.main(new String[] {folder.resolve("one").toString(), "1", "3"});
        MadePegs.main(new String[] {folder.resolve("two").toString(), "1", "3"});

        for (String file : List.of("truth.txt", "banks.csv", "about.json", "fan15.csv", "stagger20.csv", "fan30.csv")) {
            assertEquals(
                    Files.readString(folder.resolve("one/made-3-00").resolve(file)),
                    Files.readString(folder.resolve("two/made-3-00").resolve(file)));
        }
    }

    @Test
    void theQualityBenchReadsThem() throws IOException, InputException {
        MadePegs.main(new String[] {folder.toString(), "2", "5"});

        String table = QualityBench.report(List.of(folder), QualityBench.READINGS, true)
                .markdown();

        for (String row : QualityBench.READINGS) {
            assertTrue(table.contains("| " + row + " | Pegbed |"), table);
            assertTrue(table.contains("| " + row + " | made-5-01 |"), table);
        }
    }

    /**
     * Readings differ from the bottom where they were meant, by the plummet's misplacing on slopes for the most part.
     */
    @Test
    void readingsAreThoseOfTheBottom() throws IOException, InputException {
        MadePegs.main(new String[] {folder.toString(), "2", "5"});
        for (PracticePeg peg : PracticePeg.all(folder)) {
            for (int count : new int[] {15, 30}) {
                Peg read = peg.with(folder.resolve(peg.name()).resolve("fan" + count + ".csv"));
                assertEquals(count, read.readings().size());
                double squares = 0;
                for (Reading reading : read.readings()) {
                    Place place = reading.place();
                    double truth = peg.truth().depthAt(place.xMetres(), place.yMetres());
                    squares += Double.isNaN(truth) ? 0 : Math.pow(reading.depthMetres() - truth, 2);
                }
                double rms = Math.sqrt(squares / count);
                assertTrue(rms > 0.005 && rms < 0.3, peg.name() + ": " + rms);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "x", "x 0 1", "x 2", "x two 1", "x 2 1 3", "x 2000 1", "x 2 one"})
    void badArgumentsAreAnsweredByAnExample(String args) {
        String[] given = args.isEmpty() ? new String[0] : args.split(" ");
        Exception refused = assertThrows(IllegalArgumentException.class, () -> MadePegs.main(given));
        assertTrue(refused.getMessage().contains("such as: practice-made 24 1"));
    }
}
