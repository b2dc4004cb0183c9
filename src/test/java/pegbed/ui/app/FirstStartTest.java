package pegbed.ui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pegbed.findings.PegMap;
import pegbed.model.Place;
import pegbed.notation.Line;
import pegbed.notation.Notation;
import pegbed.session.Answer;

/** The first start, as somebody meets it who has never seen the program. */
@Tag("window")
class FirstStartTest extends InScenes {
    /** Before the first reading of a peg of one's own. */
    private static final int MOST_ACTIONS = 20;

    private static final Pattern MENU_ITEM = Pattern.compile("\\bPeg, ([^,.]+)");

    private int actions;

    @BeforeEach
    void start() {
        scenes.openFresh();
        scenes.on(() -> {
            try {
                scenes.desk().document().begin(SamplePegFiles.first());
            } catch (pegbed.model.InputException e) {
                throw new IllegalStateException(e);
            }
        });
        scenes.waitForAnswers();
    }

    @Test
    void theHintTypesALineThatAgreesWithTheSample() throws Exception {
        assertTrue(FirstStartHint.STEPS.get(0).contains(FirstStartHint.LINE));
        scenes.click("#cautions-read");
        PegMap before = scenes.desk().session().answer().shown().orElseThrow().map();
        Line.ReadingLine typed = (Line.ReadingLine) Notation.of(before.peg()).parse(FirstStartHint.LINE);
        Place place = typed.reading().place();
        double expected = before.bottom().at(place.xMetres(), place.yMetres()).depthMetres();
        assertEquals(expected, typed.reading().depthMetres(), 0.05);
        int readings = scenes.peg().readings().size();
        scenes.give(List.of(FirstStartHint.LINE));
        assertEquals(readings + 1, scenes.peg().readings().size());
        scenes.waitUntil(() -> scenes.desk().session().answer() instanceof Answer.Ready ready
                && ready.revision() == scenes.desk().session().revision());
        assertEquals("", scenes.desk().box().questionProperty().get());
    }

    @Test
    void theHintNamesItemsOfTheMenuThatExist() {
        List<String> items = scenes.<MenuButton>find("#peg-menu").getItems().stream()
                .map(MenuItem::getText)
                .toList();
        int named = 0;
        for (String step : FirstStartHint.STEPS) {
            Matcher item = MENU_ITEM.matcher(step);
            while (item.find()) {
                assertTrue(items.contains(item.group(1)), item.group(1) + " is none of " + items);
                named++;
            }
        }
        assertEquals(1, named);
    }

    private void click(String query) {
        scenes.click(query);
        actions++;
    }

    /** A word or a line that is typed is one action, and so is the key that ends it. */
    private void type(String words) {
        scenes.write(List.of(words));
        actions += 2;
    }

    private void press(KeyCode key) {
        scenes.press(key);
        actions++;
    }

    /** From the first start to a line on a peg of one's own: the way that the hint and the sheets show. */
    @Test
    void aNewUserIsAtTheFirstReadingOfAPegOfHisOwnInTwentyActions() {
        click("#cautions-read");
        click("#peg-menu");
        // The first item of the open menu.
        press(KeyCode.DOWN);
        press(KeyCode.ENTER);
        assertTrue(scenes.there("#new-peg"));
        type("Hobbrel Pond");
        type("Long Bank");
        type("4");
        // The pole is the sample's; the banks take the grey examples.
        click("#begin-peg");
        scenes.waitUntil(() -> scenes.peg().name().number().equals("4"));
        assertTrue(scenes.find("#reading").isFocused());
        assertTrue(actions <= MOST_ACTIONS, actions + " actions");
        assertFalse(scenes.peg().banks().far().isEmpty());
        for (String line :
                List.of("s1 0 2'6", "s2 0 3'9", "s3 0 5'1", "s4 0 5'4", "s5 0 5'2", "s6 0 4'3", "s7 0 2'8")) {
            scenes.write(List.of(line));
        }
        scenes.waitForAnswers();
        scenes.waitUntil(() -> !scenes.desk().plan().lines().isEmpty());
    }
}
