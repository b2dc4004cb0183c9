package pegbed.bench.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;

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
    void theSameSeedMakesTheSamePegs() throws IOException {
        MadePegs.main(new String[] {folder.resolve("one").toString(), "1", "3"});
        MadePegs.main(new String[] {folder.resolve("two").toString(), "1", "3"});

        for (String file : List.of("truth.txt", "banks.csv", "about.json")) {
            assertEquals(
                    Files.readString(folder.resolve("one/made-3-00").resolve(file)),
                    Files.readString(folder.resolve("two/made-3-00").resolve(file)));
        }
    }
}
