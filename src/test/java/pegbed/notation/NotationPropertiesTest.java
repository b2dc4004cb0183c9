package pegbed.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import pegbed.model.Bottom;
import pegbed.model.Extras;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Precision;
import pegbed.model.Reading;
import pegbed.model.Typed;
import pegbed.model.Units;
import pegbed.wording.Quantities;
import pegbed.wording.TypedLineWords;

class NotationPropertiesTest {
    private static final Notation NOTATION = Notation.of(Pegs.TANSY);
    private static final TypedLineWords WORDS = TypedLineWords.of(Pegs.TANSY);

    /** Half of the last printed digit, with a little for arithmetic. */
    private static double half(double lastDigit) {
        return lastDigit / 2 + 1e-9;
    }

    @Property
    void whatIsPrintedIsReadBack(
            @ForAll @DoubleRange(min = 0, max = 30) double distanceMetres,
            @ForAll @DoubleRange(min = -180, max = 180) double angleDegrees,
            @ForAll @DoubleRange(min = 0, max = 29.99) double depthMetres,
            @ForAll Units.Depth depth,
            @ForAll Units.Distance distance,
            @ForAll boolean comma)
            throws NotationException {
        Peg peg = Pegs.with(Pegs.TANSY, depth, distance);
        ShortForm form = new ShortForm(peg.units(), peg.pole(), comma ? ',' : '.');
        String typedDistance = form.printDistance(distanceMetres);
        String typedDirection = form.printDirection(angleDegrees);
        String typedDepth = form.printDepth(depthMetres);

        Reading read = NotationTest.reading(
                Notation.of(peg), typedDistance + " " + typedDirection + " " + typedDepth + " clay, hard");

        assertEquals(new Typed(typedDistance, typedDirection, typedDepth), read.typed());
        assertEquals(distanceMetres, read.place().distanceMetres(), half(0.01));
        if (read.place().distanceMetres() > 0) {
            double turn = Sights.halfTurn(read.place().angleDegrees() - angleDegrees);
            assertEquals(0, turn, half(0.1));
        }
        double lastDigit = switch (depth) {
            case FEET -> 0.1 * FeetAndInches.INCH_METRES;
            case CENTIMETRES, METRES -> 0.001;
        };
        assertEquals(depthMetres, read.depthMetres(), half(lastDigit));
        assertEquals("hard", read.note());
        assertEquals(typedDepth, form.printDepth(read.depthMetres()));
        assertEquals(typedDistance, form.printDistance(read.place().distanceMetres()));
        assertFalse((typedDistance + typedDirection + typedDepth).contains(comma ? "." : ","));
    }

    @Property
    void aReadingPrintedWholeIsReadBack(
            @ForAll("pieces") List<String> pieces, @ForAll Bottom bottom, @ForAll("notes") String note)
            throws NotationException {
        Reading first = NotationTest.reading(NOTATION, String.join(" ", pieces));
        Reading reading = new Reading(
                first.typed(),
                first.place(),
                first.precision(),
                first.depthMetres(),
                bottom,
                note,
                Optional.empty(),
                Extras.NONE);
        ShortForm form = new ShortForm(Units.USUAL, Pegs.TANSY.pole(), '.');

        Reading again = NotationTest.reading(NOTATION, form.printReading(reading));

        assertEquals(first.place(), again.place());
        assertEquals(first.precision(), again.precision());
        assertEquals(first.depthMetres(), again.depthMetres());
        assertEquals(bottom, again.bottom());
        assertEquals(note, again.note());
    }

    @Property
    void aReadingFromNumbersIsPrintedToo(
            @ForAll @DoubleRange(min = 0.1, max = 16) double distanceMetres,
            @ForAll @DoubleRange(min = 0, max = 5) double depthMetres)
            throws NotationException {
        Reading reading = Reading.of(distanceMetres, 12, depthMetres);

        Reading again = NotationTest.reading(
                NOTATION, new ShortForm(Units.USUAL, Pegs.TANSY.pole(), ',').printReading(reading));

        assertEquals(distanceMetres, again.place().distanceMetres(), half(0.01));
        assertEquals(depthMetres, again.depthMetres(), half(0.1 * FeetAndInches.INCH_METRES));
        assertEquals("", again.note());
    }

    @Property
    void leftMirrorsRight(
            @ForAll @IntRange(min = 0, max = 90) int degrees,
            @ForAll @DoubleRange(min = 0, max = 6) double metres,
            @ForAll("marks") String mark)
            throws NotationException {
        Notation mirrored = Notation.of(Pegs.mirrored(BENT));
        Notation notation = Notation.of(BENT);
        String offset = Numbers.print(metres, 0, 2);

        assertMirrored(place(notation, degrees + "L"), place(notation, degrees + "R"));
        assertMirrored(place(notation, "-" + degrees), place(notation, "" + degrees));
        assertMirrored(place(notation, Clock.print(-degrees, 1)), place(notation, Clock.print(degrees, 1)));
        assertMirrored(place(notation, mark), place(mirrored, mark));
        assertMirrored(place(notation, mark + "+" + offset), place(mirrored, mark + "-" + offset));
        assertMirrored(place(notation, mark + "-" + offset), place(mirrored, mark + "+" + offset));
        assertMirrored(place(notation, mark + "-" + offset + "deg"), place(mirrored, mark + "+" + offset + "deg"));
        assertEquals(
                mirrorWords(Quantities.of(BENT).aim(place(notation, degrees + "L"))),
                Quantities.of(Pegs.mirrored(BENT)).aim(place(mirrored, degrees + "R")));
    }

