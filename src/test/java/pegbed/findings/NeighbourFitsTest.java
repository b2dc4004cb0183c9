package pegbed.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pegbed.model.Banks;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.storage.disk.PegFile;
import pegbed.surface.NeighbouringPegs;

class NeighbourFitsTest {
    private static Peg sample(String name) throws InputException {
        return PegFile.read(Path.of("sample-pegs", name + ".peg.json")).peg();
    }

    private static PegMap beside(Peg peg, List<Peg> others) throws InputException {
        return PegMap.of(peg, NeighbourFits.of(others, Monitor.NONE), Monitor.NONE);
    }

    /** The far slope of peg 9 lies elsewhere than that of peg 14: its readings there are right all the same. */
    @Test
    void otherPegsMakeNoReadingSuspicious() throws InputException {
        Peg nine = sample("tansy-cut-9");
        PegMap taught = beside(nine, List.of(sample("tansy-cut-14")));
        assertEquals(List.of(), taught.suspicious());
        assertEquals(PegMap.of(nine, Monitor.NONE).checks(), taught.checks());
    }

    @Test
    void aPegWithoutBanksOrReadingsTeachesNothing() throws InputException {
        Peg fourteen = sample("tansy-cut-14");
        List<Peg> useless = List.of(
                fourteen.withBanks(Banks.NONE), fourteen.withToday(visit -> visit.withReadings(List.of())), Peg.EMPTY);
        assertEquals(NeighbouringPegs.NONE, NeighbourFits.of(useless, Monitor.NONE));
    }

    @Test
    void ofManyReadingsAsManyAsCountAreTakenFromAllOverTheVisit() throws InputException {
        Peg fourteen = sample("tansy-cut-14");
        List<Reading> many = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            many.addAll(fourteen.readings());
        }
        Peg imported = fourteen.withToday(visit -> visit.withReadings(many));
        PegMap map = beside(sample("tansy-cut-9"), List.of(imported));
        assertTrue(map.bottom().lesson().orElseThrow().heeded());
    }
}
