package pegbed.ui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.text.Text;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbed.ui.bankside.BanksideView;

/**
 * Small screens: 1366 × 768 at 200 %, which is 683 × 384 points, a netbook's 1024 × 600, and a tablet that stands
 * upright. What has no room there is scrolled to.
 */
@Tag("window")
class SmallScreensTest extends InScenes {
    private static final List<String> TABS =
            List.of("tab-plan", "tab-fishing", "tab-readings", "tab-visits", "tab-place", "tab-findings");
    private static final List<Consumer<WindowFrame>> SHEETS = List.of(
            WindowFrame::showCard,
            WindowFrame::showRigs,
            WindowFrame::showShelf,
            WindowFrame::newPeg,
            WindowFrame::showCautions);

    @BeforeEach
    void open() throws Exception {
        scenes.open(SamplePegFiles.first());
        scenes.waitForAnswers();
        scenes.waitUntil(() -> scenes.desk().plan().planProperty().get().isPresent());
    }

    private void assertReachable(String what) {
        scenes.settle();
        scenes.on(() -> {
            scenes.frame().applyCss();
            scenes.frame().layout();
        });
        scenes.settle();
        assertEquals(List.of(), scenes.unreachable(), what);
        assertEquals(List.of(), scenes.cutSentences(), what);
    }

    @ParameterizedTest
    @CsvSource({"683, 384", "1024, 600", "800, 1280"})
    void everythingIsReached(int width, int height) {
        scenes.resize(width, height);
        scenes.on(() -> scenes.frame().layout());
        assertTrue(onScene("#echo").getMaxY() <= onScene("#profile-title").getMinY());
        for (String tab : TABS) {
            scenes.tab(tab);
            assertReachable(tab);
        }
        for (Consumer<WindowFrame> sheet : SHEETS) {
            scenes.on(() -> sheet.accept(scenes.frame()));
            List<Node> open = scenes.<Sheets>find(".sheets").getChildren();
            assertEquals(1, open.size());
            assertReachable(open.get(0).getId());
            scenes.on(() -> scenes.<Sheets>find(".sheets").close());
        }
        scenes.on(scenes.frame()::toBankside);
        assertReachable("large buttons");
        boolean small = width > height && width < BanksideView.SMALL_SCREEN_POINTS;
        double least = small ? BanksideView.SMALL_MIN_POINTS : BanksideView.MIN_POINTS;
        for (Node button : scenes.all(".large")) {
            assertTrue(((Button) button).getWidth() >= least, button.getId());
            assertTrue(((Button) button).getHeight() >= least, button.getId());
        }
    }

    @ParameterizedTest
    @CsvSource({"683, 384", "1024, 600", "800, 1280"})
    void theTitleIsWhole(int width, int height) {
        scenes.resize(width, height);
        scenes.settle();
        scenes.on(() -> scenes.frame().layout());
        Label title = scenes.find("#title");
        String shown = ((Text) title.lookup(".text")).getText();
        assertEquals(title.getText(), shown.replaceAll("\\s+", " ").strip());
    }

    @ParameterizedTest
    @CsvSource({"683, 384", "1024, 600"})
    void theMapAtTheBankHasRoom(int width, int height) {
        scenes.resize(width, height);
        scenes.on(scenes.frame()::toBankside);
        scenes.settle();
        Bounds map = onScene("#map");
        assertTrue(map.getWidth() >= 0.4 * width && map.getHeight() >= 0.7 * height, map + "");
    }

    private Bounds onScene(String query) {
        Node node = scenes.find(query);
        return node.localToScene(node.getLayoutBounds());
    }

    @ParameterizedTest
    @CsvSource({"800, 1280", "1280, 800"})
    void theMapLiesAboveTheWheelsOnAScreenThatStandsUpright(int width, int height) {
        scenes.resize(width, height);
        scenes.on(scenes.frame()::toBankside);
        scenes.settle();
        Bounds map = onScene("#map");
        Bounds wheels = onScene(".wheels");
        if (height > width) {
            assertTrue(map.getMaxY() <= wheels.getMinY(), map + " " + wheels);
            assertEquals(width, map.getWidth(), 1);
        } else {
            assertTrue(map.getMaxX() <= wheels.getMinX(), map + " " + wheels);
        }
        assertTrue(map.getHeight() > 300 && map.getWidth() > 300, map + "");
    }
}
