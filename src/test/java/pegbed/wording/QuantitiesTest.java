package pegbed.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Units;
import pegbed.notation.Line;
import pegbed.notation.Notation;
import pegbed.notation.NotationException;
import pegbed.notation.Pegs;

class QuantitiesTest {
    private static Quantities at(Units.Depth depth, Units.Distance distance) {
        return Quantities.of(Pegs.with(Pegs.TANSY, depth, distance));
    }

    private static final Quantities USUAL = Quantities.of(Pegs.TANSY);

    @ParameterizedTest
    @CsvSource({
        "1.6764, 5 ft 6 in, 5 ft 6 in",
        "1.6891, 5 ft 7 in, 5 ft 6½ in",
        "1.524, 5 ft, 5 ft",
        "1.5367, 5 ft 1 in, 5 ft ½ in",
        "1.82, 6 ft, 5 ft 11½ in",
        "0.2286, 9 in, 9 in",
        "0.0127, 1 in, ½ in",
        "0, 0 in, 0 in",
        "-0.001, 0 in, 0 in",
        "-0.0508, -2 in, -2 in"
    })
    void depthInFeetAndInches(double metres, String toInch, String toHalfInch) {
        assertEquals(toInch, USUAL.depth(metres));
        assertEquals(toHalfInch, USUAL.depthToHalfInch(metres));
    }

    @Test
    void depthInMetricUnits() {
        assertEquals(
                "168 cm", at(Units.Depth.CENTIMETRES, Units.Distance.METRES).depth(1.6764));
        assertEquals("1.68 m", at(Units.Depth.METRES, Units.Distance.METRES).depth(1.6764));
        assertEquals("1.70 m", at(Units.Depth.METRES, Units.Distance.METRES).depth(1.7));
        assertEquals("0 cm", at(Units.Depth.CENTIMETRES, Units.Distance.METRES).depth(-0.001));
    }

    @ParameterizedTest
    @CsvSource({
        "10.5, section 6 + 0.5 m (10.5 m), 34 ft 5 in (10.5 m), 10.5 m",
        "10, section 6 (10.0 m), 32 ft 10 in (10.0 m), 10.0 m",
        "9.97, section 6 (10.0 m), 32 ft 9 in (10.0 m), 10.0 m",
        "11.4, section 6 + 1.4 m (11.4 m), 37 ft 5 in (11.4 m), 11.4 m",
        "1.5, section 1 - 1.1 m (1.5 m), 4 ft 11 in (1.5 m), 1.5 m",
        "16, section 10 (16.0 m), 52 ft 6 in (16.0 m), 16.0 m"
    })
    void distances(double metres, String sections, String feet, String plain) {
        assertEquals(sections, USUAL.distance(metres));
        assertEquals(feet, at(Units.Depth.FEET, Units.Distance.FEET).distance(metres));
        assertEquals(plain, at(Units.Depth.FEET, Units.Distance.METRES).distance(metres));
    }

    @ParameterizedTest
    @CsvSource({
        "-20, 20° left, 11:20",
        "20, 20° right, 12:40",
        "0.4, straight out, 12:00",
        "-0.4, straight out, 12:00",
        "-1.3, 1° left, 11:55",
        "90, 90° right, 3:00",
        "-90, 90° left, 9:00",
        "30, 30° right, 1:00",
        "180, 180° right, 6:00"
    })
    void directions(double degrees, String words, String clock) {
        assertEquals(words, USUAL.direction(degrees));
        assertEquals(clock, USUAL.clock(degrees));
    }

    @Test
    void theAimIsTheNearestMark() {
        // sight lines through these points of the bank 13 m out; leaning post stands at x = -2, white pipe at 3
        assertEquals("0.8 m left of leaning post", USUAL.aim(new Place(-2.8, 13)));
        assertEquals("0.8 m left of leaning post", USUAL.aim(new Place(-1.4, 6.5)));
        assertEquals("1.0 m right of leaning post", USUAL.aim(new Place(-1, 13)));
        assertEquals("1.0 m left of white pipe", USUAL.aim(new Place(2, 13)));
        assertEquals("at white pipe", USUAL.aim(new Place(1.5, 6.5)));
    }

    @Test
    void withoutAMarkNearbyTheAimIsAClockTime() {
        assertEquals("towards 9:20", USUAL.aim(Place.polar(5, -80)));
        assertEquals("towards 11:20", Quantities.of(Peg.EMPTY).aim(Place.polar(11, -20)));
    }

    @Test
    void withoutAFarBankTheAimIsSquareToTheMark() {
        Quantities pond = Quantities.of(Peg.EMPTY.withMarks(java.util.List.of(Pegs.mark("gate", 0, 40))));

        assertEquals("2.0 m right of gate", pond.aim(new Place(0.5, 10)));
    }

    @Test
    void theWordsOfAnAimCanBeTypedBack() throws NotationException {
        Line line = Notation.of(Pegs.TANSY).parse("10 @leaning post-0.8 5'");
        Place there = ((Line.ReadingLine) line).reading().place();

        assertEquals("0.8 m left of leaning post", USUAL.aim(there));
    }

    @ParameterizedTest
    @CsvSource({"0.0191, ¾ in", "0.0125, ½ in", "0.006, ¼ in", "0.0254, 1 in", "0.1207, 4¾ in", "0.3112, 1 ft ¼ in"})
    void smallDepthsToTheQuarterInch(double metres, String words) {
        assertEquals(words, USUAL.depthToQuarterInch(metres));
    }

    @Test
    void aPlaceIsDistanceDirectionClockAndAim() {
        Peg peg = Peg.EMPTY.withMarks(java.util.List.of(Pegs.mark("white pipe", 0, 11.5)));

        assertEquals(
                "section 6 (10.0 m), straight out (12:00), at white pipe",
                Quantities.of(peg).place(Place.polar(10, 0)));
    }

    @Test
    void whereNoMarkIsNearAPlaceHasNoAim() {
        assertEquals("section 6 (10.0 m), 80° left (9:20)", USUAL.place(Place.polar(10, -80)));
    }
}
