package pegbed.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbed.model.DayEvent;
import pegbed.model.Peg;

class DayNotationTest {
    private static final DayNotation NOTATION = DayNotation.of(Peg.EMPTY);

    @Test
    void readsAFishWithItsTimeLineKindAndWeight() throws NotationException {
        DayLine line = NOTATION.parse("14:20 line 2 fish F1 1.5lb");
        assertEquals(Optional.of(LocalTime.of(14, 20)), line.time());
        assertEquals(OptionalInt.of(2), line.number());
        assertEquals(DayEvent.Kind.FISH, line.kind());
        assertEquals("F1", line.name());
        assertEquals(1, line.count());
        // One pound is 0.45359237 kg exactly (international yard and pound agreement, 1959).
        assertEquals(0.680, line.kilograms().orElseThrow(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        "fish 3 crucian carp 4lb, 3, crucian carp, 1.814",
        "fish 3x F1 2 lb 8 oz, 3, F1, 1.134",
        "fish 1lb8, 1, '', 0.680",
        "fish 12oz, 1, '', 0.340",
        "fish tench 0.7kg, 1, tench, 0.7",
        "fish 700g tench, 1, tench, 0.7",
        "fish 2½lb, 1, '', 1.134",
    })
    void readsCountsAndWeights(String typed, int count, String name, double kilograms) throws NotationException {
        DayLine line = NOTATION.parse(typed);
        assertEquals(count, line.count());
        assertEquals(name, line.name());
        assertEquals(kilograms, line.kilograms().orElseThrow(), 1e-9);
    }

    @Test
    void readsFeedAndHowMuch() throws NotationException {
        DayLine line = NOTATION.parse("line 1 feed hemp and pellets, small pot");
        assertEquals("hemp and pellets", line.name());
        assertEquals("small pot", line.amount());
        assertTrue(line.time().isEmpty());
    }

    @Test
    void readsAPlaceInsteadOfANumber() throws NotationException {
        DayLine line = NOTATION.parse("at 11 20R bite");
        assertEquals(11, line.place().orElseThrow().distanceMetres(), 1e-9);
        assertEquals(20, line.place().orElseThrow().angleDegrees(), 1e-9);
        assertEquals(DayEvent.Kind.BITE, line.kind());
    }

    @Test
    void readsTheRestOfANoteAsItWasTyped() throws NotationException {
        assertEquals(
                "Wind went round, 2 rods out",
                NOTATION.parse("9:05 note Wind went round, 2 rods out").note());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | The event is missing",
                "14:20 | The event is missing after \"14:20\"",
                "14:20 line 2 | The event is missing after \"14:20 line 2\"",
                "14.20 fish | could be a time or a number",
                "24:00 fish | is no time of a day",
                "whale | is none of start, stop, feed, bite, fish, lost, snag, note",
                "fish 0 F1 | can't be how many fish",
                "fish 1000 F1 | can't be how many fish",
                "fish 1lb 2lb | is a second weight",
                "fish 0lb | can't be the weight of fish",
                "lost 2lb | a lost fish was not weighed",
                "note | The note is missing",
                "at bite | is not a distance",
            })
    void tellsWhatIsWrong(String typed, String told) {
        NotationException refused = assertThrows(NotationException.class, () -> NOTATION.parse(typed));
        assertTrue(refused.getMessage().contains(told), refused.getMessage());
    }

    @ParameterizedTest
    @CsvSource({"0.68, 1 lb 8 oz", "0.34, 12 oz", "0.9072, 2 lb", "0.001, 1 oz", "0.4535, 1 lb"})
    void printsPoundsAndOunces(double kilograms, String words) {
        assertEquals(words, Weight.poundsAndOunces(kilograms));
    }
}
