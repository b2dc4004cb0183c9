package pegbed.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.model.BankPoint;
import pegbed.model.Bottom;
import pegbed.model.Hazard;
import pegbed.model.Peg;
import pegbed.model.Precision;
import pegbed.model.Reading;
import pegbed.model.Typed;
import pegbed.model.Units;

class NotationTest {
    private static final Notation NOTATION = Notation.of(Pegs.TANSY);

    static Reading reading(Notation notation, String typed) throws NotationException {
        return assertInstanceOf(Line.ReadingLine.class, notation.parse(typed)).reading();
    }

    private static Reading reading(String typed) throws NotationException {
        return reading(NOTATION, typed);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '#',
            value = {
                "11|11",
                "11m|11",
                "11 m|11",
                "11,5|11.5",
                "11.5 metres|11.5",
                "1100cm|11",
                ".5|0.5",
                "0|0",
                "36ft|10.9728",
                "36 ft|10.9728",
                "36'|10.9728",
                "36’|10.9728",
                "36'6|11.1252",
                "s1|2.6",
                "S6|10",
                "s 6|10",
                "section 6|10",
                "s6+0.5|10.5",
                "s6-0,5|9.5",
                "s6 + 0.5|10.5",
                "s6 - 0.5|9.5",
                "s6+ 0.5|10.5",
                "s6+1ft|10.3048",
                "s6+50cm|10.5",
                "s10|16",
                "s10+2|18",
                "100|100"
            })
    void distances(String typed, double metres) throws NotationException {
        Reading reading = reading(typed + " 20L 4'6 silt");

        assertEquals(metres, reading.place().distanceMetres(), 1e-9);
        assertEquals(-20, reading.place().angleDegrees(), metres == 0 ? 20 : 1e-9);
        assertEquals(new Typed(typed, "20L", "4'6"), reading.typed());
    }

