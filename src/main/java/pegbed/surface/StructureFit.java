package pegbed.surface;

import java.util.List;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.posterior.Disc;
import pegbed.surface.posterior.Gradient;
import pegbed.surface.prior.BottomCovariance;
import pegbed.surface.prior.Hyperparameters;
import pegbed.surface.prior.PlaceCoordinates;
import pegbed.surface.prior.Priors;
import pegbed.surface.prior.Structure;
import pegbed.surface.prior.StructurePrior;
import pegbed.surface.survey.Levels;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

/**
 * The posterior of the bottom under one structure of the model, at the water's level of the visit that is shown: one
 * Gaussian process conditioned on the soundings and the banks.
 *
 * <p>Immutable; any number of threads may ask it.
 */
final class StructureFit {
    /** Half step of the central differences for gradients, metres. */
    private static final double STEP = 0.12;

    private final Survey survey;
    private final StructurePrior prior;
    private final Observations observations;
    private final Priors priors;
    private final Hyperparameters hyper;
    private final BottomCovariance covariance;
    private final GaussianProcess process;
    private final double[] inputNoise;
    /** Covariance of each observation with the level that is shown. */
    private final double[] shownLevel;

    /**
     * What was solved. Arrays are not copied and not changed.
     *
     * @param survey what was fitted
     * @param prior the structure's at the banks' own level
     * @param priors the hyperparameters' priors
     * @param observations what was conditioned on
     * @param hyper the hyperparameters
     * @param inputNoise what the unsure place of each observation adds to its variance, square metres
     */
    StructureFit(
            Survey survey,
            StructurePrior prior,
            Priors priors,
            Observations observations,
            Hyperparameters hyper,
            double[] inputNoise) {
        Levels levels = survey.levels();
        this.survey = survey;
        this.prior = prior.under(levels.mean(survey.shown()));
        this.priors = priors;
        this.observations = observations;
        this.hyper = hyper;
        this.inputNoise = inputNoise;
        covariance = new BottomCovariance(hyper, prior.scale(), levels.covariance(survey.shown(), survey.shown()));
        process = new GaussianProcess(
                observations.covariance(new BottomCovariance(hyper, prior.scale()), hyper.noise(), inputNoise),
                observations.residual,
                prior.structure() == Structure.BASIN);
        shownLevel = observations.levelCovariances(survey.shown());
    }

    Survey survey() {
        return survey;
    }

    /** The same, conditioned on other values of the same observations. */
    StructureFit on(Observations others) {
        return new StructureFit(survey, prior.under(0), priors, others, hyper, inputNoise);
    }

    Structure structure() {
        return prior.structure();
    }

    Priors priors() {
        return priors;
    }

    Hyperparameters hyperparameters() {
        return hyper;
    }

    /** Estimated height of the water at one visit above that at another, metres. */
    double higher(int of, int against) {
        double[] c = levelCovariances(of, against);
        return survey.levels().mean(of) - survey.levels().mean(against) + GaussianProcess.dot(c, process.alpha());
    }

    /** Covariances of one observation with all of them, noise included, into a row of the observations' length. */
    void observationCovariances(int i, double[] row) {
        double shownVariance = levelWithShown(survey.shown());
        for (int j = 0; j < row.length; j++) {
            row[j] = covariance.between(observations.places, i, observations.places, j)
                    - shownVariance
                    + observations.commonErrorCovariance(i, j);
        }
        row[i] += observations.noise(i, hyper.noise(), inputNoise);
    }

    /** Covariance of each observation with the offset of a visit's depths against those of the visit that is shown. */
    double[] levelCovariances(int visit) {
        return levelCovariances(visit, survey.shown());
    }

    private double[] levelCovariances(int of, int against) {
        double[] c = observations.levelCovariances(of);
        double[] other = against == survey.shown() ? shownLevel : observations.levelCovariances(against);
        for (int j = 0; j < c.length; j++) {
            c[j] -= other[j];
        }
        return c;
    }

    /** Covariance of a visit's level with that of the visit that is shown, square metres. */
    double levelWithShown(int visit) {
        return survey.levels().covariance(visit, survey.shown());
    }

