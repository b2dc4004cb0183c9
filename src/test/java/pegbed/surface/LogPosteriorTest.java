package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Precision;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.prior.BottomCovariance;
import pegbed.surface.prior.Hyperparameters;
import pegbed.surface.prior.Hyperparameters.Variable;
import pegbed.surface.prior.Priors;
import pegbed.surface.prior.Structure;
import pegbed.surface.prior.StructurePrior;
import pegbed.surface.survey.Scale;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

class LogPosteriorTest {
    private static final double H = 1e-5;

    private static void check(Survey survey, Scale scale, Structure structure) {
        StructurePrior prior = new StructurePrior(structure, survey.coordinates(), scale);
        check(survey, prior, prior.priors());
    }

    private static void check(Survey survey, StructurePrior prior, Priors priors) {
        Observations observations = new Observations(survey, prior);
        LogPosterior objective = new LogPosterior(
                observations,
                priors,
                prior.scale(),
                observations.firstInputNoise(),
                prior.structure() == Structure.BASIN);
        double[][] steps = {
            {0, 0, 0, 0, 0, 0, 0, 0},
            {0.2, -0.1, 0.3, -0.2, 0.15, -0.3, 0.1, -0.2},
            {-0.3, 0.2, -0.2, 0.4, -0.2, 0.5, -0.1, 0.3}
        };
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
                assertEquals(
                        expected,
                        gradient[i],
                        1e-5 * Math.max(1, Math.abs(expected)),
                        "variable " + priors.variables()[i]);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Structure.class,
            names = {"TUB", "FALL", "OPEN"})
    void gradientBetweenBanks(Structure structure) throws InputException {
        check(Survey.of(TestPegs.with(TestPegs.bendWithIsland(), TestPegs.fan(20, 1))), Scale.PEG, structure);
    }

    /** A covariance of every term at once, whether or not a structure has them all. */
    @Test
    void gradientOfAllTerms() throws InputException {
        Survey survey = Survey.of(TestPegs.with(TestPegs.bendWithIsland(), TestPegs.fan(20, 1)));
        double[] medians = {0.3, 1.4, 12, 0.2, 3, 0.08, 1.2, 1.1};
        Priors all = new Priors(
                Variable.values(),
                Arrays.stream(medians).map(Math::log).toArray(),
                new double[] {0.5, 0.5, 0.4, 0.6, 0.5, 0.5, 0.3, 0.25});
        check(survey, new StructurePrior(Structure.TUB, survey.coordinates(), Scale.PEG), all);
    }

    @ParameterizedTest
    @EnumSource(
            value = Structure.class,
            names = {"TUB", "FALL", "OPEN"})
    void gradientWithTwoVisits(Structure structure) throws InputException {
        Peg peg = TestPegs.bend()
                .withVisits(List.of(
                        TestPegs.visit(OptionalDouble.of(0.3), TestPegs.fan(8, 2)),
                        TestPegs.visit(OptionalDouble.empty(), TestPegs.fan(8, 3))));
        check(Survey.of(peg), new Scale(1.4, 1), structure);
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
        check(Survey.open(soundings), Scale.of(soundings), Structure.BASIN);
    }

    /** The value is the penalty of the priors less the log marginal likelihood of the same covariance. */
    @ParameterizedTest
    @EnumSource(
            value = Structure.class,
            names = {"TUB", "FALL", "OPEN"})
    void valueIsThatOfTheModelItself(Structure structure) throws InputException {
        Survey survey = Survey.of(TestPegs.with(TestPegs.bend(), TestPegs.fan(20, 5)));
        StructurePrior prior = new StructurePrior(structure, survey.coordinates(), Scale.PEG);
        Observations observations = new Observations(survey, prior);
        Priors priors = prior.priors();
        double[] inputNoise = observations.firstInputNoise();
        double[] logs = priors.logMedians().clone();
        int last = logs.length - 1;
        logs[0] += 0.1;
        logs[last] -= 0.2;
        Hyperparameters hyper = Hyperparameters.ofLogs(priors.variables(), logs);
        double[] k = observations.covariance(new BottomCovariance(hyper, Scale.PEG), hyper.noise(), inputNoise);
        double expected =
                priors.penalty(logs) - new GaussianProcess(k, observations.residual, false).logMarginalLikelihood();
        double value = new LogPosterior(observations, priors, Scale.PEG, inputNoise, false)
                .value(logs, new double[logs.length]);
        assertEquals(expected, value, 1e-9);
        double first = 0.1 / priors.logSds()[0];
        double second = 0.2 / priors.logSds()[last];
        assertEquals((first * first + second * second) / 2, priors.penalty(logs), 1e-12);
    }

    @Test
    void learnsWithinItsBounds() throws InputException {
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), TestPegs.fan(40, 6)));
        for (StructureFit fit : bottom.fits()) {
            Priors priors = fit.priors();
            double[] logs = fit.hyperparameters().logs(priors.variables());
            boolean moved = false;
            for (int i = 0; i < logs.length; i++) {
                double z = (logs[i] - priors.logMedians()[i]) / priors.logSds()[i];
                assertEquals(0, z, Priors.CLAMP + 1e-9);
                moved |= Math.abs(z) > 0.1;
            }
            assertTrue(moved, "40 readings move something of " + fit.structure());
        }
    }
}
