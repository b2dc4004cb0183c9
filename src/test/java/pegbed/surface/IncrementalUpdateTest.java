package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.surface.posterior.Disc;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.surface.survey.Survey;

class IncrementalUpdateTest {
    private static final Place THERE = Place.polar(8.3, -24);
    private static final double DEPTH = TestPegs.bottom(THERE.xMetres(), THERE.yMetres()) + 0.03;
    private static final Reading MORE = Reading.of(8.3, -24, DEPTH);

    private static List<Reading> readings;
    private static FittedBottom before;
    private static BottomGrid grid;

    @BeforeAll
    static void fit() throws InputException {
        readings = TestPegs.fan(25, 31);
        before = TestPegs.fit(TestPegs.with(TestPegs.bendWithIsland(), readings));
        grid = before.grid(Monitor.NONE);
    }

    private static Survey survey(Reading... more) throws InputException {
        List<Reading> all = new ArrayList<>(readings);
        all.addAll(List.of(more));
        Peg peg = TestPegs.with(TestPegs.bendWithIsland(), all);
        return Survey.of(peg, before.survey().water().orElseThrow());
    }

    @Test
    void theGridIsThatOfTheSameBottomFilledAnew() throws InputException {
        IncrementalUpdate one = IncrementalUpdate.of(before, grid, survey(MORE)).orElseThrow();
        BottomGrid anew = one.bottom().grid(Monitor.NONE);
        for (int i = 0; i < anew.frame().size(); i++) {
            assertEquals(anew.depth().at(i), one.grid().depth().at(i), 1e-9);
            assertEquals(anew.sd().at(i), one.grid().sd().at(i), 1e-7);
            Disc a = anew.disc(i);
            Disc b = one.grid().disc(i);
            assertEquals(a.depthMetres(), b.depthMetres(), 1e-9);
            assertEquals(a.slopeX(), b.slopeX(), 1e-9);
            assertEquals(a.slopeY(), b.slopeY(), 1e-9);
            assertEquals(a.varD(), b.varD(), 1e-9);
            assertEquals(a.covDX(), b.covDX(), 1e-9);
            assertEquals(a.covDY(), b.covDY(), 1e-9);
            assertEquals(a.varX(), b.varX(), 1e-9);
            assertEquals(a.covXY(), b.covXY(), 1e-9);
            assertEquals(a.varY(), b.varY(), 1e-9);
        }
        assertTrue(one.grid().isProvisional());
        assertEquals(26, one.bottom().soundings());
    }

    @Test
    void theReadingIsCheckedAgainstTheOthers() throws InputException {
        IncrementalUpdate one = IncrementalUpdate.of(before, grid, survey(MORE)).orElseThrow();
        ReadingCheck leftOut = one.bottom().readings().get(readings.size());
        assertEquals(leftOut.sounding(), one.check().sounding());
        assertEquals(leftOut.residualMetres(), one.check().residualMetres(), 1e-9);
        assertEquals(leftOut.expectedMetres(), one.check().expectedMetres(), 1e-9);
        assertEquals(leftOut.expectedSdMetres(), one.check().expectedSdMetres(), 1e-9);
        assertEquals(DEPTH, one.check().readMetres(), 1e-12);
    }

    @Test
    void anythingElseHasToBeWorkedOutAnew() throws InputException {
        assertEquals(Optional.empty(), IncrementalUpdate.of(before, grid, survey()));
        assertEquals(Optional.empty(), IncrementalUpdate.of(before, grid, survey(MORE, MORE)));
        assertEquals(
                Optional.empty(),
                IncrementalUpdate.of(
                        before,
                        grid,
                        survey().withSoundings(survey(MORE).soundings().subList(1, 26))));
        IncrementalUpdate one = IncrementalUpdate.of(before, grid, survey(MORE)).orElseThrow();
        assertEquals(Optional.empty(), IncrementalUpdate.of(one.bottom(), one.grid(), survey(MORE, MORE)));
    }

    /** A depth at the water's edge takes the place of what the bank itself says there. */
    @Test
    void aReadingAtTheEdgeHasToBeWorkedOutAnew() throws InputException {
        Observations edge = before.fits().get(0).observations();
        int bank = edge.real;
        double x = edge.places.x[bank];
        double y = edge.places.y[bank];
        Reading beside = Reading.of(Math.hypot(x, y), Math.toDegrees(Math.atan2(x, y)), 0.2);
        assertEquals(Optional.empty(), IncrementalUpdate.of(before, grid, survey(beside)));
    }
}