    BottomCovariance covariance() {
        return covariance;
    }

    GaussianProcess process() {
        return process;
    }

    Observations observations() {
        return observations;
    }

    StructurePrior prior() {
        return prior;
    }

    /** Places in all coordinates of this model. */
    PlaceCoordinates places(double[] x, double[] y) {
        return PlaceCoordinates.of(x, y, prior);
    }

    /** Covariances of one place with all observations, into a row of the observations' length. */
    void covariances(PlaceCoordinates places, int i, double[] row) {
        PlaceCoordinates at = observations.places;
        double shownVariance = levelWithShown(survey.shown());
        covariance.between(at, places, i, row);
        for (int j = 0; j < row.length; j++) {
            row[j] += shownLevel[j] - shownVariance;
        }
    }

    /**
     * Covariances of all places with all observations, into a row for each observation of the places' length at least.
     */
    void covariances(PlaceCoordinates places, double[][] rows) {
        covariance.between(places, observations.places, rows);
        for (int j = 0; j < observations.count; j++) {
            addLevel(j, places.count, rows[j]);
        }
    }

    /** Covariances of all places with one observation, into a row of the places' length at least. */
    void covariancesWith(int observation, PlaceCoordinates places, double[] row) {
        covariance.between(places, observations.places, observation, row);
        addLevel(observation, places.count, row);
    }

    /** What an observation's level has in common with the one that is shown. */
    private void addLevel(int observation, int count, double[] row) {
        double level = shownLevel[observation] - levelWithShown(survey.shown());
        for (int i = 0; i < count; i++) {
            row[i] += level;
        }
    }

    /**
     * Mean and variance of the bottom at places.
     *
     * @param depth filled, metres
     * @param variance filled, square metres
     */
    void predict(double[] x, double[] y, double[] depth, double[] variance) {
        PlaceCoordinates at = places(x, y);
        double[] k = new double[observations.count];
        for (int i = 0; i < x.length; i++) {
            covariances(at, i, k);
            depth[i] = prior.depth(at, i) + process.mean(k);
            process.whiten(k);
            variance[i] = Math.max(0, process.covariance(covariance.between(at, i, at, i), k, k, 1, 1));
        }
    }

    /** Gradient by central differences. */
    Gradient gradient(double x, double y) {
        return gradients(new double[] {x}, new double[] {y})[0];
    }

    /** Gradients at places by central differences, all at once. */
    Gradient[] gradients(double[] x, double[] y) {
        int count = x.length;
        PlaceCoordinates around = around(x, y);
        double[] mean = new double[4 * count];
        for (int i = 0; i < mean.length; i++) {
            mean[i] = prior.depth(around, i);
        }
        double[][] whitened = new double[observations.count][2 * count];
        double[] row = new double[4 * count];
        for (int j = 0; j < whitened.length; j++) {
            covariancesWith(j, around, row);
            double pull = process.alpha()[j];
            for (int i = 0; i < row.length; i++) {
                mean[i] += pull * row[i];
            }
            for (int i = 0; i < count; i++) {
                whitened[j][i] = (row[i] - row[count + i]) / (2 * STEP);
                whitened[j][count + i] = (row[2 * count + i] - row[3 * count + i]) / (2 * STEP);
            }
        }
        process.whiten(whitened, 0, 2 * count);
        double[] variance = new double[2 * count];
        for (int i = 0; i < count; i++) {
            variance[i] = differenceVariance(around, i, count + i);
            variance[count + i] = differenceVariance(around, 2 * count + i, 3 * count + i);
        }
        process.takeKnown(variance, whitened, 0);
        Gradient[] gradients = new Gradient[count];
        for (int i = 0; i < count; i++) {
            gradients[i] = new Gradient(
                    (mean[i] - mean[count + i]) / (2 * STEP),
                    (mean[2 * count + i] - mean[3 * count + i]) / (2 * STEP),
                    Math.max(0, variance[i]),
                    Math.max(0, variance[count + i]));
        }
        return gradients;
    }

