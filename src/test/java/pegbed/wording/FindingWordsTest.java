package pegbed.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pegbed.findings.Confidence;
import pegbed.findings.FlatSpot;
import pegbed.findings.Spot;
import pegbed.findings.Zone;
import pegbed.model.Peg;
import pegbed.model.Place;

class FindingWordsTest {
    private static final FindingWords WORDS = FindingWords.of(Peg.EMPTY);

    private static FlatSpot none(OptionalDouble nearestMetres) {
        Spot spot = new Spot(Place.polar(2.5, 80), 0.6, 0.1, 0.2, 0.1);
        return new FlatSpot(
                Zone.RIGHT_MARGIN, 0.8382, spot, Confidence.NONE, Optional.empty(), Optional.empty(), nearestMetres);
    }

    /** The plan says the same with its zone; see PlanTest. */
    @Test
    void aZoneWithoutAFlatIsSaidInOneWordingInTheWindowAndOnTheCommandLine() {
        FlatSpot shallower = none(OptionalDouble.of(0.6096));
        assertEquals("no flat at 2 ft 9 in is known; nearest 2 ft.", WORDS.noFlat(shallower));
        assertEquals(
                new FindingWords.Card("Right margin: no flat at 2 ft 9 in is known", "", "Nearest 2 ft."),
                WORDS.flatCard(shallower));
        FlatSpot nowhere = none(OptionalDouble.empty());
        assertEquals("no flat at 2 ft 9 in is known; none at another depth either.", WORDS.noFlat(nowhere));
        assertEquals("None at another depth either.", WORDS.flatCard(nowhere).what());
    }
}
