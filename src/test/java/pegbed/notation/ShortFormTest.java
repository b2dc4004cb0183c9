package pegbed.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbed.model.Pole;
import pegbed.model.Reading;
import pegbed.model.Units;

class ShortFormTest {
    private static ShortForm form(Units.Depth depth, Units.Distance distance, char decimalSign) {
        return new ShortForm(new Units(depth, distance), Pole.USUAL, decimalSign);
    }

    @ParameterizedTest
    @CsvSource({
        "10.5, s6+0.5, 10.5m, 34.45ft",
        "10, s6, 10m, 32.81ft",
        "9.996, s6, 10m, 32.8ft",
        "11.25, s6+1.25, 11.25m, 36.91ft",
        "1.5, s1-1.1, 1.5m, 4.92ft",
        "0, s1-2.6, 0m, 0ft",
        "17, s10+1, 17m, 55.77ft"
    })
    void distances(double metres, String sections, String inMetres, String feet) {
        assertEquals(
                sections, form(Units.Depth.FEET, Units.Distance.SECTIONS, '.').printDistance(metres));
        assertEquals(
                inMetres, form(Units.Depth.FEET, Units.Distance.METRES, '.').printDistance(metres));
        assertEquals(feet, form(Units.Depth.FEET, Units.Distance.FEET, '.').printDistance(metres));
    }

    @ParameterizedTest
    @CsvSource({
        "1.6764, 5'6, 167.6cm, 1.676m",
        "1.6891, 5'6.5, 168.9cm, 1.689m",
        "1.524, 5'0, 152.4cm, 1.524m",
        "0.2286, 9in, 22.9cm, 0.229m",
        "0, 0in, 0cm, 0m",
        "0.3047, 1'0, 30.5cm, 0.305m"
    })
    void depths(double metres, String feet, String centimetres, String inMetres) {
        assertEquals(feet, form(Units.Depth.FEET, Units.Distance.METRES, '.').printDepth(metres));
        assertEquals(
                centimetres,
                form(Units.Depth.CENTIMETRES, Units.Distance.METRES, '.').printDepth(metres));
        assertEquals(
                inMetres, form(Units.Depth.METRES, Units.Distance.METRES, '.').printDepth(metres));
    }

    @ParameterizedTest
    @CsvSource({"-20, 20L", "20, 20R", "12.46, 12.5R", "0, 0", "-0.04, 0", "-0.06, 0.1L"})
    void directions(double degrees, String typed) {
        assertEquals(typed, form(Units.Depth.FEET, Units.Distance.METRES, '.').printDirection(degrees));
    }

    @Test
    void aCommaWhereOneIsWanted() {
        ShortForm comma = form(Units.Depth.METRES, Units.Distance.SECTIONS, ',');

        assertEquals("s6+0,5", comma.printDistance(10.5));
        assertEquals("12,5L", comma.printDirection(-12.5));
        assertEquals("1,68m", comma.printDepth(1.68));
        assertThrows(IllegalArgumentException.class, () -> form(Units.Depth.METRES, Units.Distance.METRES, ';'));
    }

    @Test
    void aWholeReadingIsPrintedAsItWasTyped() throws NotationException {
        Notation notation = Notation.of(Pegs.TANSY);
        ShortForm form = form(Units.Depth.FEET, Units.Distance.SECTIONS, '.');

        assertEquals(
                "36ft @post+1 5ft 6in silt soft patch",
                form.printReading(NotationTest.reading(notation, "36ft  @post+1; 5 ft 6 in silt, soft patch")));
        assertEquals("11 20L 5'6", form.printReading(NotationTest.reading(notation, "11 20L 5'6")));
        assertEquals("11 20L 5'6 unknown carp", form.printReading(NotationTest.reading(notation, "11 20L 5'6 carp")));
        assertEquals("s6+1 20L 5'6", form.printReading(Reading.of(11, -20, 1.6764)));
    }
}