    /** The places a step to the right of each, then those to the left, beyond and before. */
    private PlaceCoordinates around(double[] x, double[] y) {
        int count = x.length;
        double[] aroundX = new double[4 * count];
        double[] aroundY = new double[4 * count];
        for (int i = 0; i < 4 * count; i++) {
            int side = i / count;
            aroundX[i] = x[i % count] + (side == 0 ? STEP : side == 1 ? -STEP : 0);
            aroundY[i] = y[i % count] + (side == 2 ? STEP : side == 3 ? -STEP : 0);
        }
        return places(aroundX, aroundY);
    }

    private double differenceVariance(PlaceCoordinates p, int a, int b) {
        return (covariance.between(p, a, p, a) + covariance.between(p, b, p, b) - 2 * covariance.between(p, a, p, b))
                / (4 * STEP * STEP);
    }

    /** The disc about a place. */
    Disc disc(double xMetres, double yMetres) {
        double[] x = new double[Disc.NODES];
        double[] y = new double[Disc.NODES];
        for (int i = 0; i < Disc.NODES; i++) {
            x[i] = xMetres + Disc.DX[i] * Disc.CELL_METRES;
            y[i] = yMetres + Disc.DY[i] * Disc.CELL_METRES;
        }
        PlaceCoordinates p = places(x, y);
        double[][] functional = new double[3][observations.count];
        double[] value = new double[3];
        double[] row = new double[observations.count];
        for (int i = 0; i < Disc.NODES; i++) {
            covariances(p, i, row);
            double mean = prior.depth(p, i) + process.mean(row);
            for (int f = 0; f < 3; f++) {
                double w = Disc.weight(f, i);
                value[f] += w * mean;
                for (int j = 0; j < row.length; j++) {
                    functional[f][j] += w * row[j];
                }
            }
        }
        for (double[] f : functional) {
            process.whiten(f);
        }
        double[][] c = new double[3][3];
        for (int f = 0; f < 3; f++) {
            for (int h = 0; h <= f; h++) {
                c[f][h] = process.covariance(
                        discPrior(p, f, h), functional[f], functional[h], f == 0 ? 1 : 0, h == 0 ? 1 : 0);
            }
        }
        return new Disc(value[0], value[1], value[2], c[0][0], c[1][0], c[2][0], c[1][1], c[2][1], c[2][2]);
    }

    private double discPrior(PlaceCoordinates p, int f, int h) {
        double sum = 0;
        for (int i = 0; i < Disc.NODES; i++) {
            double w = Disc.weight(f, i);
            for (int j = 0; j < Disc.NODES && w != 0; j++) {
                sum += w * Disc.weight(h, j) * covariance.between(p, i, p, j);
            }
        }
        return sum;
    }

    /** What the unsure place of each observation adds to its variance, square metres; not to be changed. */
    double[] inputNoise() {
        return inputNoise;
    }

    /** What the unsure place of observation i adds to its variance, square metres. */
    double inputNoise(int i) {
        return inputNoise[i];
    }

    /** Variance of observation i about the bottom, input noise included, square metres. */
    double observationNoise(int i) {
        return observations.noise(i, hyper.noise(), inputNoise);
    }

    /**
     * Variances of further plumbed depths about the bottom at their places, for planning: depth noise, and the unsure
     * place as {@link InputNoise} counts it; square metres.
     */
    double[] readingVariances(List<Sounding> planned) {
        Gradient[] g = gradients(
                planned.stream().mapToDouble(Sounding::xMetres).toArray(),
                planned.stream().mapToDouble(Sounding::yMetres).toArray());
        double[] variances = new double[g.length];
        for (int i = 0; i < g.length; i++) {
            variances[i] = readingVariance(planned.get(i), g[i]);
        }
        return variances;
    }

    /** Variance of a plumbed depth about the bottom where that slopes so, square metres. */
    double readingVariance(Sounding reading, Gradient slope) {
        double depth = hyper.noise() * reading.sdDepthMetres() * prior.scale().vertical();
        return depth * depth + InputNoise.at(slope, reading.varX(), reading.varY(), reading.covXY(), prior.scale());
    }
}
