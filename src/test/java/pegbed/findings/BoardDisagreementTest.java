package pegbed.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.model.Visit;
import pegbed.storage.disk.PegFile;
import pegbed.wording.LevelWords;

/** A board measure that is wrong by a metre is what is wrong, not all the readings of its day. */
class BoardDisagreementTest {
    /** The sample peg, plumbed again at half its places, with the water a few inches higher. */
    private static Peg twice(double higher, double boardError) throws InputException {
        Peg first =
                PegFile.read(Path.of("sample-pegs", "tansy-cut-14.peg.json")).peg();
        Visit visit = first.today();
        List<Reading> again = visit.readings().stream()
                .limit(13)
                .map(r -> new Reading(
                        r.typed(),
                        r.place(),
                        r.precision(),
                        r.depthMetres() + higher,
                        r.bottom(),
                        r.note(),
                        r.time(),
                        r.extras()))
                .toList();
        double board = visit.boardToWaterMetres().orElseThrow() - higher + boardError;
        return first.withVisits(List.of(visit, Visit.EMPTY.withReadings(again).withBoard(OptionalDouble.of(board))));
    }

    @Test
    void aBoardWrongByOneMetreIsToldAsThat() throws InputException {
        PegMap map = PegMap.of(twice(0.08, 1), Monitor.NONE);
        BoardDisagreement board = map.board().orElseThrow();
        assertEquals(1, board.visit());
        assertEquals(-0.92, board.byBoardMetres(), 1e-9);
        assertEquals(0.08, board.byReadings().higherMetres(), 0.03);
        assertEquals(List.of(), map.suspicious());
        List<String> said = LevelWords.changes(map);
        assertEquals(1, said.size(), said.toString());
        assertTrue(
                said.get(0).startsWith("The board disagrees: by it the water stands 3 ft lower than on"), said.get(0));
        assertTrue(said.get(0).contains(" in higher than then, known to "), said.get(0));
    }

    @Test
    void aBoardThatIsRightIsNot() throws InputException {
        assertTrue(PegMap.of(twice(0.25, 0), Monitor.NONE).board().isEmpty());
        assertTrue(PegMap.of(twice(0.08, 0.04), Monitor.NONE).board().isEmpty());
    }
}
