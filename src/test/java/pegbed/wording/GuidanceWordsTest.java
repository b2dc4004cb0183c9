package pegbed.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pegbed.findings.InventedWater;
import pegbed.findings.Zone;
import pegbed.guidance.CheckAnswer;
import pegbed.guidance.Guidance;
import pegbed.guidance.NextReading;
import pegbed.guidance.Reason;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;

class GuidanceWordsTest {
    private static final GuidanceWords WORDS = GuidanceWords.of(Peg.EMPTY);

    private static NextReading next(Reason reason, boolean stop) {
        return new NextReading(Place.polar(10, 0), NextReading.Purpose.MAP, reason, Double.NaN, stop);
    }

    private static String why(Reason reason) {
        return WORDS.why(next(reason, false));
    }

    @Test
    void reasonsAreOneSentence() throws InputException {
        Peg peg = InventedWater.cut();
        for (int i = 0; i < 18; i++) {
            NextReading next = Guidance.next(InventedWater.map(peg));
            String why = GuidanceWords.of(peg).why(next);
            assertTrue(why.matches("[A-Z].*[^.]\\."), why);
            peg = peg.withReading(InventedWater.read(next.place(), InventedWater::cutDepth));
        }
    }

    @Test
    void everyQuestionOfTheOpeningHasItsOwnSentence() {
        Set<String> sentences = new HashSet<>();
        for (Reason.OpeningQuestion question : Reason.OpeningQuestion.values()) {
            assertTrue(sentences.add(why(new Reason.OpeningPlace(question))), question.name());
        }
    }

    @Test
    void figuresStandInThePersonsUnits() {
        assertEquals(
                "It would fill the map where it is least known: the nearest reading is 2.3 m away.",
                why(new Reason.FillsGap(2.31)));
        assertEquals(
                "It would settle whether it is deeper here than at section 6 (10.0 m), 20° left, the deepest so far.",
                why(new Reason.DeeperThan(Place.polar(10, -20))));
        assertEquals(
                "It would settle how deep the left margin is, where 2 ft 6 in is sought.",
                why(new Reason.FlatSpotSought(Reason.FlatQuestion.DEPTH, Zone.LEFT_MARGIN, true, 0.762)));
    }

    @Test
    void aLedgeAcrossIsNamedOnlyWhereThereIsAFarBank() {
        assertTrue(why(new Reason.FlatSpotSought(Reason.FlatQuestion.SLOPE, Zone.ACROSS, true, 0.8))
                .contains("the ledge across"));
        assertTrue(why(new Reason.FlatSpotSought(Reason.FlatQuestion.SLOPE, Zone.ACROSS, false, 0.8))
                .contains("the bottom further out"));
    }

    @Test
    void aLineSaysWhetherMoreIsNeeded() {
        assertEquals(
                "Next: section 6 (10.0 m), straight out (12:00). It would settle how deep the deepest spot is.",
                WORDS.line(next(new Reason.DepthOfDeepest(), false)));
        assertTrue(WORDS.line(next(new Reason.SurestMap(), true)).startsWith("Enough, another reading would hardly"));
    }

    private static CheckAnswer answer(CheckAnswer.Verdict verdict, double offset, double... differences) {
        return new CheckAnswer(
                verdict,
                offset,
                java.util.Arrays.stream(differences)
                        .mapToObj(metres -> new CheckAnswer.Difference(metres, 0.05, 0))
                        .toList());
    }

    @Test
    void checkReadingsThatAgree() {
        String words = WORDS.answer(answer(CheckAnswer.Verdict.AGREES, 0, 0.0254, -0.0508));
        assertEquals(
                "The check readings agree with the map: they are 1 in deeper and 2 in shallower, where up to 4 in was to"
                        + " be expected.",
                words);
        assertFalse(words.contains("wrong"));
    }

    @Test
    void checkReadingsThatNothingExplains() {
        String words = WORDS.answer(answer(CheckAnswer.Verdict.ROUGHER, 0, 0.3, -0.3));
        assertTrue(words.contains("1 ft deeper and 1 ft shallower, where up to 4 in was"), words);
    }

    @Test
    void wrongDistancesAndLevelsAreNamedWithTheirSide() {
        assertTrue(
                WORDS.answer(answer(CheckAnswer.Verdict.DISTANCES_WRONG, 0.5)).contains("about 0.5 m too long"));
        assertTrue(
                WORDS.answer(answer(CheckAnswer.Verdict.DISTANCES_WRONG, -0.5)).contains("about 0.5 m too short"));
        assertTrue(WORDS.answer(answer(CheckAnswer.Verdict.LEVEL_WRONG, 0.1)).contains("has risen"));
        assertTrue(WORDS.answer(answer(CheckAnswer.Verdict.LEVEL_WRONG, -0.1)).contains("has fallen"));
    }

    @Test
    void theLevelOfTheDayIsGivenWithWhatIsExpected() {
        assertEquals(
                "It tells how high the water stands today: about 5 ft expected, and with it the level is known to ¾ in.",
                why(new Reason.LevelOfDay(5 * 0.3048, 0.019)));
    }
}
