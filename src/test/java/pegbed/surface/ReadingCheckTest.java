package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.posterior.Gradient;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.surface.prior.BottomCovariance;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

class ReadingCheckTest {
    /** Solves every structure again without one observation, with the same hyperparameters, weights and input noise. */
    private static void checkByLeavingOut(FittedBottom bottom, boolean unknownConstant) {
        Observations first = bottom.fits().get(0).observations();
        double[] expected = new double[first.real];
        double[] square = new double[first.real];
        for (int s : bottom.counting()) {
            StructureFit fit = bottom.fits().get(s);
            for (int out = 0; out < first.real; out++) {
                double[] without = withoutOne(fit, out, unknownConstant);
                expected[out] += bottom.weight(s) * without[0];
                square[out] += bottom.weight(s) * (without[1] + without[0] * without[0]);
            }
        }
        List<ReadingCheck> checks = bottom.readings();
        for (int out = 0; out < first.real; out++) {
            ReadingCheck check = checks.get(first.sounding[out]);
            assertEquals(first.sounding[out], check.sounding());
            assertEquals(expected[out], check.expectedMetres(), 1e-8);
            assertEquals(Math.sqrt(square[out] - expected[out] * expected[out]), check.expectedSdMetres(), 1e-7);
            Sounding s = bottom.survey().soundings().get(check.sounding());
            assertEquals(s.depthMetres(), check.readMetres(), 1e-12);
        }
    }

    /** Mean and variance of a reading that one structure expects without it. */
    private static double[] withoutOne(StructureFit fit, int out, boolean unknownConstant) {
        Observations o = fit.observations();
        int n = o.count;
        BottomCovariance covariance =
                new BottomCovariance(fit.hyperparameters(), fit.prior().scale());
        double[] k = o.covariance(covariance, fit.hyperparameters().noise(), fit.inputNoise());
        double[] rest = new double[(n - 1) * (n - 1)];
        double[] y = new double[n - 1];
        double[] cross = new double[n - 1];
        for (int i = 0; i < n - 1; i++) {
            int a = i < out ? i : i + 1;
            y[i] = o.residual[a];
            cross[i] = k[a * n + out];
            for (int j = 0; j < n - 1; j++) {
                rest[i * (n - 1) + j] = k[a * n + (j < out ? j : j + 1)];
            }
        }
        GaussianProcess without = new GaussianProcess(rest, y, unknownConstant);
        double mean = o.mean[out] + without.mean(cross);
        without.whiten(cross);
        return new double[] {mean, without.covariance(k[out * n + out], cross, cross, 1, 1)};
    }

    @Test
    void leaveOneOutIsLeavingTheReadingOut() throws InputException {
        checkByLeavingOut(TestPegs.fit(TestPegs.with(TestPegs.bendWithIsland(), TestPegs.fan(20, 51))), false);
    }

    @Test
    void leaveOneOutIsLeavingTheReadingOutWithTwoVisits() throws InputException {
        Peg peg = TestPegs.bend()
                .withVisits(List.of(
                        TestPegs.visit(OptionalDouble.empty(), TestPegs.fan(9, 52)),
                        TestPegs.visit(OptionalDouble.empty(), TestPegs.fan(9, 53))));
        checkByLeavingOut(TestPegs.fit(peg), false);
    }

    @Test
    void leaveOneOutIsLeavingTheSoundingOutInOpenWater() {
        List<Sounding> soundings =
                TestPegs.fan(20, 54).stream().map(r -> Sounding.of(r, 0)).toList();
        checkByLeavingOut(BottomModel.fit(Survey.open(soundings), Monitor.NONE), true);
    }

    @Test
    void aSlipOfAMetreIsShownWithWhatItShouldHaveBeen() throws InputException {
        List<Reading> readings = new ArrayList<>(TestPegs.fan(30, 55));
        pegbed.model.Place place = pegbed.model.Place.polar(6, 20);
        double truth = TestPegs.bottom(place.xMetres(), place.yMetres());
        readings.add(Reading.of(6, 20, truth + 1.0));
        List<ReadingCheck> checks =
                TestPegs.fit(TestPegs.with(TestPegs.bend(), readings)).readings();
        ReadingCheck slip = checks.get(30);
        assertTrue(slip.standardised() > 3, "it lies " + slip.standardised() + " sd off");
        assertEquals(truth, slip.expectedMetres(), 0.25);
        assertEquals(30, slip.sounding());
        assertTrue(checks.stream().filter(c -> c.standardised() > 3).count() == 1);
    }

    /** The residual is what was read less the fitted bottom at that place, at the shown visit's own level. */
    @Test
    void residualIsReadLessFitted() throws InputException {
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), TestPegs.fan(12, 56)));
        for (ReadingCheck check : bottom.readings()) {
            Sounding s = bottom.survey().soundings().get(check.sounding());
            double fitted = bottom.at(s.xMetres(), s.yMetres()).depthMetres();
            assertEquals(s.depthMetres() - fitted, check.residualMetres(), 1e-9);
        }
    }

    /**
     * A reading planned where one was taken is as unsure as its depth and its placing on the slope there, itself
     * unsure.
     */
    @Test
    void aPlannedReadingIsAsUnsureAsItsDepthAndPlace() throws InputException {
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), TestPegs.fan(12, 57)));
        Sounding planned = Sounding.of(Reading.of(4, 30, 0), 0);
        double expected = 0;
        for (int s : bottom.counting()) {
            StructureFit fit = bottom.fits().get(s);
            Gradient g = fit.gradient(planned.xMetres(), planned.yMetres());
            double noise = fit.hyperparameters().noise() * 0.02;
            double sin = 0.5;
            double cos = Math.sqrt(3) / 2;
            double along = 0.15 * (g.dx() * sin + g.dy() * cos);
            double across = 4 * Math.toRadians(3) * (g.dx() * cos - g.dy() * sin);
            double unsureSlope = planned.varX() * g.varDx() + planned.varY() * g.varDy();
            expected += bottom.weight(s) * (noise * noise + along * along + across * across + unsureSlope);
        }
        assertEquals(expected, bottom.readingVariance(planned), 1e-12);
    }
}
