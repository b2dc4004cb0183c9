package pegbed.ui.bankside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
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
        model.turn(Wheel.DIRECTION, -6);
        model.turnFar(Wheel.DEPTH, 4);
        model.turn(Wheel.DEPTH, 2);
        model.turn(Wheel.BOTTOM, 4);
        assertEquals("6 + 0.5 m", shown(Wheel.SECTION));
        assertEquals("11:30", shown(Wheel.DIRECTION));
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
        model.turnFar(Wheel.DIRECTION, 50);
        assertEquals("3:00", shown(Wheel.DIRECTION));
        model.turnFar(Wheel.DIRECTION, -50);
        assertEquals("9:00", shown(Wheel.DIRECTION));
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
    void aDepthThatNobodyPlumbedIsNotAdded() {
        desk.document().begin(Pegs.plumbed(9));
        model.begin();
        assertTrue(model.expectedProperty().get());
        model.enter();
        assertEquals(9, desk.session().peg().readings().size());
        assertEquals(BanksideViewModel.NOT_PLUMBED, model.saidProperty().get());
        assertTrue(model.wrongProperty().get());
        String asExpected = shown(Wheel.DEPTH);
        model.confirmDepth();
        model.enter();
        assertEquals(10, desk.session().peg().readings().size());
        Reading added = desk.session().peg().readings().get(9);
        assertEquals(asExpected, Quantities.of(desk.session().peg()).depth(added.depthMetres()));
        assertFalse(model.plumbedProperty().get(), "the next depth is to be plumbed again");
        model.enter();
        assertEquals(10, desk.session().peg().readings().size());
    }

    @Test
    void aPlumbedDepthIsForgottenWhenTheViewIsShownAnew() {
        model.turn(Wheel.DEPTH, 1);
        desk.document().begin(Pegs.plumbed(9));
        model.begin();
        model.enter();
        assertEquals(9, desk.session().peg().readings().size());
    }

    @Test
    void whoPlumbsTheProposedPlacesIsBroughtFromOneToTheNext() {
        desk.document().begin(Pegs.plumbed(9));
        model.begin();
        Place first = model.place();
        model.confirmDepth();
        model.enter();
        var next = desk.guide().nextProperty().get().orElseThrow().place();
        assertTrue(first.distanceTo(next) > 0.3);
        assertEquals(next.distanceMetres(), model.place().distanceMetres(), 1e-9);
        assertTrue(
                model.saidProperty().get().matches("Added: .*\\. Next: .*"),
                model.saidProperty().get());
        model.turn(Wheel.DIRECTION, 2);
        Place own = model.place();
        model.confirmDepth();
        model.enter();
        assertEquals(own, model.place(), "a place of one's own is not left");
    }

    @Test
    void aMarkAndADistanceBesideItAreADirection() {
        assertTrue(model.hasMarksProperty().get());
        model.turn(Wheel.MARK, 1);
        assertEquals(Pegs.bare().marks().get(0).name(), shown(Wheel.MARK));
        assertEquals("at it", shown(Wheel.DIRECTION));
        assertEquals(
                Pegs.bare().marks().get(0).place().angleDegrees(), model.place().angleDegrees(), 1e-9);
        model.turn(Wheel.DIRECTION, 3);
        assertEquals("1.5 m right", shown(Wheel.DIRECTION));
        assertEquals(
                "Beside " + Pegs.bare().marks().get(0).name() + ", half a metre to the left",
                model.stepName(Wheel.DIRECTION, false, false));
        model.turn(Wheel.DEPTH, 1);
        Place meant = model.place();
        model.enter();
        Reading added = desk.session().peg().readings().get(0);
        assertEquals(
                "@" + Pegs.bare().marks().get(0).name() + "+1.5", added.typed().direction());
        assertEquals(0, meant.distanceTo(added.place()), 1e-9);
        model.turnFar(Wheel.DIRECTION, -1);
        assertEquals("0.5 m left", shown(Wheel.DIRECTION));
    }

    @Test
    void theClockKeepsTheDirectionThatWasSightedOnAMark() {
        model.turn(Wheel.MARK, 1);
        double sighted = model.place().angleDegrees();
        model.turn(Wheel.MARK, -1);
        assertEquals("none, by the clock", shown(Wheel.MARK));
        assertEquals(sighted, model.place().angleDegrees(), 1.26);
        for (int i = 0; i <= Pegs.bare().marks().size(); i++) {
            model.turn(Wheel.MARK, 1);
        }
        assertEquals("none, by the clock", shown(Wheel.MARK));
    }

    @Test
    void aPegWithoutMarksHasNoWheelForThem() {
        desk.document().begin(Pegs.bare().withMarks(List.of()));
        assertFalse(model.hasMarksProperty().get());
    }

    @Test
    void undoTakesTheReadingBackAndSaysSo() {
        model.confirmDepth();
        model.enter();
        model.undo();
        assertEquals(0, desk.session().peg().readings().size());
        assertEquals("Undone: Add reading", model.saidProperty().get());
    }

    @Test
    void whatWasAddedIsNoLongerSaidOnceItIsGone() {
        model.confirmDepth();
        model.enter();
        desk.document().undo();
        assertEquals("", model.saidProperty().get());
        model.confirmDepth();
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
        model.confirmDepth();
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
        model.turnFar(Wheel.DIRECTION, 1);
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
        assertEquals("Clock, 5 minutes later", model.stepName(Wheel.DIRECTION, true, false));
        assertEquals("Clock, 30 minutes earlier", model.stepName(Wheel.DIRECTION, false, true));
        assertEquals("Depth, 1 inch deeper", model.stepName(Wheel.DEPTH, true, false));
        assertEquals("Depth, 4 inches shallower", model.stepName(Wheel.DEPTH, false, true));
        assertEquals("Section, one section nearer", model.stepName(Wheel.SECTION, false, true));
    }
}
