package pegbed.ui.bankside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.findings.PegMap;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.notation.FeetAndInches;
import pegbed.storage.disk.PegFile;
import pegbed.storage.peg.Opened;
import pegbed.ui.app.Desks;
import pegbed.ui.app.WindowViewModels;
import pegbed.ui.bankside.BanksideViewModel.Wheel;

/** How many taps a reading costs who plumbs where it is proposed, on the bottom that a sample's own readings tell. */
@Tag("slow")
class TapsTest {
    private static final int READINGS = 20;
    private static final int FEW = 3;

    /** What a far step turns. */
    private static final int FAR_INCHES = 4;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"tansy-cut-14", "tansy-cut-9", "hobbrel-pond-3"})
    void mostReadingsTakeThreeTapsAtMost(String name) throws Exception {
        Peg sample = ((Opened.Whole) PegFile.read(Path.of("sample-pegs", name + ".peg.json"))).peg();
        PegMap truth = PegMap.of(sample, Monitor.NONE);
        Peg bare = sample.withVisits(List.of(sample.today().withReadings(List.of())));
        WindowViewModels desk = Desks.atOnce(folder, bare);
        BanksideViewModel model = desk.bankside();
        model.begin();
        List<Integer> taps = new ArrayList<>();
        for (int i = 0; i < READINGS; i++) {
            Place place = model.place();
            double depth = Math.max(
                    0, truth.bottom().at(place.xMetres(), place.yMetres()).depthMetres());
            taps.add(plumb(model, (int) Math.round(depth / FeetAndInches.INCH_METRES)));
        }
        assertEquals(READINGS, desk.session().peg().readings().size());
        long few = taps.stream().filter(count -> count <= FEW).count();
        assertTrue(2 * few > READINGS, "taps of each reading: " + taps);
    }

    /** Taps what is needed for a depth, the large steps first, and counts. */
    private static int plumb(BanksideViewModel model, int inches) {
        int taps = 0;
        int off = inches - shown(model);
        while (off != 0) {
            int way = (int) Math.signum(off);
            if (Math.abs(off) > FAR_INCHES / 2) {
                model.turnFar(Wheel.DEPTH, way);
            } else {
                model.turn(Wheel.DEPTH, way);
            }
            taps++;
            off = inches - shown(model);
        }
        if (taps == 0) {
            model.confirmDepth();
            taps++;
        }
        model.enter();
        return taps + 1;
    }

    private static int shown(BanksideViewModel model) {
        return (int) Math.round(model.depthMetres() / FeetAndInches.INCH_METRES);
    }
}
