package pegbed.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import pegbed.model.DayEvent.Kind;

class LookAheadTest {
    private static DayModel model(Logs log, int now) {
        return DayModel.of(log.lines(now), RatePrior.VAGUE);
    }

    private static Logs oneLine() {
        return Logs.morning().at(0, Kind.START, Logs.FIRST).every(5, 3, 60, Logs.FIRST);
    }

    @Test
    void withTheChoicePassedItIsTheLinesOwnFish() {
        DayModel model = model(oneLine(), 60);
        LookAhead look = new LookAhead(model, 0, 30, 30, 3);
        assertEquals(model.ahead(0, 30, 0).mean(), look.fish(0), 0.01 * look.fish(0));
        assertEquals(model.ahead(1, 30, 3).mean(), look.fish(1), 0.03 * look.fish(1));
    }

    @Test
    void aChoiceIsNeverWorthLessThanStaying() {
        DayModel model = model(oneLine(), 60);
        LookAhead look = new LookAhead(model, 0, 10, 30, 3);
        for (int line = 0; line < 3; line++) {
            assertTrue(look.fish(line)
                    > 0.99 * model.ahead(line, 30, line == 0 ? 0 : 3).mean());
        }
    }

    @Test
    void aTrialThatGoesBadlyIsLeft() {
        DayModel model = model(oneLine(), 60);
        double trial = new LookAhead(model, 0, 10, 30, 3).fish(1);
        double withoutChoice = new LookAhead(model, 0, 30, 30, 3).fish(1);
        assertTrue(trial > 1.03 * withoutChoice, trial + " " + withoutChoice);
    }

    @Test
    void aDearChangeLeavesNothingAfterTheTrial() {
        LookAhead look = new LookAhead(model(oneLine(), 60), 0, 10, 30, 30);
        assertEquals(0, look.fish(1), 1e-9);
        assertTrue(look.fish(0) > 1);
    }
}
