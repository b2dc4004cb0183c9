package pegbed.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import pegbed.model.BankPoint;
import pegbed.model.Place;

class SightsTest {
    private static final List<BankPoint> BENT =
            Pegs.far(-10, 10, -4, 13, 0, 12, 5, 14, 9, 9).far();
    private static final List<BankPoint> BACKWARDS =
            Pegs.far(9, 9, 5, 14, 0, 12, -4, 13, -10, 10).far();

    @Test
    void metresAreCountedAlongTheBankRoundItsBends() {
        Sights sights = new Sights(Pegs.far(-10, 12, 0, 12, 0, 20).far());

        // three metres from (-2, 12): two along the first leg, one up the second
        assertEquals(0, sights.angleBeside(new Place(-2, 12), 2), 1e-9);
        assertEquals(0, sights.angleBeside(new Place(-2, 12), 3), 1e-9);
        assertEquals(Math.toDegrees(Math.atan2(-5, 12)), sights.angleBeside(new Place(-2, 12), -3), 1e-9);
    }

    @Test
    void aMarkBehindTheBankIsSightedOverIt() {
        Sights sights = new Sights(Pegs.far(-10, 12, 10, 12).far());

        // the sight line to (3, 18) crosses the bank at (2, 12)
        assertEquals(Math.toDegrees(Math.atan2(3, 12)), sights.angleBeside(new Place(3, 18), 1), 1e-9);
        assertEquals(
                1,
                sights.rightOf(new Place(3, 18), Math.toDegrees(Math.atan2(3, 12)))
                        .getAsDouble(),
                1e-9);
    }

    @Test
    void theBankGoesStraightOnBeyondItsEnds() {
        Sights sights = new Sights(Pegs.far(-1, 12, 1, 12).far());

        assertEquals(Math.toDegrees(Math.atan2(8, 12)), sights.angleBeside(new Place(5, 12), 3), 1e-9);
    }

    @Test
    void theDrawnBankGoesBeforeWhatIsBeyondItsEnds() {
        // drawn on beyond its last point, the hook of this bank would cross the sight line straight out at (0, 6)
        Sights sights = new Sights(Pegs.far(-10, 12, 6, 12, 5, 11).far());

        assertEquals(2, sights.rightOf(new Place(-2, 12), 0).getAsDouble(), 1e-9);
    }

    @Test
    void withoutFarBankMetresAreSquareToTheSightLine() {
        Sights sights = new Sights(List.of());

        assertEquals(Math.toDegrees(Math.atan2(1, 10)), sights.angleBeside(new Place(0, 10), 1), 1e-9);
        assertEquals(90 - Math.toDegrees(Math.atan2(1, 10)), sights.angleBeside(new Place(10, 0), -1), 1e-9);
        assertEquals(
                2,
                sights.rightOf(new Place(0, 10), Math.toDegrees(Math.atan2(2, 10)))
                        .getAsDouble(),
                1e-9);
        assertTrue(sights.rightOf(new Place(0, 10), 95).isEmpty());
    }

    @Property
    void theOrderOfTheBankDoesNotMatter(
            @ForAll @DoubleRange(min = -8, max = 8) double x, @ForAll @DoubleRange(min = -6, max = 6) double right) {
        Place mark = new Place(x, 16);

        assertEquals(new Sights(BENT).angleBeside(mark, right), new Sights(BACKWARDS).angleBeside(mark, right), 1e-6);
    }

    @Property
    void rightOfUndoesAngleBeside(
            @ForAll @DoubleRange(min = -8, max = 8) double x, @ForAll @DoubleRange(min = -6, max = 6) double right) {
        Place mark = new Place(x, 16);
        for (List<BankPoint> bank : List.of(BENT, List.<BankPoint>of())) {
            Sights sights = new Sights(bank);

            assertEquals(
                    right, sights.rightOf(mark, sights.angleBeside(mark, right)).getAsDouble(), 1e-6);
        }
    }
}
