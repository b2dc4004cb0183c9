package pegbed.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pegbed.findings.DoubtSummary;
import pegbed.findings.NeighbourFits;
import pegbed.findings.PegMap;
import pegbed.findings.SurveyOrder;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.storage.disk.PegFile;
import pegbed.surface.posterior.ReadingCheck;

class MapWordsTest {
    private static final MapWords WORDS = MapWords.of(Peg.EMPTY);

    private static Peg sample(String name) throws InputException {
        return PegFile.read(Path.of("sample-pegs", name + ".peg.json")).peg();
    }

    private static PegMap beside(Peg peg, List<Peg> others) throws InputException {
        return PegMap.of(peg, NeighbourFits.of(others, Monitor.NONE), Monitor.NONE);
    }

    @Test
    void whatAMapHasFromOtherPegsIsSaidInOneSentence() throws InputException {
        Peg nine = sample("tansy-cut-9");
        PegMap map = beside(nine, List.of(sample("tansy-cut-14"), sample("tansy-cut-14")));
        assertEquals(Optional.of("Started from 2 other pegs of Tansy Cut."), MapWords.neighbours(map));
        assertEquals(Optional.empty(), MapWords.neighbours(beside(nine, List.of(sample("hobbrel-pond-3")))));
    }

    @Test
    void theDoubtIsSaidWithAYardstick() {
        SurveyOrder order = SurveyOrder.values()[0];
        String met = WORDS.doubt(new DoubtSummary(0.0254, 0.256, Optional.of(order)));
        assertTrue(
                met.startsWith("Depth is known to 1 in (one standard deviation) over half of the water in front;"
                        + " 26 % of it is a guess. By the uncertainty table"),
                met);
        assertTrue(met.contains(order.title()), met);
        String coarse = WORDS.doubt(new DoubtSummary(0.5, 1, Optional.empty()));
        assertTrue(coarse.endsWith("100 % of it is a guess. That is coarser than any order of IHO S-44."), coarse);
    }

    @Test
    void aContradictedReadingIsCountedFromOne() {
        ReadingCheck check = new ReadingCheck(2, 0.3048, 1.2192, 0.0508, 1.524, 0.99);
        assertEquals("Reading 3 says 5 ft; the others expect 4 ft. Take it again if you can.", WORDS.suspicious(check));
        assertEquals("Reading 3 says 5 ft; the others expect 4 ft ± 2 in there.", WORDS.suspiciousWithDoubt(check));
        assertEquals(
                "The readings about it expect 4 ft here, give or take 2 in; 5 ft was read. Plumb it again or delete it.",
                WORDS.suspiciousHere(check));
        assertEquals(
                "That is 1 ft deeper than the other readings expect there, give or take 2 in.",
                WORDS.questioned(check));
        assertEquals(
                "That is 8 in shallower than the other readings expect there, give or take 2 in.",
                WORDS.questioned(new ReadingCheck(2, -0.2032, 0.7112, 0.0508, 0.508, 0.99)));
    }
}
