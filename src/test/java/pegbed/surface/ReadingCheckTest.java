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
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

class ReadingCheckTest {
    /** Solves again without one observation, with the same hyperparameters and placing noise. */
    private static void checkByLeavingOut(FittedBottom bottom, boolean unknownConstant) {
        Observations o = bottom.observations();
        double[] placing = InputNoise.of(bottom, o);
        double eta = bottom.hyperparameters().noise();
        // The model's own last placing noise is not kept apart; this test solves both sides with the same one.
        double[] k = o.covariance(bottom.covariance(), eta, placing);
        GaussianProcess all = new GaussianProcess(k, o.residual, unknownConstant);
        FittedBottom same = new FittedBottom(
                bottom.survey(),
                NeighbouringPegs.NONE,
                new FittedBottom.Solution(bottom.tub(), o, bottom.hyperparameters(), bottom.covariance(), all, placing),
                bottom.learned(),
                bottom.changes());
        List<ReadingCheck> checks = same.readings();
        int n = o.count;
        for (int out = 0; out < o.real; out++) {
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
            double expected = o.mean[out] + without.mean(cross);
            without.whiten(cross);
            double variance = without.covariance(k[out * n + out], cross, cross, 1, 1);
            ReadingCheck check = checks.get(o.sounding[out]);
            assertEquals(o.sounding[out], check.sounding());
            assertEquals(expected, check.expectedMetres(), 1e-8);
            assertEquals(Math.sqrt(variance), check.expectedSdMetres(), 1e-8);
            Sounding s = bottom.survey().soundings().get(check.sounding());
            assertEquals(s.depthMetres(), check.readMetres(), 1e-12);
        }
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

    /** A reading planned where one was taken is as unsure as its depth and its placing on the slope there, itself unsure. */
    @Test
    void aPlannedReadingIsAsUnsureAsItsDepthAndPlace() throws InputException {
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), TestPegs.fan(12, 57)));
        Sounding planned = Sounding.of(Reading.of(4, 30, 0), 0);
        Gradient g = bottom.gradient(planned.xMetres(), planned.yMetres());
        double noise = bottom.hyperparameters().noise() * 0.02;
        double sin = 0.5;
        double cos = Math.sqrt(3) / 2;
        double along = 0.15 * (g.dx() * sin + g.dy() * cos);
        double across = 4 * Math.toRadians(3) * (g.dx() * cos - g.dy() * sin);
        double unsureSlope = planned.varX() * g.varDx() + planned.varY() * g.varDy();
        assertEquals(
                noise * noise + along * along + across * across + unsureSlope, bottom.readingVariance(planned), 1e-12);
    }
}