    // 1 ft = 0.3048 m exactly, 1 in = 25.4 mm exactly (international agreement of 1959)
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '#',
            value = {
                "5'6|1.6764",
                "5'6\"|1.6764",
                "5' 6\"|1.6764",
                "5'6''|1.6764",
                "5’6”|1.6764",
                "5′6″|1.6764",
                "5′ 6″|1.6764",
                "5ft6|1.6764",
                "5ft6in|1.6764",
                "5ft 6in|1.6764",
                "5 ft 6 in|1.6764",
                "5 FT 6 IN|1.6764",
                "5 feet 6 inches|1.6764",
                "5ft. 6in.|1.6764",
                "5' 6|1.6764",
                "5 ft 6|1.6764",
                "66in|1.6764",
                "66\"|1.6764",
                "66''|1.6764",
                "66 in|1.6764",
                "5.5ft|1.6764",
                "5,5ft|1.6764",
                "5½ft|1.6764",
                "5.5'|1.6764",
                "5½'|1.6764",
                "5'|1.524",
                "5'0|1.524",
                "5'6.5|1.6891",
                "5'6,5|1.6891",
                "5'6½|1.6891",
                "5'6½\"|1.6891",
                "5'6 1/2|1.6891",
                "5'6 1/2\"|1.6891",
                "5' 6 ½|1.6891",
                "5'½|1.5367",
                "5'6¼|1.68275",
                "168cm|1.68",
                "168 cm|1.68",
                "168,5cm|1.685",
                "1680mm|1.68",
                "1.68m|1.68",
                "1,68m|1.68",
                "1.68 m|1.68",
                "5.5|1.6764",
                "5,5|1.6764",
                "5½|1.6764",
                "0|0",
                "0in|0",
                "30m|30"
            })
    void depths(String typed, double metres) throws NotationException {
        Reading reading = reading("11 20L " + typed);

        assertEquals(metres, reading.depthMetres(), 1e-12);
        assertEquals(typed, reading.typed().depth());
        assertEquals("", reading.note());
        assertEquals(
                OptionalDouble.of(reading.depthMetres()),
                assertInstanceOf(Line.EdgeLine.class, NOTATION.parse("edge 11 20L " + typed))
                        .point()
                        .depthMetres());
    }

    @ParameterizedTest
    @CsvSource({"FEET, 0.6096", "CENTIMETRES, 0.02", "METRES, 2"})
    void aBareDepthIsInThePersonsUnit(Units.Depth unit, double metres) throws NotationException {
        Peg peg = Pegs.with(Pegs.TANSY, unit, Units.Distance.METRES);

        assertEquals(metres, reading(Notation.of(peg), "11 0 2").depthMetres(), 1e-12);
    }

    // Expected angles of marks: atan2(x, 13) of the point meant on the straight bank 13 m out.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0|0|3",
                "-20|-20|3",
                "−20|-20|3",
                "–20|-20|3",
                "20º|20|3",
                "+20|20|3",
                "20|20|3",
                "20L|-20|3",
                "20l|-20|3",
                "20R|20|3",
                "20 L|-20|3",
                "20left|-20|3",
                "20° left|-20|3",
                "20 deg R|20|3",
                "20°|20|3",
                "12.5L|-12.5|3",
                "12,5L|-12.5|3",
                "0L|0|3",
                "110R|110|3",
                "12:00|0|5",
                "11:30|-15|5",
                "11:20|-20|5",
                "12:40|20|5",
                "1:00|30|5",
                "9:00|-90|5",
                "3:00|90|5",
                "@leaning post|-8.7461623|1.5",
                "@Leaning  Post|-8.7461623|1.5",
                "@leaning|-8.7461623|1.5",
                "@post|-8.7461623|1.5",
                "@lea|-8.7461623|1.5",
                "@ post|-8.7461623|1.5",
                "@post+1|-4.3987054|1.5",
                "@post +1|-4.3987054|1.5",
                "@post + 1|-4.3987054|1.5",
                "@post+1m|-4.3987054|1.5",
                "@post-1|-12.9946168|1.5",
                "@leaning post-1,0|-12.9946168|1.5",
                "@post+3deg|-5.7461623|1.5",
                "@post+3°|-5.7461623|1.5",
                "@post-3 deg|-11.7461623|1.5",
                "@ash|24.7751406|1.5"
            })
    void directions(String typed, double degrees, double sdDegrees) throws NotationException {
        Reading reading = reading("s6 " + typed + " 4'6 silt");

        assertEquals(degrees, reading.place().angleDegrees(), 1e-6);
        assertEquals(10, reading.place().distanceMetres(), 1e-9);
        assertEquals(new Precision(0.10, sdDegrees), reading.precision());
        assertEquals(typed, reading.typed().direction());
        assertEquals(Bottom.SILT, reading.bottom());
    }

    @ParameterizedTest
    @CsvSource({"11, 0.15", "11m, 0.15", "36ft, 0.15", "s6, 0.10", "s6+0.5, 0.10"})
    void aJointIsKnownBetterThanAPlainDistance(String typed, double sdMetres) throws NotationException {
        assertEquals(new Precision(sdMetres, 5), reading(typed + " 11:30 5'").precision());
    }

    @Test
    void precisionsAreSettable() throws NotationException {
        Notation own = Notation.of(Pegs.TANSY, new Precisions(1, 2, 4, 0.05, 0.3));

        assertEquals(new Precision(0.05, 1), reading(own, "s6 @post 5'").precision());
        assertEquals(new Precision(0.3, 2), reading(own, "11 20L 5'").precision());
        assertEquals(new Precision(0.3, 4), reading(own, "11 11:30 5'").precision());
        assertThrows(IllegalArgumentException.class, () -> new Precisions(-1, 2, 4, 0.05, 0.3));
        assertThrows(IllegalArgumentException.class, () -> new Precisions(1, 2, 4, 0.05, Double.NaN));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "silt|SILT|''",
                "SILT|SILT|''",
                "silt soft patch|SILT|soft patch",
                "silt, soft; very|SILT|soft; very",
                "weed: thick|WEED|thick",
                "snag|SNAG|''",
                "unknown 3 carp|UNKNOWN|3 carp",
                "3lb carp|UNKNOWN|3lb carp",
                "silty|UNKNOWN|silty",
                "soft silt|UNKNOWN|soft silt",
                "(near the Ash)|UNKNOWN|(near the Ash)",
                "«ça va»|UNKNOWN|«ça va»"
            })
    void bottomAndNote(String typed, Bottom bottom, String note) throws NotationException {
        for (String depth : new String[] {"5'6", "5'", "5", "1.68m"}) {
            Reading reading = reading("11 20L " + depth + " " + typed);

            assertEquals(bottom, reading.bottom());
            assertEquals(note, reading.note());
            assertEquals(depth, reading.typed().depth());
        }
    }

    @Test
    void inchesMayStandApartWhereNothingElseIsMeant() throws NotationException {
        assertEquals(1.6764, reading("11 20L 5' 6 silt deep").depthMetres(), 1e-12);
        assertEquals("deep", reading("11 20L 5' 6 silt deep").note());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "11\t20L\t4'6\tsilt\tsoft patch",
                "  11   20L  4'6   silt   soft patch  ",
                "11\u00A020L\u20094'6\u00A0silt\u202Fsoft patch\u00A0",
                "11;20L;4'6;silt;soft patch",
                "11; 20L; 4'6; silt; soft patch;;",
                "11, 20L, 4'6, silt, soft patch",
                "\uFEFF11 20L 4'6 silt soft patch\r\n",
                ";11 ; 20L ; 4'6 ; silt ; soft patch ;"
            })
    void sloppySpacing(String typed) throws NotationException {
        assertEquals(reading("11 20L 4'6 silt soft patch"), reading(typed));
    }

    @Test
    void edges() throws NotationException {
        BankPoint bare = assertInstanceOf(Line.EdgeLine.class, NOTATION.parse("edge 13 @post"))
                .point();
        BankPoint deep = assertInstanceOf(Line.EdgeLine.class, NOTATION.parse("Edge s8+0.5;-20;1'6"))
                .point();

        assertTrue(bare.depthMetres().isEmpty());
        assertEquals(new Typed("13", "@post", ""), bare.typed());
        assertEquals(13, bare.place().distanceMetres(), 1e-9);
        assertEquals(0.4572, deep.depthMetres().getAsDouble(), 1e-12);
        assertEquals(13.5, deep.place().distanceMetres(), 1e-9);
        assertEquals(new Typed("s8+0.5", "-20", "1'6"), deep.typed());
    }

    @Test
    void snags() throws NotationException {
        Line.SnagLine usual = assertInstanceOf(Line.SnagLine.class, NOTATION.parse("snag 9 20R"));
        Line.SnagLine wide = assertInstanceOf(Line.SnagLine.class, NOTATION.parse("snag 9 20R 3ft old branch"));
        Line.SnagLine told = assertInstanceOf(Line.SnagLine.class, NOTATION.parse("snag 9 20R old branch"));

        assertEquals(Hazard.Kind.SNAG, usual.hazard().kind());
        assertEquals(0.5, usual.hazard().radiusMetres());
        assertTrue(usual.radiusAssumed());
        assertEquals(0.9144, wide.hazard().radiusMetres(), 1e-12);
        assertEquals("old branch", wide.hazard().note());
        assertEquals(new Typed("9", "20R", "3ft"), wide.hazard().typed());
        assertEquals("old branch", told.hazard().note());
        assertTrue(told.radiusAssumed());
        assertEquals(20, told.hazard().outline().get(0).angleDegrees(), 1e-9);
    }

    @Test
    void aReadingBeyondReachIsKept() throws NotationException {
        assertEquals(25, reading("25 0 5'").place().distanceMetres(), 1e-12);
    }
}
