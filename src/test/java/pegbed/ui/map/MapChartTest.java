package pegbed.ui.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import javafx.geometry.Bounds;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.ComboBox;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pegbed.model.Hazard;
import pegbed.model.Place;
import pegbed.report.drawing.View;
import pegbed.session.Pegs;
import pegbed.ui.app.InScenes;

/** What the map shows on request, in real scenes and without a display. */
@Tag("window")
class MapChartTest extends InScenes {
    @BeforeEach
    void open() {
        scenes.open(Pegs.bare());
        scenes.give(List.of("s1 0 3'9", "s3 0 5'1", "s5 0 5'3", "s6 0 4'2", "s7 0 2'8", "s1 80L 2'4", "s1 80R 2'3"));
        scenes.waitForAnswers();
        scenes.waitUntil(() -> map().settled());
    }

    private MapPane map() {
        return scenes.find("#map");
    }

    @Test
    void theLegendComesAndGoesByItsKeyAndLiesInsideTheMap() {
        MapLegend legend = (MapLegend) scenes.find("#map").lookup("#map-legend");
        assertFalse(legend.isVisible());
        scenes.press(KeyCode.F7);
        scenes.waitUntil(legend::isVisible);
        scenes.settle();
        Bounds inside = legend.getBoundsInParent();
        assertTrue(inside.getWidth() > 150 && inside.getHeight() > 100, inside::toString);
        assertTrue(map().getLayoutBounds().contains(inside), inside::toString);
        scenes.press(KeyCode.F7);
        scenes.waitUntil(() -> !legend.isVisible());
    }

    @Test
    void joinedUpIsAnotherPictureAndBackAgainTheSame() {
        Place between = new Place(1.2, 4);
        // All that is still to come, and signs and letters placed again about it.
        scenes.waitUntil(() -> scenes.desk().plan().planProperty().get().isPresent()
                && scenes.desk().guide().nextProperty().get().isPresent());
        scenes.waitUntil(() -> map().settled() && !map().awaitsCalm());
        double model = scenes.lightness(between);
        scenes.press(KeyCode.F9);
        scenes.waitUntil(() -> map().joinedUpProperty().get() && map().settled());
        scenes.waitUntil(() -> Math.abs(scenes.lightness(between) - model) > 0.001);
        scenes.press(KeyCode.F9);
        scenes.waitUntil(() -> !map().joinedUpProperty().get() && map().settled());
        scenes.waitUntil(() -> Math.abs(scenes.lightness(between) - model) < 0.001);
    }

    @Test
    void aHazardTakesTheKindThatIsChosen() {
        scenes.click("#tool-hazard");
        ComboBox<Hazard.Kind> kinds = scenes.find("#hazard-kind");
        assertTrue(kinds.isVisible());
        scenes.on(() -> kinds.setValue(Hazard.Kind.OVERHEAD_LINE));
        scenes.clickMap(new Place(-3, 5));
        assertEquals(Hazard.Kind.OVERHEAD_LINE, scenes.peg().hazards().get(0).kind());
        scenes.on(() -> kinds.setValue(Hazard.Kind.LOW_BRANCH));
        assertEquals(Hazard.Kind.LOW_BRANCH, scenes.peg().hazards().get(0).kind(), "the one that is taken hold of");
        assertEquals(1, scenes.peg().hazards().size());
        scenes.click("#tool-read");
        assertFalse(kinds.isVisible());
    }

    @Test
    void theProfilesLineIsThereOnlyWhileThePointerIsOnTheMap() {
        scenes.clickMap(Place.polar(8, 10));
        int on = linePixels();
        scenes.click("#tool-read");
        scenes.waitUntil(() -> !map().isHover());
        scenes.settle();
        int off = linePixels();
        assertTrue(on > off + 10, on + " with the pointer on the map, " + off + " without");
    }

    /** Pixels of the overlay's brown about the middle of the way from the seat to the pointer. */
    private int linePixels() {
        AtomicReference<WritableImage> shot = new AtomicReference<>();
        scenes.on(() -> shot.set(map().snapshot(new SnapshotParameters(), null)));
        View view = map().view();
        int count = 0;
        for (double share = 0.3; share < 0.7; share += 0.005) {
            Place at = Place.polar(8 * share, 10);
            int x = (int) Math.round(view.x(at.xMetres()));
            int y = (int) Math.round(view.y(at.yMetres()));
            for (int dx = -2; dx <= 2; dx++) {
                int rgb = shot.get().getPixelReader().getArgb(x + dx, y);
                int red = rgb >> 16 & 255;
                int blue = rgb & 255;
                count += red - blue > 50 && red < 190 ? 1 : 0;
            }
        }
        return count;
    }

    /** A point of the map is more than a point of the window on a large one, so that letters and signs grow. */
    @Test
    void lettersGrowOnALargeScreenAndClicksStillFindTheirPlace() {
        scenes.resize(2560, 1400);
        scenes.waitUntil(() -> map().settled());
        assertTrue(map().enlarged() > 1.3, "" + map().enlarged());
        scenes.click("#tool-mark");
        scenes.clickMap(new Place(4, 9));
        Place put = scenes.peg().marks().get(scenes.peg().marks().size() - 1).place();
        assertEquals(0, put.distanceTo(new Place(4, 9)), 0.05);
    }
}
