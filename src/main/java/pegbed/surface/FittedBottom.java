package pegbed.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import pegbed.model.Monitor;
import pegbed.surface.posterior.BottomChange;
import pegbed.surface.posterior.Disc;
import pegbed.surface.posterior.Gradient;
import pegbed.surface.posterior.Prediction;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.surface.posterior.VisitLevel;
import pegbed.surface.prior.BankDistances;
import pegbed.surface.prior.NeighbourInfluence;
import pegbed.surface.prior.Structure;
import pegbed.surface.survey.Scale;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

/**
 * The fitted bottom, at the water's level of the visit that is shown: a mixture of the posteriors of the
 * {@link Structure}s, weighted by their leave-one-out predictive densities ({@code Stacking}). Its mean is the weighted
 * mean, its variance the weighted mean of the variances and the variance of the means (law of total variance).
 *
 * <p>Immutable; any number of threads may ask it.
 */
public final class FittedBottom {
    private final Survey survey;
    private final NeighbouringPegs neighbours;
    private final List<StructureFit> fits;
    private final double[] weights;
    private final boolean learned;
    private final List<BottomChange> changes;
    private final List<GrossErrors.Call> calls;

    /**
     * A mixture.
     *
     * @param survey all soundings behind it, also where many were averaged to fit it
     * @param neighbours the neighbouring pegs that it was fitted with
     * @param fits of each structure to the same soundings
     * @param weights theirs, adding up to 1; 0 for one that is left out
     * @param learned whether the hyperparameters were learned
     * @param changes where the bottom has changed
     */
    FittedBottom(
            Survey survey,
            NeighbouringPegs neighbours,
            List<StructureFit> fits,
            double[] weights,
            boolean learned,
            List<BottomChange> changes) {
        this(survey, neighbours, fits, weights, learned, changes, List.of());
    }

    private FittedBottom(
            Survey survey,
            NeighbouringPegs neighbours,
            List<StructureFit> fits,
            double[] weights,
            boolean learned,
            List<BottomChange> changes,
            List<GrossErrors.Call> calls) {
        this.survey = survey;
        this.neighbours = neighbours;
        this.fits = List.copyOf(fits);
        this.weights = weights;
        this.learned = learned;
        this.changes = List.copyOf(changes);
        this.calls = List.copyOf(calls);
    }

    /** This bottom with the whole survey that was averaged to fit it. */
    FittedBottom behind(Survey whole) {
        return new FittedBottom(whole, neighbours, fits, weights, learned, changes, calls);
    }

    FittedBottom withChanges(List<BottomChange> found) {
        return new FittedBottom(survey, neighbours, fits, weights, learned, found, calls);
    }

    /** This bottom with other fits, of which some give certain readings a larger error variance. */
    FittedBottom withFits(List<StructureFit> others, double[] theirWeights, List<GrossErrors.Call> called) {
        return new FittedBottom(survey, neighbours, others, theirWeights, learned, changes, called);
    }

    /** This bottom with the calls of the one before a sounding was added. */
    FittedBottom withCallsOf(FittedBottom before, int added) {
        List<GrossErrors.Call> moved = new ArrayList<>();
        for (GrossErrors.Call call : before.calls) {
            int sounding = call.sounding() < added ? call.sounding() : call.sounding() + 1;
            moved.add(new GrossErrors.Call(observation(sounding).orElse(-1), sounding, call.probability()));
        }
        return withFits(fits, weights, moved);
    }

    /** The readings found to be gross errors. */
    List<GrossErrors.Call> calls() {
        return calls;
    }

    /** The soundings behind it, all of them, also where many were averaged to fit it. */
    public Survey survey() {
        return survey;
    }

    /** The neighbouring pegs of the same water that it was fitted with. */
    public NeighbouringPegs neighbours() {
        return neighbours;
    }

    /** Number of real soundings behind it, those from before the bottom was dug out left aside. */
    public int soundings() {
        return survey.used().size();
    }

    /** Number of soundings that it was fitted to: fewer than {@link #soundings()} where many were averaged. */
    public int fittedSoundings() {
        return fits.get(0).observations().real;
    }

    /** Whether the hyperparameters were learned from the soundings; else they are the priors' medians. */
    public boolean learned() {
        return learned;
    }

    /** The scale of the water beside a peg's that the priors were multiplied by. */
    public Scale scale() {
        return fits.get(0).prior().scale();
    }

