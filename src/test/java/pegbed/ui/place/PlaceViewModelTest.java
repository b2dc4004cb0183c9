package pegbed.ui.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.geodesy.LocalFrame;
import pegbed.model.Hazard;
import pegbed.model.Limits;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Position;
import pegbed.model.Units;
import pegbed.session.Pegs;
import pegbed.session.PlaceEdits;
import pegbed.ui.app.Desks;
import pegbed.ui.app.WindowViewModels;

class PlaceViewModelTest {
    @TempDir
    private Path folder;

    private WindowViewModels desk;
    private PlaceViewModel place;

    @BeforeEach
    void open() {
        desk = Desks.atOnce(folder, Pegs.bare());
        place = desk.place();
    }

    private Peg peg() {
        return desk.session().peg();
    }

    private PlaceViewModel.Row row(PlaceViewModel.Kind kind, int index) {
        return place.rows().stream()
                .filter(row -> row.kind() == kind && row.index() == index)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theWholePlaceIsListed() {
        assertEquals(8, place.rows().size());
        assertEquals("s8 0", row(PlaceViewModel.Kind.FAR_BANK, 1).where());
        assertEquals("white pipe", row(PlaceViewModel.Kind.MARK, 1).name());
    }

    @Test
    void thingsAreAddedAsTheyAreTyped() {
        assertTrue(place.add(PlaceViewModel.Kind.FAR_BANK, "", "13.2 20R 1ft"));
        assertEquals(0.3048, peg().banks().far().get(2).depthMetres().orElseThrow(), 1e-9);
        assertTrue(place.add(PlaceViewModel.Kind.MARK, "gate", "14 30L"));
        assertTrue(place.add(PlaceViewModel.Kind.HAZARD, "low branch", "9 40R 1.5"));
        Hazard branch = peg().hazards().get(0);
        assertEquals(Hazard.Kind.LOW_BRANCH, branch.kind());
        assertEquals(1.5, branch.radiusMetres());
    }

    @Test
    void whereSomethingIsCanBeTypedAnew() {
        assertTrue(place.change(row(PlaceViewModel.Kind.MARK, 0), "13.5 10L"));
        assertEquals(-10, peg().marks().get(0).place().angleDegrees(), 1e-9);
        assertTrue(place.change(row(PlaceViewModel.Kind.FAR_BANK, 1), "13.4 0"));
        assertEquals(13.4, peg().banks().far().get(1).place().yMetres(), 1e-9);
        place.add(PlaceViewModel.Kind.HAZARD, "snag", "9 0 0.5");
        assertTrue(place.change(row(PlaceViewModel.Kind.HAZARD, 0), "8 0 1"));
        assertEquals(1, peg().hazards().get(0).radiusMetres());
    }

    @Test
    void whereThePegIsOnTheEarthIsTyped() {
        assertFalse(place.setPosition("", "312"));
        assertTrue(place.errorProperty().get().startsWith("A bearing alone says nothing without a position"));
        assertFalse(place.setPosition("90,0", "312"));
        assertFalse(place.setPosition("52.1234,-1.2345", ""));
        assertFalse(place.setPosition("52.1234,-1.2345", "north"));
        assertTrue(peg().position().isEmpty());
        assertTrue(place.setPosition("52.1234,-1.2345", "312.5"));
        assertEquals("", place.errorProperty().get());
        assertEquals(new Position(52.1234, -1.2345, 312.5), peg().position().orElseThrow());
        assertEquals("52.1234,-1.2345", place.seat());
        assertTrue(place.setPosition("", ""));
        assertTrue(peg().position().isEmpty());
    }

    /**
     * A bearing typed anew leaves latitude, longitude and the accuracy of their fix as they were, to the last digit.
     */
    @Test
    void theAccuracyOfAFixIsKeptWithItsSeat() throws Exception {
        Position fix = new Position(52.123456789, -1.987654321, 312.5, OptionalDouble.of(4));
        desk.session().edit(PlaceEdits.position(Optional.of(fix)));
        assertEquals("± 4 m", place.accuracy());
        assertTrue(place.setPosition(place.seat(), "10"));
        assertEquals(
                new Position(52.123456789, -1.987654321, 10, OptionalDouble.of(4)),
                peg().position().orElseThrow());
        assertTrue(place.setPosition("52,-1", "10"));
        assertEquals("", place.accuracy());
    }

    @Test
    void twoMarksWithPositionsGiveSeatAndBearing() throws Exception {
        Position seat = new Position(52.1234, -1.2345, 75);
        StringBuilder typed = new StringBuilder();
        for (Mark mark : peg().marks()) {
            double[] at = {mark.place().xMetres(), mark.place().yMetres()};
            LocalFrame.of(seat).toEarth(at);
            typed.append(typed.length() == 0 ? "" : "; ")
                    .append(mark.name())
                    .append('=')
                    .append(at[1])
                    .append(',')
                    .append(at[0]);
        }
        assertTrue(
                place.setPosition(typed.toString(), ""), place.errorProperty().get());
        assertEquals(75, peg().position().orElseThrow().bearingDegrees(), 0.01);
        assertEquals("marks agree within 0.0 m", place.accuracy());
        assertFalse(place.setPosition("oak=52,-1; gate=52,-1", ""));
    }

    @Test
    void twoMarksOfOneNameAreRefused() {
        assertFalse(place.rename(row(PlaceViewModel.Kind.MARK, 0), "White pipe"));
        assertEquals(
                "Two marks have the same name; give each its own.",
                place.errorProperty().get());
        assertTrue(place.rename(row(PlaceViewModel.Kind.MARK, 0), "gate"));
        assertEquals("", place.errorProperty().get());
    }

    @Test
    void aPlaceThatCanNotBeReadIsSaid() {
        Peg before = peg();
        assertFalse(place.add(PlaceViewModel.Kind.NEAR_BANK, "", "over there"));
        assertTrue(
                place.errorProperty().get().startsWith("\"over\" is not a distance"),
                place.errorProperty().get());
        assertEquals(before, peg());
    }

    @Test
    void thePoleIsTypedAsItsJoints() {
        assertEquals("2.6, 4, 5.5, 7, 8.5, 10, 11.5, 13, 14.5, 16", place.joints());
        assertTrue(place.setJoints("2.5 4; 5.5, 7"));
        assertEquals(7, peg().pole().reachMetres());
        assertFalse(place.setJoints("4, 3"));
        assertTrue(place.errorProperty().get().startsWith("The sections of a pole must get longer"));
        assertFalse(place.setJoints("long"));
        assertEquals(7, peg().pole().reachMetres());
    }

    @Test
    void limitsAreMetresToEachSide() {
        assertTrue(place.setLimits("7.5", ""));
        assertEquals(new Limits(OptionalDouble.of(-7.5), OptionalDouble.empty()), peg().limits());
        assertEquals("7.5", place.leftLimit());
        assertFalse(place.setLimits("as far as it goes", ""));
        assertTrue(place.setLimits("", "6,5m"));
        assertEquals(new Limits(OptionalDouble.empty(), OptionalDouble.of(6.5)), peg().limits());
    }

    @Test
    void namesAndUnitsChange() {
        assertTrue(place.setName(new PegName("Mallowfield Pools", "Hobbrel Pond", "3")));
        assertEquals("Hobbrel Pond, peg 3", desk.document().titleProperty().get());
        assertTrue(place.setUnits(new Units(Units.Depth.CENTIMETRES, Units.Distance.METRES)));
        assertEquals("13m 0", row(PlaceViewModel.Kind.FAR_BANK, 1).where());
    }

    @Test
    void everythingCanBeDeletedAndUndone() {
        Peg before = peg();
        place.delete(row(PlaceViewModel.Kind.NEAR_BANK, 0));
        place.delete(row(PlaceViewModel.Kind.FAR_BANK, 0));
        place.delete(row(PlaceViewModel.Kind.MARK, 0));
        assertEquals(5, place.rows().size());
        desk.document().undo();
        desk.document().undo();
        desk.document().undo();
        assertEquals(before, peg());
    }
}