    private static final Peg BENT = Pegs.TANSY.withBanks(Pegs.far(-12, 11, -6, 13, 0, 12.5, 5, 14, 11, 10));

    private static Place place(Notation notation, String direction) throws NotationException {
        return NotationTest.reading(notation, "11 " + direction + " 5'").place();
    }

    private static void assertMirrored(Place left, Place right) {
        assertEquals(left.xMetres(), -right.xMetres(), 1e-9);
        assertEquals(left.yMetres(), right.yMetres(), 1e-9);
    }

    private static String mirrorWords(String aim) {
        if (aim.startsWith("towards ")) {
            int colon = aim.indexOf(':');
            int hour = Integer.parseInt(aim.substring(8, colon));
            int minute = Integer.parseInt(aim.substring(colon + 1));
            return "towards " + Clock.print(-Clock.angleDegrees(hour, minute), 5);
        }
        return aim.contains(" left of ")
                ? aim.replace(" left of ", " right of ")
                : aim.replace(" right of ", " left of ");
    }

    @Property(tries = 2000)
    void garbageIsRefusedInOneSentence(@ForAll String garbage) {
        assertReadOrRefused(garbage);
    }

    @Property(tries = 2000)
    void nearlyRightLinesAreReadOrRefusedInOneSentence(@ForAll("nearlyRight") String typed) {
        assertReadOrRefused(typed);
    }

    /** Whatever is typed is either understood, with a finite place and words, or refused by name. */
    private static void assertReadOrRefused(String typed) {
        try {
            Line line = NOTATION.parse(typed);
            assertFalse(WORDS.understood(line).isBlank());
            if (line instanceof Line.ReadingLine reading) {
                Precision precision = reading.reading().precision();
                assertTrue(precision.sdAngleDegrees() > 0 && precision.sdDistanceMetres() > 0);
                assertTrue(typed.contains(reading.reading().typed().depth()));
                assertTrue(typed.contains(reading.reading().note()));
            }
        } catch (NotationException refusal) {
            assertTrue(typed.contains(refusal.piece()), refusal.getMessage());
            assertTrue(
                    refusal.piece().isEmpty()
                            ? refusal.getMessage().contains(" is missing")
                            : refusal.getMessage().contains(NotationException.quoted(refusal.piece())),
                    refusal.getMessage());
            assertTrue(refusal.getMessage().endsWith("."), refusal.getMessage());
            assertTrue(refusal.getMessage().contains("like "), refusal.getMessage());
            assertFalse(refusal.getMessage().contains("\n"), refusal.getMessage());
        }
    }

    @Provide
    Arbitrary<String> marks() {
        return Arbitraries.of("@gate", "@leaning post", "@pipe", "@split");
    }

    @Provide
    Arbitrary<String> notes() {
        return Arbitraries.of(
                "", "soft", "3 carp", "12", "silt over clay", "in the reeds", "by the ash; deep", "½ way");
    }

    @Provide
    Arbitrary<List<String>> pieces() {
        Arbitrary<String> distance = Arbitraries.of("11", "11,5m", "36ft", "36'", "s6", "s6+0.5", "s6 - .5", "11 m");
        Arbitrary<String> direction = Arbitraries.of(
                "0", "-20", "20L", "20° right", "11:30", "@post", "@leaning post+1", "@pipe - 0,5", "@gate+3deg");
        Arbitrary<String> depth = Arbitraries.of(
                "5'6",
                "5’ 6”",
                "5ft6",
                "5 ft 6 in",
                "66 in",
                "5.5ft",
                "168 cm",
                "1,68m",
                "5",
                "5' 6",
                "5'6 1/2",
                "5'6½",
                "5'");
        return Combinators.combine(distance, direction, depth).as(List::of);
    }

    @Provide
    Arbitrary<String> nearlyRight() {
        Arbitrary<String> right = Combinators.combine(
                        Arbitraries.of("", "", "edge ", "snag "),
                        pieces(),
                        Arbitraries.of("", " silt", ";weed;soft", "\tsome note", " 3"))
                .as((word, pieces, rest) -> word + String.join(" ", pieces) + rest);
        Arbitrary<Character> odd = Arbitraries.of(
                ' ', ';', ',', '.', ':', '@', '+', '-', '\'', '"', '°', '½', '/', '0', '9', 's', 'L', 'm', 'i', '\t',
                '\u00A0', '\n', '\u0000', 'é', '\uD83D');
        Arbitrary<List<Integer>> places =
                Arbitraries.integers().between(0, 40).list().ofSize(4);
        return Combinators.combine(
                        right,
                        places,
                        odd.list().ofSize(3),
                        Arbitraries.integers().between(0, 4))
                .as((line, at, letters, times) -> mutated(line, at, letters, times));
    }

    private static String mutated(String line, List<Integer> at, List<Character> letters, int times) {
        StringBuilder text = new StringBuilder(line);
        for (int i = 0; i < times; i++) {
            int place = at.get(i) % text.length();
            if (i < letters.size()) {
                text.insert(place, letters.get(i).charValue());
            }
            if (i % 2 == 1) {
                text.deleteCharAt(at.get(i - 1) % text.length());
            }
        }
        return text.toString();
    }
}
