package pegbed.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import pegbed.day.Lesson;
import pegbed.day.TargetLesson;
import pegbed.findings.Zone;
import pegbed.model.Peg;

class LessonWordsTest {
    private final LessonWords words = LessonWords.of(Peg.EMPTY);

    @Test
    void theTargetThatDidBest() {
        String sentence = words.target(new TargetLesson(0.762, 4, 5), 0.838);
        assertEquals("2 ft 6 in did best in 4 of 5 visits (half the deepest is 2 ft 9 in).", sentence);
    }

    @Test
    void whatABandGave() {
        Lesson<Integer> lesson = new Lesson<>(10, 5, 6.5, 78, 12, Double.NaN, 4, 3);
        assertEquals("about 2 ft 6 in deep", words.depthBand(10, 0.0762));
        assertEquals("12.0 fish an hour (78 in 6.5 h)", words.fish(lesson));
        assertTrue(words.weight(lesson).isEmpty());
        assertEquals("best in 3 of 4", LessonWords.best(lesson).orElseThrow());
        assertEquals("5 visits", LessonWords.visits(lesson));
    }

    @Test
    void withoutAFarBankThereIsNoAcross() {
        assertEquals("further out", words.part(Zone.ACROSS));
        assertEquals("left margin", words.part(Zone.LEFT_MARGIN));
    }
}