    /** How much neighbouring pegs of the water count; empty without any. */
    public Optional<NeighbourInfluence> lesson() {
        return fits.stream()
                .flatMap(fit -> fit.prior().shared().lesson().stream())
                .findFirst();
    }

    /**
     * How much a structure counts.
     *
     * @param weight 0 to 1
     */
    public record Weighted(Structure structure, double weight) {}

    /** The structures, the first the one that counts most. */
    public List<Weighted> structures() {
        double[] sums = new double[Structure.values().length];
        for (int s = 0; s < weights.length; s++) {
            sums[fits.get(s).structure().ordinal()] += weights[s];
        }
        return fits.stream()
                .map(StructureFit::structure)
                .distinct()
                .map(structure -> new Weighted(structure, sums[structure.ordinal()]))
                .sorted((a, b) -> Double.compare(b.weight(), a.weight()))
                .toList();
    }

    /** Where a later visit shows that the bottom has changed, the surest first. */
    public List<BottomChange> changes() {
        return changes;
    }

    /**
     * The fits of the structures; where gross errors were found, first those without their extra variance, then those
     * with it.
     */
    List<StructureFit> fits() {
        return fits;
    }

    /** The fit of the tub, gross errors allowed for; empty where there is none. */
    Optional<StructureFit> tub() {
        return fits.stream().filter(fit -> fit.structure() == Structure.TUB).reduce((first, second) -> second);
    }

    /** Weights of the fits, not to be changed. */
    double[] weights() {
        return weights;
    }

    /** Weight of a fit. */
    double weight(int fit) {
        return weights[fit];
    }

    /** Indices of the fits whose weight is above 0. */
    int[] counting() {
        return IntStream.range(0, weights.length).filter(s -> weights[s] > 0).toArray();
    }

    /** How the water of the visit that is shown stands to that of another, from all readings and board measures. */
    public VisitLevel level(int visit) {
        return level(survey.shown(), visit);
    }

    /** How the water of the latest visit, where that is shown, stands to that of every earlier one. */
    public List<VisitLevel> levels() {
        int latest = survey.levels().visits() - 1;
        ExpectedReadings expected = ExpectedReadings.of(this, visit -> visit == latest, visit -> true, List.of());
        return IntStream.range(0, latest)
                .mapToObj(against -> level(latest, against, expected))
                .toList();
    }

    /** How the water of one visit stands to that of another, from all readings and board measures. */
    public VisitLevel level(int of, int against) {
        int later = Math.max(of, against);
        return level(
                of,
                against,
                ExpectedReadings.of(
                        this, visit -> visit == later, visit -> visit == of || visit == against, List.of()));
    }

    /** By how much the water of one visit stood higher than that of another, metres. */
    public double higher(int of, int against) {
        double higher = 0;
        for (int s : counting()) {
            higher += weights[s] * fits.get(s).higher(of, against);
        }
        return higher;
    }

    private VisitLevel level(int of, int against, ExpectedReadings later) {
        long readings = survey.soundings().stream()
                .filter(s -> s.visit() == against && s.isUsed())
                .count();
        double sd = of == against ? 0 : later.levelSd(of, against);
        return new VisitLevel(against, higher(of, against), sd, (int) readings);
    }

    /** The observation that a sounding of the survey is; empty where it was not used, or where many were averaged. */
    OptionalInt observation(int sounding) {
        if (fittedSoundings() != soundings()) {
            return OptionalInt.empty();
        }
        Observations observations = fits.get(0).observations();
        return IntStream.range(0, observations.real)
                .filter(i -> observations.sounding[i] == sounding)
                .findFirst();
    }

    /**
     * Depth and slope at a place; the standard deviation includes the error of laying a rig there
     * ({@code PlacingVariance}).
     */
    public Prediction at(double xMetres, double yMetres) {
        Gradient g = gradients(new double[] {xMetres}, new double[] {yMetres})[0];
        double depth = 0;
        double square = 0;
        for (Component component : components(xMetres, yMetres, g)) {
            double own = component.depthMetres();
            depth += component.weight() * own;
            square += component.weight() * (component.sdMetres() * component.sdMetres() + own * own);
        }
        return new Prediction(depth, Math.sqrt(Math.max(0, square - depth * depth)), g.dx(), g.dy());
    }

