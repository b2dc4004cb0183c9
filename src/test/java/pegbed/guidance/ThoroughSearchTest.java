package pegbed.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.findings.DeepestSearch;
import pegbed.findings.Findings;
import pegbed.findings.FlatProbability;
import pegbed.findings.FlatSearch;
import pegbed.findings.FlatSpot;
import pegbed.findings.PegMap;
import pegbed.findings.Spot;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.storage.disk.PegFile;
import pegbed.surface.BottomGrid;

/** The searches pass over most discs; they find what looking at every one finds. */
class ThoroughSearchTest {
    @ParameterizedTest
    @ValueSource(strings = {"tansy-cut-9", "tansy-cut-14", "hobbrel-pond-3"})
    void findsWhatLookingAtEveryDiscFinds(String name) throws InputException {
        PegMap map = PegMap.of(
                PegFile.read(Path.of("sample-pegs", name + ".peg.json")).peg(), Monitor.NONE);
        BottomGrid grid = map.grid();
        double deepest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < grid.frame().size(); i++) {
            if (map.zones().isInFront(i)) {
                double gentle = FlatProbability.USUAL.gentle(grid.disc(i));
                deepest = Math.max(deepest, DeepestSearch.score(grid.disc(i).depthMetres(), gentle));
            }
        }
        Spot spot = map.deepest().spot();
        assertEquals(deepest, DeepestSearch.score(spot.depthMetres(), spot.pFlat()));

        for (double target = 0.3; target < spot.depthMetres() + 0.3; target += 0.1) {
            for (FlatSpot flat : Findings.of(map, OptionalDouble.of(target)).flats()) {
                lookedAtEverywhere(map, flat, target);
            }
        }
    }

    private static void lookedAtEverywhere(PegMap map, FlatSpot flat, double target) {
        double most = 0;
        double odds = 0;
        double nearest = Double.POSITIVE_INFINITY;
        for (int i : map.zones().nodes(flat.zone())) {
            double here = FlatProbability.USUAL.flat(map.grid().disc(i), target);
            double score = here + FlatSearch.WIDE.flat(map.grid().disc(i), target);
            nearest = Math.min(nearest, Math.abs(map.grid().disc(i).depthMetres() - target));
            if (score > most) {
                most = score;
                odds = here;
            }
        }
        String where = flat.zone() + " at " + target;
        if (flat.area().isPresent()) {
            // The middle of the flat may be named instead, where it is nearly as good.
            assertTrue(flat.spot().pFlat() >= odds - 0.1, where);
        } else if (most > 0) {
            assertEquals(odds, flat.spot().pFlat(), where);
        } else {
            assertEquals(nearest, Math.abs(flat.spot().depthMetres() - target), where);
        }
    }
}
