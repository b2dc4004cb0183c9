package pegbed.ui.bankside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.Bottom;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.model.Units;
import pegbed.session.Pegs;
import pegbed.ui.app.Desks;
import pegbed.ui.app.WindowViewModels;
import pegbed.ui.bankside.BanksideViewModel.Wheel;
import pegbed.wording.Quantities;

class BanksideViewModelTest {
    @TempDir
    private Path folder;

    private WindowViewModels desk;
    private BanksideViewModel model;

    @BeforeEach
    void open() {
        desk = Desks.atOnce(folder, Pegs.bare());
        model = desk.bankside();
    }

    private String shown(Wheel wheel) {
        return model.shownProperty(wheel).get();
    }

    @Test
    void wheelsAddAReadingWithoutAKeyboard() {
        model.turnFar(Wheel.SECTION, 2);
        model.turn(Wheel.SECTION, 1);
        model.turn(Wheel.CLOCK, -3);
        model.turnFar(Wheel.DEPTH, 1);
        model.turn(Wheel.DEPTH, 6);
        model.turn(Wheel.BOTTOM, 4);
        assertEquals("6 + 0.5 m", shown(Wheel.SECTION));
        assertEquals("11:30", shown(Wheel.CLOCK));
        assertEquals("4 ft 6 in", shown(Wheel.DEPTH));
        assertEquals("silt", shown(Wheel.BOTTOM));
        model.enter();
        Reading reading = desk.session().peg().readings().get(0);
        assertEquals(10.5, reading.place().distanceMetres(), 1e-9);
        assertEquals(-15, reading.place().angleDegrees(), 1e-9);
        assertEquals(4.5 * 0.3048, reading.depthMetres(), 1e-9);
        assertEquals(Bottom.SILT, reading.bottom());
        assertFalse(model.wrongProperty().get());
        assertTrue(
                model.saidProperty().get().startsWith("Added: 10.5 m"),
                model.saidProperty().get());
        assertEquals("not felt", shown(Wheel.BOTTOM));
        assertEquals(reading.place().distanceMetres(), model.place().distanceMetres(), 1e-9);
    }

    @Test
    void theWheelsStopAtTheEndsOfTheirRange() {
        model.turnFar(Wheel.SECTION, 50);
        assertEquals("10", shown(Wheel.SECTION));
        model.turnFar(Wheel.SECTION, -50);
        assertEquals("1", shown(Wheel.SECTION));
        model.turnFar(Wheel.CLOCK, 50);
        assertEquals("3:00", shown(Wheel.CLOCK));
        model.turnFar(Wheel.CLOCK, -50);
        assertEquals("9:00", shown(Wheel.CLOCK));
        model.turnFar(Wheel.DEPTH, -50);
        assertEquals("0 in", shown(Wheel.DEPTH));
        model.enter();
        assertFalse(model.wrongProperty().get());
    }

    @Test
    void centimetresGoByTwo() {
        desk.place().setUnits(new Units(Units.Depth.CENTIMETRES, Units.Distance.METRES));
        model.turn(Wheel.DEPTH, 1);
        assertTrue(shown(Wheel.DEPTH).endsWith(" cm"), shown(Wheel.DEPTH));
        int before = Integer.parseInt(shown(Wheel.DEPTH).split(" ")[0]);
        model.turn(Wheel.DEPTH, 1);
        assertEquals(before + 2, Integer.parseInt(shown(Wheel.DEPTH).split(" ")[0]));
    }

    @Test
    void undoTakesTheReadingBackAndSaysSo() {
        model.enter();
        model.undo();
        assertEquals(0, desk.session().peg().readings().size());
        assertEquals("Undone: Add reading", model.saidProperty().get());
    }

    @Test
    void whatWasAddedIsNoLongerSaidOnceItIsGone() {
        model.enter();
        desk.document().undo();
        assertEquals("", model.saidProperty().get());
        model.enter();
        desk.document().begin(Pegs.plumbed(4));
        assertEquals("", model.saidProperty().get());
    }

    @Test
    void theWheelsTurnToTheNextPlace() {
        desk.document().begin(Pegs.plumbed(9));
        model.toNext();
        String said = model.saidProperty().get();
        var next = desk.guide().nextProperty().get().orElseThrow().place();
        // The clock goes by five minutes.
        assertEquals(next.distanceMetres(), model.place().distanceMetres(), 1e-9);
        assertEquals(next.angleDegrees(), model.place().angleDegrees(), 1.26);
        model.enter();
        assertEquals(
                next.distanceMetres(),
                desk.session().peg().readings().get(9).place().distanceMetres(),
                0.006);
        assertTrue(said.startsWith("Next: "), said);
    }

    @Test
    void theDepthIsTheOneExpectedUntilItIsTurned() {
        desk.document().begin(Pegs.plumbed(12));
        model.toNext();
        Place place = model.place();
        var map = desk.session().answer().shown().orElseThrow().map();
        double expected = map.grid().depth().sample(place.xMetres(), place.yMetres());
        assertEquals(Quantities.of(desk.session().peg()).depth(expected), shown(Wheel.DEPTH));
        model.turn(Wheel.DEPTH, 5);
        String turned = shown(Wheel.DEPTH);
        model.turnFar(Wheel.CLOCK, 1);
        assertEquals(turned, shown(Wheel.DEPTH));
    }

    @Test
    void smallStepsGoByJointsAndHalfMetresFromWhereverTheWheelStands() {
        model.turnFar(Wheel.SECTION, -50);
        model.turn(Wheel.SECTION, -1);
        assertEquals("1 - 0.5 m", shown(Wheel.SECTION));
        model.turn(Wheel.SECTION, -9);
        assertEquals("1 - 2 m", shown(Wheel.SECTION));
        model.turn(Wheel.SECTION, 5);
        assertEquals("1 + 0.5 m", shown(Wheel.SECTION));
    }

    @Test
    void screenReadersHearWhatAButtonDoes() {
        assertEquals("Clock, 10 minutes later", model.stepName(Wheel.CLOCK, true, false));
        assertEquals("Clock, 30 minutes earlier", model.stepName(Wheel.CLOCK, false, true));
        assertEquals("Depth, 1 inch deeper", model.stepName(Wheel.DEPTH, true, false));
        assertEquals("Section, one section nearer", model.stepName(Wheel.SECTION, false, true));
    }
}
