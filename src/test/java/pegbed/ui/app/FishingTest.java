package pegbed.ui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.ImageView;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pegbed.model.DayEvent;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.session.VisitedPegs;

/** The day's log by taps. */
@Tag("slow")
class FishingTest extends InScenes {
    @BeforeEach
    void open() throws Exception {
        Peg peg = VisitedPegs.dugOut();
        // An hour into the latest visit.
        scenes.clock =
                Clock.fixed(peg.today().start().orElseThrow().plusHours(1).toInstant(), ZoneOffset.UTC);
        scenes.open(peg);
        scenes.waitForAnswers();
        scenes.waitUntil(() -> !scenes.desk().plan().lines().isEmpty());
        scenes.tab("tab-fishing");
    }

    private List<DayEvent> log() {
        return scenes.peg().today().day().events();
    }

    private String said() {
        return scenes.<Label>find("#fishing-said").getText();
    }

    @Test
    void aTapNotesAFishAndIsTickedOnceItIsKept() {
        Place second = scenes.desk().plan().lines().get(1).place();
        scenes.click("#fishing-start-2");
        scenes.click("#fishing-fish-2");
        assertEquals(
                List.of(DayEvent.Kind.START, DayEvent.Kind.FISH),
                log().stream().map(DayEvent::kind).toList());
        assertEquals(second, log().get(0).line().orElseThrow());
        scenes.waitUntil(() -> said().startsWith("✓") && said().endsWith("line 2: fish"));
        assertEquals(scenes.desk().session().revision(), scenes.desk().session().keptRevision());
        assertTrue(scenes.<Button>find("#fishing-start-2").isDisabled());
        assertTrue(scenes.<Label>find("#fishing-state-2").getText().startsWith("Fished now"));
        scenes.on(() -> scenes.desk().session().undo());
        assertEquals(1, log().size());
        assertEquals("", said());
    }

    @Test
    void feedIsThatOfTheLastTime() {
        TextField typed = scenes.find("#fishing-typed");
        scenes.on(() -> {
            typed.setText("line 1 feed pellets, pinch");
            typed.getOnAction().handle(null);
        });
        assertEquals("", typed.getText());
        scenes.click("#fishing-feed-2");
        assertEquals("pellets", log().get(1).name());
        assertEquals("pinch", log().get(1).amount());
    }

    @Test
    void theKindThatIsPressedIsNotedAndTheDayIsDrawn() {
        assertTrue(scenes.<Node>find("#fishing-strip").getBoundsInLocal().getWidth() == 0, "nothing was noted yet");
        TextField typed = scenes.find("#fishing-typed");
        scenes.on(() -> {
            typed.setText("line 1 fish F1");
            typed.getOnAction().handle(null);
            typed.setText("line 1 fish roach");
            typed.getOnAction().handle(null);
        });
        assertEquals("roach", scenes.<ToggleButton>find("#fishing-kind-1").getText(), "the latest first");
        scenes.click("#fishing-kind-2");
        scenes.click("#fishing-fish-2");
        assertEquals("F1", log().get(2).name());
        scenes.click("#fishing-kind-2");
        scenes.click("#fishing-fish-2");
        assertEquals("", log().get(3).name());
        scenes.waitUntil(() -> scenes.<ImageView>find("#fishing-strip").getImage() != null);
    }

    @Test
    void whatCanNotBeReadStaysAndIsTold() {
        TextField typed = scenes.find("#fishing-typed");
        scenes.on(() -> {
            typed.setText("line 9 fish");
            typed.getOnAction().handle(null);
        });
        assertEquals("line 9 fish", typed.getText());
        assertTrue(said().startsWith("There is no line 9"), said());
        assertTrue(log().isEmpty());
    }

    @Test
    void theLargeButtonViewHasTheSameTaps() {
        scenes.on(() -> scenes.frame().toBankside());
        scenes.click("#bank-lines");
        scenes.waitUntil(() -> scenes.there("#bank-fishing-fish-1"));
        scenes.click("#bank-fishing-fish-1");
        assertEquals(1, log().size());
        assertTrue(scenes.<Button>find("#bank-fishing-fish-1").getMinHeight() >= 52);
    }
}
