package pegbed.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import pegbed.model.Peg;
import pegbed.model.Units;
import pegbed.notation.Line;
import pegbed.notation.Notation;
import pegbed.notation.NotationException;
import pegbed.notation.Pegs;

/** How typed lines are shown; the page of the notation has many more examples, which are tested with it. */
class TypedLineWordsTest {
    private static String understood(Peg peg, String typed) throws NotationException {
        return TypedLineWords.of(peg).understood(Notation.of(peg).parse(typed));
    }

    @Test
    void theWordsFollowTheUnits() throws NotationException {
        Peg metric = Pegs.with(Pegs.TANSY, Units.Depth.CENTIMETRES, Units.Distance.METRES);
        Peg feet = Pegs.with(Pegs.TANSY, Units.Depth.METRES, Units.Distance.FEET);

        assertEquals("11.25 m, 20° left (11:20), 137 cm (1.37 m)", understood(metric, "11,25 -20 4'6"));
        assertEquals("10.97 m (36 ft), 14° left (11:32), 1.37 m", understood(feet, "36ft 11:32 4'6"));
    }

    @Test
    void theWordsOutliveTheMark() throws NotationException {
        Line line = Notation.of(Pegs.TANSY).parse("s6 @post+1 5'6");

        assertEquals(
                "10.0 m (s6), 4.4° left (11:50), 5 ft 6 in (1.68 m)",
                TypedLineWords.of(Pegs.TANSY.withMarks(List.of())).understood(line));
    }
}
