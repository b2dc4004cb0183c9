package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.model.Precision;
import pegbed.model.Reading;
import pegbed.surface.posterior.Gradient;
import pegbed.surface.survey.Sounding;

class InputNoiseTest {
    private static Sounding sounding(double distance, double angle, double sdDistance, double sdAngle) {
        Place p = Place.polar(distance, angle);
        return new Sounding(p.xMetres(), p.yMetres(), 1, 0.02, new Precision(sdDistance, sdAngle), 0);
    }

    /** Straight out, the distance is y and the direction is x: r·σa = 10 × 3° = 0.5236 m. */
    @Test
    void placesStraightOut() {
        Sounding s = sounding(10, 0, 0.15, 3);
        assertEquals(0.5235987756 * 0.5235987756, s.varX(), 1e-9);
        assertEquals(0.15 * 0.15, s.varY(), 1e-12);
        assertEquals(0, s.covXY(), 1e-12);
    }

    /** At 30° with σd = 1 m and no error of direction S = e_r e_rᵀ, e_r = (1/2, √3/2). */
    @Test
    void placesAskew() {
        Sounding s = sounding(7, 30, 1, 0);
        assertEquals(0.25, s.varX(), 1e-12);
        assertEquals(0.75, s.varY(), 1e-12);
        assertEquals(Math.sqrt(3) / 4, s.covXY(), 1e-12);
        Sounding mirrored = sounding(7, -30, 1, 0);
        assertEquals(-Math.sqrt(3) / 4, mirrored.covXY(), 1e-12);
    }

    @Test
    void atTheSeatItselfThereIsNoDirection() {
        Sounding s = sounding(0, 0, 0.2, 3);
        assertEquals(0.04, s.varY(), 1e-12);
        assertEquals(0, s.varX(), 1e-12);
        assertEquals(0, s.covXY(), 1e-12);
    }

    /** On the posterior's own gradient: ξ = ĝᵀSĝ + S_xx·Var g_x + S_yy·Var g_y. */
    @Test
    void isTheSlopesShareOfThePlacing() throws InputException {
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), List.of(Reading.of(3, 20, 1.0))));
        for (StructureFit fit : bottom.fits()) {
            Observations o = fit.observations();
            double[] noise = InputNoise.of(fit, o);
            Gradient g = fit.gradient(o.places.x[0], o.places.y[0]);
            Sounding s = bottom.survey().soundings().get(0);
            double expected = g.dx() * g.dx() * s.varX()
                    + g.dy() * g.dy() * s.varY()
                    + 2 * g.dx() * g.dy() * s.covXY()
                    + s.varX() * g.varDx()
                    + s.varY() * g.varDy();
            assertTrue(expected < 0.35 * 0.35);
            assertEquals(expected, noise[0], 1e-12);
        }
    }

    /** However steep and however badly placed, a reading keeps a standard deviation of 0.35 m at most. */
    @Test
    void isCapped() throws InputException {
        Reading lost = Reading.of(2, 10, 1.2);
        Reading badly = new Reading(
                lost.typed(), lost.place(), new Precision(5, 45), 1.2, lost.bottom(), "", lost.time(), lost.extras());
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), List.of(badly)));
        for (StructureFit fit : bottom.fits()) {
            assertEquals(0.35 * 0.35, InputNoise.of(fit, fit.observations())[0], 1e-15);
        }
    }

    /** In a water of four times a peg's depth the cap is four times as high. */
    @Test
    void theCapGrowsWithTheWater() throws InputException {
        Reading deep = Reading.of(6, 0, 12);
        Reading badly = new Reading(
                deep.typed(), deep.place(), new Precision(5, 45), 12, deep.bottom(), "", deep.time(), deep.extras());
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), List.of(badly)));
        assertEquals(4, bottom.scale().vertical(), 1e-12);
        for (StructureFit fit : bottom.fits()) {
            assertEquals(16 * 0.35 * 0.35, InputNoise.of(fit, fit.observations())[0], 1e-12);
        }
    }

    @Test
    void exactPlacesAddNothing() throws InputException {
        Reading r = Reading.of(3, 20, 1.0);
        Reading exact =
                new Reading(r.typed(), r.place(), new Precision(0, 0), 1.0, r.bottom(), "", r.time(), r.extras());
        FittedBottom bottom = TestPegs.fit(
                TestPegs.bend().withVisits(List.of(TestPegs.visit(OptionalDouble.empty(), List.of(exact)))));
        for (StructureFit fit : bottom.fits()) {
            assertEquals(0, InputNoise.of(fit, fit.observations())[0], 0);
        }
    }
}
