package pegbed.ui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javafx.geometry.Bounds;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbed.model.Hazard;
import pegbed.model.Place;
import pegbed.session.Pegs;
import pegbed.ui.map.Tool;

/** Where the focus is can be seen, and the keys do what the pointer does. */
@Tag("window")
class FocusTest extends InScenes {
    /** A ring of two points about the smallest of these controls. */
    private static final int RING_PIXELS = 60;

    /** WCAG 2.2, criterion 1.4.11: between the colours with and without the focus. */
    private static final double CONTRAST = 3;

    private static final double AROUND_POINTS = 8;

    @BeforeEach
    void open() {
        scenes.open(Pegs.plumbed(12));
        scenes.waitForAnswers();
        scenes.waitUntil(() -> scenes.frame().main().map().settled());
    }

    /** A piece of the window around a control. */
    private WritableImage picture(Node node) {
        WritableImage[] taken = new WritableImage[1];
        scenes.settle();
        scenes.on(() -> {
            Bounds bounds = node.localToScene(node.getLayoutBounds());
            SnapshotParameters piece = new SnapshotParameters();
            piece.setViewport(new Rectangle2D(
                    Math.max(0, bounds.getMinX() - AROUND_POINTS),
                    Math.max(0, bounds.getMinY() - AROUND_POINTS),
                    bounds.getWidth() + 2 * AROUND_POINTS,
                    bounds.getHeight() + 2 * AROUND_POINTS));
            taken[0] = scenes.scene().getRoot().snapshot(piece, null);
        });
        return taken[0];
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(double part) {
        return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }

    private static int contrasting(WritableImage a, WritableImage b) {
        PixelReader one = a.getPixelReader();
        PixelReader other = b.getPixelReader();
        int count = 0;
        for (int x = 0; x < a.getWidth(); x++) {
            for (int y = 0; y < a.getHeight(); y++) {
                double first = luminance(one.getColor(x, y));
                double second = luminance(other.getColor(x, y));
                if ((Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05) >= CONTRAST) {
                    count++;
                }
            }
        }
        return count;
    }

    @ParameterizedTest
    @CsvSource({
        "#target, false",
        "#tabs, false",
        "#tool-read, false",
        "#map, false",
        "#target, true",
        "#tabs, true",
        "#tool-read, true",
        "#map, true"
    })
    void theFocusIsSeen(String query, boolean dark) {
        scenes.on(() -> scenes.frame().darkProperty().set(dark));
        scenes.waitUntil(() -> scenes.frame().main().map().settled());
        Node node = scenes.find(query);
        // The map's own ring is drawn about it.
        Node seen = query.equals("#map") ? node.getParent() : node;
        scenes.on(scenes.frame()::focusBox);
        WritableImage without = picture(seen);
        scenes.on(node::requestFocus);
        assertTrue(node.isFocused());
        int pixels = contrasting(without, picture(seen));
        assertTrue(pixels >= RING_PIXELS, query + " differs in " + pixels + " pixels");
    }

    @Test
    void theToolFollowsTheArrowKeysAndItsHelpIsRead() {
        scenes.on(() -> scenes.find("#tool-read").requestFocus());
        Label help = scenes.find("#tool-help");
        assertEquals(Tool.READ.help(), help.getText());
        scenes.press(KeyCode.RIGHT);
        assertTrue(scenes.find("#tool-course").isFocused());
        assertEquals(Tool.COURSE, scenes.desk().map().toolProperty().get());
        assertEquals(Tool.COURSE.help(), help.getText());
        assertTrue(help.isVisible());
        scenes.press(KeyCode.LEFT);
        assertEquals(Tool.READ, scenes.desk().map().toolProperty().get());
        scenes.press(KeyCode.SPACE);
        assertTrue(scenes.<ToggleButton>find("#tool-read").isSelected(), "one tool is always in hand");
    }

    @Test
    void escapeLeavesATool() {
        scenes.click("#tool-far-bank");
        scenes.press(KeyCode.ESCAPE);
        assertEquals(Tool.READ, scenes.desk().map().toolProperty().get());
        assertTrue(scenes.<ToggleButton>find("#tool-read").isSelected());
        assertTrue(scenes.find("#reading").isFocused());
        scenes.clickMap(Place.polar(6, 5));
        assertEquals(3, scenes.peg().banks().far().size());
    }

    @Test
    void aMarkThatIsPutOnTheMapAsksItsName() {
        scenes.click("#tool-mark");
        assertFalse(scenes.there("#mark-name")
                && scenes.find("#mark-name").getParent().isVisible());
        scenes.clickMap(new Place(0, 13.2));
        assertTrue(scenes.find("#mark-name").isFocused());
        scenes.write(List.of("split ash"));
        assertEquals("split ash", scenes.peg().marks().get(2).name());
        assertTrue(scenes.find("#map").isFocused());
    }

    @Test
    void aHazardOnTheMapTakesTheKindThatIsChosen() {
        scenes.click("#tool-hazard");
        ComboBox<Hazard.Kind> kind = scenes.find("#hazard-kind");
        assertTrue(kind.isVisible());
        scenes.on(() -> kind.setValue(Hazard.Kind.OVERHEAD_LINE));
        scenes.clickMap(new Place(3, 5));
        assertEquals(Hazard.Kind.OVERHEAD_LINE, scenes.peg().hazards().get(0).kind());
    }
}
