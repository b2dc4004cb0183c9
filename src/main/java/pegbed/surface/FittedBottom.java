package pegbed.surface;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import pegbed.model.Monitor;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.posterior.BottomChange;
import pegbed.surface.posterior.Disc;
import pegbed.surface.posterior.Gradient;
import pegbed.surface.posterior.Prediction;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.surface.posterior.VisitLevel;
import pegbed.surface.prior.BottomCovariance;
import pegbed.surface.prior.Hyperparameters;
import pegbed.surface.prior.NeighbourInfluence;
import pegbed.surface.prior.PlaceCoordinates;
import pegbed.surface.prior.PriorMean;
import pegbed.surface.survey.Scale;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

/**
 * The bottom that the model has fitted, at the water's level of the visit that is shown.
 *
 * <p>Immutable; any number of threads may ask it.
 */
public final class FittedBottom {
    /** Half step of the central differences for gradients, metres. */
    private static final double STEP = 0.12;

    /** Standard deviation with which an angler lays a rig where it is wanted, metres (common practice). */
    private static final double LAYING_SD = 0.14;

    private final Survey survey;
    private final NeighbouringPegs neighbours;
    private final Solution solution;
    private final PriorMean tub;
    private final Observations observations;
    private final Hyperparameters hyper;
    private final BottomCovariance covariance;
    private final GaussianProcess conditioned;
    private final double[] placing;
    /** Covariance of each observation with the level that is shown. */
    private final double[] shownLevel;

    private final boolean learned;
    private final List<BottomChange> changes;

    /**
     * What was solved. Arrays are not copied and not changed.
     *
     * @param tub the mean at the shown level
     * @param observations what was conditioned on
     * @param hyper the hyperparameters
     * @param covariance of the bottom at the shown level
     * @param conditioned the factored covariance of the observations
     * @param placing what the unsure place of each observation adds to its variance, square metres
     */
    record Solution(
            PriorMean tub,
            Observations observations,
            Hyperparameters hyper,
            BottomCovariance covariance,
            GaussianProcess conditioned,
            double[] placing) {}

    FittedBottom(
            Survey survey,
            NeighbouringPegs neighbours,
            Solution solution,
            boolean learned,
            List<BottomChange> changes) {
        this.survey = survey;
        this.neighbours = neighbours;
        this.solution = solution;
        this.tub = solution.tub();
        this.observations = solution.observations();
        this.hyper = solution.hyper();
        this.covariance = solution.covariance();
        this.conditioned = solution.conditioned();
        this.placing = solution.placing();
        this.learned = learned;
        this.shownLevel = observations.levelCovariances(survey.shown());
        this.changes = List.copyOf(changes);
    }

    /** This bottom with the whole survey that was condensed to fit it. */
    FittedBottom behind(Survey whole) {
        return new FittedBottom(whole, neighbours, solution, learned, changes);
    }

    /** The soundings behind it, all of them, also where many were condensed to fit it. */
    public Survey survey() {
        return survey;
    }

    /** The neighbouring pegs of the same water that it was fitted with. */
    public NeighbouringPegs neighbours() {
        return neighbours;
    }

    /** This bottom as one that was fitted with neighbouring pegs. */
    FittedBottom with(NeighbouringPegs others) {
        return new FittedBottom(survey, others, solution, learned, changes);
    }

    /** Number of real soundings behind it, those from before the bottom was dug out left aside. */
    public int soundings() {
        return survey.used().size();
    }

    /** Number of soundings that it was fitted to: fewer than {@link #soundings()} where many were condensed. */
    public int fittedSoundings() {
        return observations.real;
    }

    /** Whether the hyperparameters were learned from the soundings; else they are the priors' medians. */
    public boolean learned() {
        return learned;
    }

    public Hyperparameters hyperparameters() {
        return hyper;
    }

    /** The scale of the water beside a peg's that the priors were multiplied by. */
    public Scale scale() {
        return tub.scale();
    }

    /** What other pegs of the water told of it before its readings; empty without any. */
    public Optional<NeighbourInfluence> lesson() {
        return tub.shared().lesson();
    }

    /** Where a later visit shows that the bottom has changed, the surest first. */
    public List<BottomChange> changes() {
        return changes;
    }

    FittedBottom withChanges(List<BottomChange> found) {
        return new FittedBottom(survey, neighbours, solution, learned, found);
    }

    /** How the water of the visit that is shown stands to that of another, from all readings and board measures. */
    public VisitLevel level(int visit) {
        return level(survey.shown(), visit);
    }

    /** How the water of one visit stands to that of another, from all readings and board measures. */
    public VisitLevel level(int of, int against) {
        double[] c = levelCovariances(of, against);
        double higher =
                survey.levels().mean(of) - survey.levels().mean(against) + GaussianProcess.dot(c, conditioned.alpha());
        long readings = survey.soundings().stream()
                .filter(s -> s.visit() == against && s.isUsed())
                .count();
        int later = Math.max(of, against);
        double sd = of == against
                ? 0
                : ExpectedReadings.of(this, visit -> visit == later).levelSd(of, against);
        return new VisitLevel(against, higher, sd, (int) readings);
    }

