package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Precision;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.prior.BottomCovariance;
import pegbed.surface.prior.Hyperparameters;
import pegbed.surface.prior.PriorMean;
import pegbed.surface.prior.Priors;
import pegbed.surface.survey.Scale;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

class LogPosteriorTest {
    private static final double H = 1e-5;

    private static void check(Survey survey, Scale scale, boolean open) {
        PriorMean tub = new PriorMean(survey.coordinates(), scale);
        Observations observations = new Observations(survey, tub);
        Priors priors = open ? Priors.open(scale) : Priors.banked(scale);
        LogPosterior objective = new LogPosterior(observations, priors, scale, observations.firstPlacing(), open, 1);
        double[][] steps = {{0, 0, 0, 0, 0, 0}, {0.2, -0.1, 0.3, -0.2, 0.15, -0.3}, {-0.3, 0.2, -0.2, 0.4, -0.2, 0.5}};
        for (double[] step : steps) {
            double[] at = priors.logMedians().clone();
            for (int i = 0; i < at.length; i++) {
                at[i] += step[i];
            }
            double[] gradient = new double[at.length];
            objective.value(at, gradient);
            for (int i = 0; i < at.length; i++) {
                double[] up = at.clone();
                double[] down = at.clone();
                up[i] += H;
                down[i] -= H;
                double[] unused = new double[at.length];
                double expected = (objective.value(up, unused) - objective.value(down, unused)) / (2 * H);
                assertEquals(expected, gradient[i], 1e-5 * Math.max(1, Math.abs(expected)), "variable " + i);
            }
        }
    }

    @Test
    void gradientBetweenBanks() throws InputException {
        check(Survey.of(TestPegs.with(TestPegs.bendWithIsland(), TestPegs.fan(20, 1))), Scale.PEG, false);
    }

    @Test
    void gradientWithTwoVisits() throws InputException {
        Peg peg = TestPegs.bend()
                .withVisits(List.of(
                        TestPegs.visit(OptionalDouble.of(0.3), TestPegs.fan(8, 2)),
                        TestPegs.visit(OptionalDouble.empty(), TestPegs.fan(8, 3))));
        check(Survey.of(peg), new Scale(1.4, 1), false);
    }

    @Test
    void gradientInOpenWater() {
        List<Sounding> soundings = TestPegs.fan(20, 4).stream()
                .map(r -> new Sounding(
                        10 * r.place().xMetres(),
                        10 * r.place().yMetres(),
                        5 * r.depthMetres(),
                        0.02,
                        new Precision(1, 1),
                        0))
                .toList();
        check(Survey.open(soundings), Scale.of(soundings), true);
    }

    /** The value is the penalty of the priors less the log marginal likelihood of the same covariance. */
    @Test
    void valueIsThatOfTheModelItself() throws InputException {
        Survey survey = Survey.of(TestPegs.with(TestPegs.bend(), TestPegs.fan(20, 5)));
        PriorMean tub = new PriorMean(survey.coordinates(), Scale.PEG);
        Observations observations = new Observations(survey, tub);
        Priors priors = Priors.banked(Scale.PEG);
        double[] placing = observations.firstPlacing();
        double[] logs = priors.logMedians().clone();
        logs[0] += 0.1;
        logs[5] -= 0.2;
        Hyperparameters hyper = Hyperparameters.ofLogs(logs);
        double[] k = observations.covariance(new BottomCovariance(hyper, Scale.PEG, false), hyper.noise(), placing);
        double expected =
                priors.penalty(logs) - new GaussianProcess(k, observations.residual, false).logMarginalLikelihood();
        double value = new LogPosterior(observations, priors, Scale.PEG, placing, false, 1).value(logs, new double[6]);
        assertEquals(expected, value, 1e-9);
        // (0.1/0.25)²/2 + (0.2/0.25)²/2
        assertEquals(0.08 + 0.32, priors.penalty(logs), 1e-12);
    }

    @Test
    void learnsWithinItsBounds() throws InputException {
        Hyperparameters learned = TestPegs.fit(TestPegs.with(TestPegs.bend(), TestPegs.fan(40, 6)))
                .hyperparameters();
        Priors priors = Priors.banked(Scale.PEG);
        double[] values = {
            learned.profileSdMetres(),
            learned.acrossMetres(),
            learned.alongMetres(),
            learned.localSdMetres(),
            learned.localMetres(),
            learned.noise()
        };
        for (int i = 0; i < values.length; i++) {
            double z = (Math.log(values[i]) - priors.logMedians()[i]) / priors.logSds()[i];
            assertEquals(0, z, Priors.CLAMP + 1e-9);
        }
    }
}
