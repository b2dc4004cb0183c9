package pegbed.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbed.model.Mark;
import pegbed.model.Peg;

class NotationErrorsTest {
    private static NotationException refusal(Peg peg, String typed) {
        return assertThrows(NotationException.class, () -> Notation.of(peg).parse(typed), typed);
    }

    /** The line, the piece that fails, and what its sentence must say besides. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '#',
            value = {
                "-11 0 5'|-11|not a distance",
                "NaN 0 5'|NaN|like 11",
                "Infinity 0 5'|Infinity|like 11",
                "1e1 0 5'|1e1|like 11",
                "100.5 0 5'|100.5|between 0 and 100 m",
                "s0 0 5'|s0|which has 10; type one like s6",
                "s11 0 5'|s11|which has 10",
                "s6.5 0 5'|s6.5|like s6+0.5",
                "s6+ 0 5'x|5'x|not a direction",
                "s6+x 0 5'|s6+x|s6+0.5",
                "s1-3 0 5'|s1-3|between 0 and 100 m",
                "20L 11 4'6|20L|not a distance",
                "11,20 4'6 5'|4'6|not a direction",
                "11 4'6 20L|4'6|like 20L",
                "11 -20L 4'6|-20L|twice",
                "11 181 4'6|181|half a turn",
                "11 3:01 4'6|3:01|9:00",
                "11 8:59 4'6|8:59|9:00",
                "11 6:00 4'6|6:00|9:00",
                "11 0:00 4'6|0:00|9:00",
                "11 13:00 4'6|13:00|9:00",
                "11 11:60 4'6|11:60|9:00",
                "11 11:5 4'6|11:5|like 11:30",
                "s7 11.30 2'2|11.30|could be a clock time or degrees; type the time like 11:30, degrees to the right like 11.30R.",
                "s7 1,05 2'2|1,05|type the time like 1:05, degrees to the right like 1.05R.",
                "s7 @gate 1m left 2'2|@gate 1m left|type the place like @gate-1m, or begin the note",
                "s7 @pipe 1/2 right 2'2|@pipe 1/2 right|like @pipe+1/2,",
                "s7 @gate 3 deg to the right 2'2|@gate 3 deg to the right|like @gate+3deg,",
                "@gate 1m left 2'2|@gate 1m left|how far from the seat first, like s6 @gate-1m.",
                "@white pipe 0.5 to the right 2'2|@white pipe 0.5 to the right|first, like s6 @white pipe+0.5.",
                "@Gate 2'2|@Gate|first, like s6 @Gate.",
                "@gate 2'2|@gate|says which way and not how far; type how far from the seat first, like s6 @gate.",
                "@oak+1 2'2|@oak|first, like s6 @oak.",
                "@gate|@gate|first, like s6 @gate.",
                "edge @gate 1m left|@gate 1m left|first, like s6 @gate-1m.",
                "s7 @gate 1m 2'2|1m 2'2|could be two depths, or a place beside the mark; type that like @gate+1m or @gate-1m",
                "s7 @gate 2ft r|@gate 2ft r|like @gate+2ft,",
                "11 4 o'clock 4'6|4 o'clock|9:00",
                "11 @ 4'6|@ 4'6|type one like @gate",
                "11 @oak+1 4'6|@oak|gate, leaning post, white pipe, split ash",
                "11 @post+ 4'6x|@post+ 4'6x|@post+1",
                "11 @leaning post+x 4'6|@leaning post+x|@post+3deg",
                "11 @post+101 4'6|@post+101|100 m",
                "11 @post+91deg 4'6|@post+91deg|90 degrees",
                "11 0 -4'6|-4'6|negative",
                "11 0 −1.2m|−1.2m|negative",
                "11 0 deep|deep|not a depth",
                "11 0 NaN|NaN|not a depth",
                "11 0 5'12|5'12|5'6",
                "11 0 5'6x|5'6x|like 4'6",
                "11 0 5.5'6|5.5'6|like 4'6",
                "11 0 30.01m|30.01m|30 m",
                "11 0 99ft|99ft|30 m",
                "11 0 168|168|read as feet",
                "11 0 5' 6 carp|5' 6|begin the note with a word",
                "11 0 5 6|5 6|5'6",
                "11 0 5 in silt|5 in|66in",
                "edge 11 0 deep|deep|not a depth",
                "edge 11 0 5' reeds|reeds|edge 13 20L 1'6",
                "snag 11 0 1x|1x|radius",
                "snag 11 0 -1|-1|radius",
                "snag 11 0 101|101|100 m at most",
            })
    void theSentenceNamesThePiece(String typed, String piece, String hint) {
        NotationException refusal = refusal(Pegs.TANSY, typed);

        assertEquals(piece, refusal.piece());
        assertTrue(refusal.getMessage().startsWith("\"" + piece + "\" "), refusal.getMessage());
        assertTrue(refusal.getMessage().contains(hint), refusal.getMessage());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '#',
            value = {
                "##|The reading is missing; type a line like 11 20L 4'6 silt.",
                "# ;\t#|The reading is missing; type a line like 11 20L 4'6 silt.",
                "11|The direction is missing after \"11\"; type a line like 11 20L 4'6.",
                "11 @leaning post|The depth is missing after \"11 @leaning post\"; type a line like 11 20L 4'6.",
                "edge|The distance is missing after \"edge\"; type a line like edge 13 20L.",
                "edge 13 ;|The direction is missing after \"edge 13\"; type a line like edge 13 20L.",
                "snag|The distance is missing after \"snag\"; type a line like snag 9 20R 0.5."
            })
    void aMissingPieceIsNamed(String typed, String sentence) {
        NotationException refusal = refusal(Pegs.TANSY, typed);

        assertEquals("", refusal.piece());
        assertEquals(sentence, refusal.getMessage());
    }

    @Test
    void oneLineHoldsOneReading() {
        NotationException refusal = refusal(Pegs.TANSY, "11 20L 4'6\n12 0 5'");

        assertEquals("12 0 5'", refusal.piece());
        assertEquals(
                "One line holds one reading, like 11 20L 4'6; type \"12 0 5'\" on a line of its own.",
                refusal.getMessage());
    }

    @Test
    void aNameThatFitsTwoMarksNamesBoth() throws NotationException {
        List<Mark> marks = new ArrayList<>(Pegs.TANSY.marks());
        marks.add(Pegs.mark("white gate", 9, 13));
        marks.add(Pegs.mark("split", 10, 13));
        Peg peg = Pegs.TANSY.withMarks(marks);

        NotationException refusal = refusal(peg, "11 @white+1 5'");
        assertEquals("@white", refusal.piece());
        assertEquals(
                "\"@white\" could be white pipe or white gate; type more of the name, like @white pipe.",
                refusal.getMessage());

        Notation notation = Notation.of(peg);
        assertEquals(atan(9), angle(notation, "11 @white g 5'"), 1e-9);
        assertEquals(atan(-7), angle(notation, "11 @gate 5'"), 1e-9, "a whole name wins over a word");
        assertEquals(atan(10), angle(notation, "11 @split 5'"), 1e-9, "a whole name wins over a beginning");
        assertEquals(atan(6), angle(notation, "11 @split ash 5'"), 1e-9, "the longest name wins");
    }

    @Test
    void oddMarkNames() throws NotationException {
        Peg peg = Pegs.TANSY.withMarks(List.of(
                Pegs.mark("gate", 0, 13),
                Pegs.mark("Gate 2", 1, 13),
                Pegs.mark("farmer’s no-fishing sign", 2, 13),
                Pegs.mark("post +1", 3, 13),
                Pegs.mark("(a.b)*", 4, 13)));
        Notation notation = Notation.of(peg);

        assertEquals(atan(1), angle(notation, "11 @gate 2 5'"), 1e-9);
        assertEquals(atan(0), angle(notation, "11 @gate 5'"), 1e-9);
        assertEquals(atan(2), angle(notation, "11 @farmer's no-fishing sign 5'"), 1e-9);
        assertEquals(atan(2.5), angle(notation, "11 @no-fishing+.5 5'"), 1e-9);
        assertEquals(atan(3), angle(notation, "11 @post +1 5'"), 1e-9);
        assertEquals(atan(5), angle(notation, "11 @(a.b)*+1 5'"), 1e-9);
    }

    @Test
    void withoutMarksTheSentenceSaysSo() {
        assertEquals(
                "\"@post\" names a mark, but this peg has none yet; type degrees like 20L or a clock time like 11:30.",
                refusal(Peg.EMPTY, "11 @post 5'").getMessage());
    }

    @Test
    void aVeryLongPieceIsCutInTheSentenceAlone() {
        String piece = "x".repeat(100_000);
        NotationException refusal = refusal(Pegs.TANSY, piece + " 0 5'");

        assertEquals(piece, refusal.piece());
        assertTrue(refusal.getMessage().length() < 200);
    }

    @Test
    void hugeLinesAreReadOrRefusedLikeAnyOther() throws NotationException {
        int many = 300_000;
        Notation notation = Notation.of(Pegs.TANSY);

        assertEquals(
                "9".repeat(many),
                refusal(Pegs.TANSY, "9".repeat(many) + " 0 5'").piece());
        assertEquals(
                "9".repeat(many) + "'6",
                refusal(Pegs.TANSY, "11 0 " + "9".repeat(many) + "'6").piece());
        assertEquals(
                "@a" + "-a".repeat(many),
                refusal(Pegs.TANSY, "11 @a" + "-a".repeat(many) + " 5'").piece());
        assertEquals(
                many,
                NotationTest.reading(notation, "11 0 5'6 " + "x".repeat(many))
                        .note()
                        .length());
        assertEquals(
                "x",
                NotationTest.reading(notation, "11 0 5'6" + " ;".repeat(many) + "x")
                        .note());
    }

    private static double angle(Notation notation, String typed) throws NotationException {
        return NotationTest.reading(notation, typed).place().angleDegrees();
    }

    private static double atan(double xMetres) {
        return Math.toDegrees(Math.atan2(xMetres, 13));
    }
}