    /** Covariances of one observation with all of them, noise included, into a row of the observations' length. */
    void observationCovariances(int i, double[] row) {
        double shownVariance = levelWithShown(survey.shown());
        for (int j = 0; j < row.length; j++) {
            row[j] = covariance.between(observations.places, i, observations.places, j)
                    - shownVariance
                    + observations.levelCovariance(i, j);
        }
        row[i] += observations.noise(i, hyper.noise(), placing);
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

    GaussianProcess conditioned() {
        return conditioned;
    }

    Observations observations() {
        return observations;
    }

    PriorMean tub() {
        return tub;
    }

    /** The observation that a sounding of the survey is; empty where it was not used, or where many were condensed. */
    OptionalInt observation(int sounding) {
        if (fittedSoundings() != soundings()) {
            return OptionalInt.empty();
        }
        return IntStream.range(0, observations.real)
                .filter(i -> observations.sounding[i] == sounding)
                .findFirst();
    }

    /** Places in all coordinates of this model. */
    PlaceCoordinates places(double[] x, double[] y) {
        return PlaceCoordinates.of(x, y, survey.coordinates(), tub);
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

    /** Covariances of all places with all observations, into a row for each observation of the places' length at least. */
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

    /** The bottom at a place. */
    public Prediction at(double xMetres, double yMetres) {
        PlaceCoordinates place = places(new double[] {xMetres}, new double[] {yMetres});
        double[] k = new double[observations.count];
        covariances(place, 0, k);
        double depth = tub.depth(place, 0) + conditioned.mean(k);
        conditioned.whiten(k);
        double variance = conditioned.covariance(covariance.between(place, 0, place, 0), k, k, 1, 1);
        Gradient g = gradient(xMetres, yMetres);
        return new Prediction(depth, Math.sqrt(Math.max(variance, 0) + layingVariance(g.dx(), g.dy())), g.dx(), g.dy());
    }

    /** What the angler's own laying of the rig adds to the variance on a slope, square metres. */
    public static double layingVariance(double slopeX, double slopeY) {
        return LAYING_SD * LAYING_SD * (slopeX * slopeX + slopeY * slopeY);
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
            mean[i] = tub.depth(around, i);
        }
        double[][] whitened = new double[observations.count][2 * count];
        double[] row = new double[4 * count];
        for (int j = 0; j < whitened.length; j++) {
            covariancesWith(j, around, row);
            double pull = conditioned.alpha()[j];
            for (int i = 0; i < row.length; i++) {
                mean[i] += pull * row[i];
            }
            for (int i = 0; i < count; i++) {
                whitened[j][i] = (row[i] - row[count + i]) / (2 * STEP);
                whitened[j][count + i] = (row[2 * count + i] - row[3 * count + i]) / (2 * STEP);
            }
        }
        conditioned.whiten(whitened, 0, 2 * count);
        double[] variance = new double[2 * count];
        for (int i = 0; i < count; i++) {
            variance[i] = differenceVariance(around, i, count + i);
            variance[count + i] = differenceVariance(around, 2 * count + i, 3 * count + i);
        }
        conditioned.takeKnown(variance, whitened, 0);
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
    public Disc disc(double xMetres, double yMetres) {
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
            double mean = tub.depth(p, i) + conditioned.mean(row);
            for (int f = 0; f < 3; f++) {
                double w = Disc.weight(f, i);
                value[f] += w * mean;
                for (int j = 0; j < row.length; j++) {
                    functional[f][j] += w * row[j];
                }
            }
        }
        for (double[] f : functional) {
            conditioned.whiten(f);
        }
        double[][] c = new double[3][3];
        for (int f = 0; f < 3; f++) {
            for (int h = 0; h <= f; h++) {
                c[f][h] = conditioned.covariance(
                        prior(p, f, h), functional[f], functional[h], f == 0 ? 1 : 0, h == 0 ? 1 : 0);
            }
        }
        return new Disc(value[0], value[1], value[2], c[0][0], c[1][0], c[2][0], c[1][1], c[2][1], c[2][2]);
    }

    private double prior(PlaceCoordinates p, int f, int h) {
        double sum = 0;
        for (int i = 0; i < Disc.NODES; i++) {
            double w = Disc.weight(f, i);
            for (int j = 0; j < Disc.NODES && w != 0; j++) {
                sum += w * Disc.weight(h, j) * covariance.between(p, i, p, j);
            }
        }
        return sum;
    }

    /** Every real sounding beside what the model makes of it, in the survey's order. */
    public List<ReadingCheck> readings() {
        return ReadingChecks.of(this);
    }

    /** What the unsure place of observation i adds to its variance, square metres. */
    double placing(int i) {
        return placing[i];
    }

    /** Variance of observation i about the bottom, placing included, square metres. */
    double observationNoise(int i) {
        return observations.noise(i, hyper.noise(), placing);
    }

    /** As {@link #readingVariances}, of one. */
    public double readingVariance(Sounding planned) {
        return readingVariances(List.of(planned))[0];
    }

    /**
     * Variances of further plumbed depths about the bottom at their places, for planning: depth noise, and the unsure place
     * as {@link InputNoise} counts it; square metres.
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
        double depth = hyper.noise() * reading.sdDepthMetres() * tub.scale().vertical();
        return depth * depth + InputNoise.placing(slope, reading.varX(), reading.varY(), reading.covXY(), tub.scale());
    }

    /** The bottom on a regular grid of {@link Disc#CELL_METRES}. */
    public BottomGrid grid(Monitor monitor) {
        return BottomGrid.of(this, monitor);
    }
}
