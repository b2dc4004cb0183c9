package pegbed.ui.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.Bottom;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.session.Pegs;
import pegbed.ui.app.Desks;
import pegbed.ui.app.WindowViewModels;

class ReadingsViewModelTest {
    @TempDir
    private Path folder;

    private WindowViewModels desk;
    private ReadingsViewModel model;

    @BeforeEach
    void open() {
        desk = Desks.atOnce(folder, Pegs.bare());
        for (String line : new String[] {"11 20L 4'6 silt", "s3 @leaning post+1 5ft", "7m 0 1.2m"}) {
            desk.box().textProperty().set(line);
            assertTrue(desk.box().enter());
        }
        model = desk.readings();
    }

    private Reading reading(int index) {
        return desk.session().peg().readings().get(index);
    }

    @Test
    void rowsShowWhatWasSaid() {
        ReadingRow row = model.rows().get(1);
        assertEquals("s3", row.distance());
        assertEquals("@leaning post+1", row.direction());
        assertEquals("5ft", row.depth());
        assertEquals("silt", model.rows().get(0).bottom());
        assertEquals("3 readings", model.countProperty().get());
    }

    @Test
    void aDepthIsChangedInPlaceAndTheRestStays() {
        Reading before = reading(0);
        assertTrue(model.change(model.rows().get(0), ReadingsViewModel.Piece.DEPTH, "5' 0"));
        assertEquals(5 * 0.3048, reading(0).depthMetres(), 1e-9);
        assertEquals(before.place(), reading(0).place());
        assertEquals(Bottom.SILT, reading(0).bottom());
        assertEquals(before.time(), reading(0).time());
        assertEquals("20L", model.rows().get(0).direction());
    }

    @Test
    void aDirectionIsChangedInPlaceAndTheDepthStays() {
        assertTrue(model.change(model.rows().get(1), ReadingsViewModel.Piece.DIRECTION, "12:30"));
        assertEquals(15, reading(1).place().angleDegrees(), 1e-9);
        assertEquals(5, reading(1).precision().sdAngleDegrees());
        assertEquals(5 * 0.3048, reading(1).depthMetres(), 1e-9);
    }

    @Test
    void aChangeThatCanNotBeReadIsSaidAndNothingChanges() {
        Peg before = desk.session().peg();
        assertFalse(model.change(model.rows().get(0), ReadingsViewModel.Piece.DISTANCE, "far out"));
        assertTrue(
                model.errorProperty().get().startsWith("\"far"),
                model.errorProperty().get());
        assertEquals(before, desk.session().peg());
        assertTrue(model.change(model.rows().get(0), ReadingsViewModel.Piece.DISTANCE, "10"));
        assertEquals("", model.errorProperty().get());
    }

    @Test
    void bottomNoteAndDeleteCanAllBeUndone() {
        Peg before = desk.session().peg();
        model.changeBottom(model.rows().get(2), Bottom.GRAVEL);
        model.changeNote(model.rows().get(2), "hard");
        model.delete(model.rows().get(0));
        assertEquals(2, model.rows().size());
        assertEquals("hard", model.rows().get(1).note());
        desk.document().undo();
        desk.document().undo();
        desk.document().undo();
        assertEquals(before, desk.session().peg());
        assertEquals(3, model.rows().size());
    }

    @Test
    void aReadingThatTheOthersContradictIsFlaggedWithWhatItShouldHaveBeen() {
        Peg peg = Pegs.plumbed(30);
        Reading good = peg.readings().get(12);
        Reading slip = Reading.of(good.place().distanceMetres(), good.place().angleDegrees(), good.depthMetres() + 1.2);
        desk.document().begin(peg.withToday(visit -> {
            var readings = new java.util.ArrayList<>(visit.readings());
            readings.set(12, slip);
            return visit.withReadings(readings);
        }));
        assertTrue(model.rows().get(12).suspicious());
        assertTrue(
                model.rows().get(12).doubt().startsWith("The readings about it expect "),
                model.rows().get(12).doubt());
        assertTrue(
                model.countProperty().get().contains("to check"),
                model.countProperty().get());
    }
}
