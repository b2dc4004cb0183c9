package pegbed.ui.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.Hazard;
import pegbed.model.Place;
import pegbed.session.Pegs;
import pegbed.ui.app.Desks;
import pegbed.ui.app.WindowViewModels;

class MapViewModelTest {
    @TempDir
    private Path folder;

    private WindowViewModels desk;
    private MapViewModel map;

    @BeforeEach
    void open() {
        desk = Desks.atOnce(folder, Pegs.plumbed(12));
        map = desk.map();
    }

    @Test
    void whileReadingNothingCanBeTakenHoldOf() {
        assertTrue(map.handles().isEmpty());
        assertEquals(Optional.empty(), map.take(new Place(0, 13), 1));
    }

    @Test
    void aBankPointIsDraggedAsOneEdit() {
        map.toolProperty().set(Tool.FAR_BANK);
        assertEquals(1, map.take(new Place(0.1, 13.05), 0.5).orElseThrow().index());
        for (int i = 0; i < 5; i++) {
            map.moveTo(new Place(0, 13 + i * 0.1));
        }
        map.letGo();
        assertEquals(13.4, desk.session().peg().banks().far().get(1).place().yMetres(), 1e-9);
        desk.document().undo();
        assertEquals(13, desk.session().peg().banks().far().get(1).place().yMetres(), 1e-9);
    }

    @Test
    void aClickBesideThePointsAddsOneAndTakesHoldOfIt() {
        map.toolProperty().set(Tool.FAR_BANK);
        assertEquals(Optional.empty(), map.take(new Place(5, 13.1), 0.5));
        map.add(new Place(5, 13.1));
        assertEquals(4, desk.session().peg().banks().far().size());
        assertEquals(2, map.selectedProperty().get().orElseThrow().index());
        map.deleteSelected();
        assertEquals(3, desk.session().peg().banks().far().size());
    }

    @Test
    void newMarksGetNamesOfTheirOwn() {
        map.toolProperty().set(Tool.MARK);
        map.add(new Place(0, 13.2));
        map.add(new Place(2, 13.2));
        assertEquals("mark 1", desk.session().peg().marks().get(2).name());
        assertEquals("mark 2", desk.session().peg().marks().get(3).name());
    }

    @Test
    void aHazardIsOfTheKindInHand() {
        map.toolProperty().set(Tool.HAZARD);
        map.hazardKindProperty().set(Hazard.Kind.LOW_BRANCH);
        map.add(new Place(3, 4));
        assertEquals(
                Hazard.Kind.LOW_BRANCH, desk.session().peg().hazards().get(0).kind());
        map.moveTo(new Place(4, 4));
        assertEquals(
                new Place(4, 4), desk.session().peg().hazards().get(0).outline().get(0));
    }

    @Test
    void theKeysGoFromHandleToHandle() {
        map.toolProperty().set(Tool.MARK);
        map.takeNext(1);
        assertEquals(
                "mark leaning post", map.selectedProperty().get().orElseThrow().words());
        map.takeNext(1);
        assertEquals(
                "mark white pipe", map.selectedProperty().get().orElseThrow().words());
        map.takeNext(1);
        assertEquals(
                "mark leaning post", map.selectedProperty().get().orElseThrow().words());
        map.takeNext(-1);
        assertEquals(
                "mark white pipe", map.selectedProperty().get().orElseThrow().words());
    }

    @Test
    void thePointerIsSaidWithTheDepthThere() {
        map.point(Place.polar(7, 0));
        assertTrue(
                map.pointerWordsProperty()
                        .get()
                        .matches("section 4 \\(7\\.0 m\\), straight out, 12:00, \\d ft.*give or take.*"),
                map.pointerWordsProperty().get());
        map.point(Place.polar(15, 0));
        assertEquals(
                "section 9 + 0.5 m (15.0 m), straight out, 12:00",
                map.pointerWordsProperty().get());
    }

    @Test
    void anotherToolLetsGo() {
        map.toolProperty().set(Tool.MARK);
        map.takeNext(1);
        map.toolProperty().set(Tool.HAZARD);
        assertEquals(Optional.empty(), map.selectedProperty().get());
    }

    @Test
    void aNewMarkAsksItsNameAndIsRenamedWhileItIsHeld() {
        AtomicInteger asked = new AtomicInteger();
        map.onMarkAdded(asked::incrementAndGet);
        map.toolProperty().set(Tool.MARK);
        assertEquals("", map.heldMarkProperty().get());
        map.add(new Place(0, 13.2));
        assertEquals(1, asked.get());
        assertEquals("mark 1", map.heldMarkProperty().get());
        assertTrue(map.renameHeld("split ash"));
        assertEquals("split ash", desk.session().peg().marks().get(2).name());
        assertEquals("split ash", map.heldMarkProperty().get());
        assertFalse(map.renameHeld("white pipe"));
        assertFalse(map.errorProperty().get().isEmpty());
        map.toolProperty().set(Tool.READ);
        assertEquals("", map.heldMarkProperty().get());
        assertEquals("", map.errorProperty().get());
    }

    @Test
    void theKindIsThatOfTheHazardHeldAndChangesIt() {
        map.toolProperty().set(Tool.HAZARD);
        map.add(new Place(3, 4));
        map.hazardKindProperty().set(Hazard.Kind.OVERHEAD_LINE);
        assertEquals(
                Hazard.Kind.OVERHEAD_LINE, desk.session().peg().hazards().get(0).kind());
        map.add(new Place(-3, 4));
        assertEquals(
                Hazard.Kind.OVERHEAD_LINE, desk.session().peg().hazards().get(1).kind());
        map.hazardKindProperty().set(Hazard.Kind.SNAG);
        map.take(new Place(3, 4), 0.1);
        assertEquals(Hazard.Kind.OVERHEAD_LINE, map.hazardKindProperty().get());
    }
}