    /**
     * The predictive density of one structure at a place, a normal.
     *
     * @param weight how much the structure counts
     * @param depthMetres expected depth, metres
     * @param sdMetres standard deviation, the error of laying a rig there included, metres
     */
    public record Component(double weight, double depthMetres, double sdMetres) {}

    /** The components of the predictive density at a place. */
    public List<Component> components(double xMetres, double yMetres) {
        return components(xMetres, yMetres, gradients(new double[] {xMetres}, new double[] {yMetres})[0]);
    }

    private List<Component> components(double xMetres, double yMetres, Gradient g) {
        double[] x = {xMetres};
        double[] y = {yMetres};
        double placing = PlacingVariance.at(
                BankDistances.of(x, y, survey.coordinates(), scale().horizontal()), 0, g.dx(), g.dy());
        double[] mean = new double[1];
        double[] variance = new double[1];
        List<Component> components = new ArrayList<>();
        for (int s : counting()) {
            fits.get(s).predict(x, y, mean, variance);
            components.add(new Component(weights[s], mean[0], Math.sqrt(variance[0] + placing)));
        }
        return components;
    }

    /** Variance of a depth by the error of laying a rig, away from any bank, square metres. */
    public static double placingVariance(double slopeX, double slopeY) {
        return PlacingVariance.open(slopeX, slopeY);
    }

    /** Gradients at places. */
    Gradient[] gradients(double[] x, double[] y) {
        int[] counting = counting();
        if (counting.length == 1) {
            return fits.get(counting[0]).gradients(x, y);
        }
        double[][] sums = new double[x.length][4];
        for (int s : counting) {
            Gradient[] own = fits.get(s).gradients(x, y);
            for (int i = 0; i < own.length; i++) {
                Gradient g = own[i];
                sums[i][0] += weights[s] * g.dx();
                sums[i][1] += weights[s] * g.dy();
                sums[i][2] += weights[s] * (g.varDx() + g.dx() * g.dx());
                sums[i][3] += weights[s] * (g.varDy() + g.dy() * g.dy());
            }
        }
        Gradient[] gradients = new Gradient[x.length];
        for (int i = 0; i < gradients.length; i++) {
            double[] sum = sums[i];
            gradients[i] = new Gradient(
                    sum[0], sum[1], Math.max(0, sum[2] - sum[0] * sum[0]), Math.max(0, sum[3] - sum[1] * sum[1]));
        }
        return gradients;
    }

    /** The disc about a place. */
    public Disc disc(double xMetres, double yMetres) {
        int[] counting = counting();
        List<Disc.Component> components = new ArrayList<>();
        for (int s : counting) {
            components.add(new Disc.Component(weights[s], fits.get(s).disc(xMetres, yMetres)));
        }
        return Disc.mixture(components);
    }

    /** Every real sounding with its leave-one-out prediction, in the survey's order. */
    public List<ReadingCheck> readings() {
        return ReadingChecks.of(this);
    }

    /** As {@link #readingVariances}, of one. */
    public double readingVariance(Sounding planned) {
        return readingVariances(List.of(planned))[0];
    }

    /**
     * Variances of further plumbed depths about the bottom at their places, for planning: depth noise, and the unsure
     * place as {@link InputNoise} counts it; square metres.
     */
    double[] readingVariances(List<Sounding> planned) {
        double[] variances = new double[planned.size()];
        for (int s : counting()) {
            double[] own = fits.get(s).readingVariances(planned);
            for (int i = 0; i < own.length; i++) {
                variances[i] += weights[s] * own[i];
            }
        }
        return variances;
    }

    /** Variance of a plumbed depth about the bottom where that slopes so, square metres. */
    double readingVariance(Sounding reading, Gradient slope) {
        double variance = 0;
        for (int s : counting()) {
            variance += weights[s] * fits.get(s).readingVariance(reading, slope);
        }
        return variance;
    }

    /** Variance of observation i about the bottom, input noise included, square metres. */
    double observationNoise(int i) {
        double variance = 0;
        for (int s : counting()) {
            variance += weights[s] * fits.get(s).observationNoise(i);
        }
        return variance;
    }

    /** The bottom on a regular grid of {@link Disc#CELL_METRES}. */
    public BottomGrid grid(Monitor monitor) {
        return BottomGrid.of(this, monitor);
    }
}
