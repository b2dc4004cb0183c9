package pegbed.surface;

import java.util.Arrays;
import java.util.List;
import pegbed.surface.BankSoundings.Edge;
import pegbed.surface.prior.Covariance;
import pegbed.surface.prior.EdgeDepth;
import pegbed.surface.prior.PlaceCoordinates;
import pegbed.surface.prior.StructurePrior;
import pegbed.surface.survey.Levels;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

/**
 * Everything that the field is conditioned on: the soundings in canonical order, then the banks' own soundings, as
 * parallel arrays. Not changed after it is made.
 */
public final class Observations {
    /** Added to every variance so that the covariance of equal places stays positive definite, square metres. */
    public static final double JITTER = 1e-6;

    final int count;
    /** How many of them, from the start, are real soundings. */
    final int real;
    /** Index of the sounding in the survey, for the real ones. */
    public final int[] sounding;

    final PlaceCoordinates places;
    /** Known mean at each, the level of its visit included, metres. */
    final double[] mean;
    /** Depth less the known mean, metres: as it was read, or what stands for a doubtful reading. */
    public final double[] residual;
    /** By how much what stands for a doubtful reading is deeper than it was read, metres. */
    private final double[] shift;
    /** Depth variance that η² multiplies, square metres. */
    final double[] scaledVariance;
    /** Depth variance that it does not. */
    final double[] fixedVariance;

    final double[] varX;
    final double[] varY;
    final double[] covXY;

    private final int[] visit;
    private final EdgeDepth edge;
    private final Levels levels;

    public Observations(Survey survey, StructurePrior prior) {
        List<Sounding> soundings = survey.soundings();
        List<Edge> edges = survey.water()
                .map(water -> BankSoundings.of(water, survey.used()))
                .orElse(List.of());
        edge = EdgeDepth.of(prior.structure());
        sounding = survey.canonicalOrder();
        real = sounding.length;
        count = real + edges.size();
        levels = survey.levels();
        double[] x = new double[count];
        double[] y = new double[count];
        double[] depth = new double[count];
        scaledVariance = new double[count];
        fixedVariance = new double[count];
        varX = new double[count];
        varY = new double[count];
        covXY = new double[count];
        visit = new int[count];
        shift = new double[count];
        for (int i = 0; i < real; i++) {
            Sounding s = soundings.get(sounding[i]);
            x[i] = s.xMetres();
            y[i] = s.yMetres();
            depth[i] = s.depthMetres();
            double sd = s.sdDepthMetres() * prior.scale().vertical();
            scaledVariance[i] = sd * sd;
            fixedVariance[i] = s.changeSdMetres() * s.changeSdMetres();
            varX[i] = s.varX();
            varY[i] = s.varY();
            covXY[i] = s.covXY();
            visit[i] = s.visit();
        }
        for (int i = real; i < count; i++) {
            Edge e = edges.get(i - real);
            x[i] = e.x();
            y[i] = e.y();
            depth[i] = edge.metres();
            fixedVariance[i] = edge.ownSdMetres() * edge.ownSdMetres();
            varX[i] = e.varX();
            varY[i] = e.varY();
            visit[i] = -1 - e.bank();
        }
        places = PlaceCoordinates.of(x, y, prior);
        mean = new double[count];
        residual = new double[count];
        for (int i = 0; i < count; i++) {
            mean[i] = prior.depth(places, i) + (visit[i] < 0 ? 0 : levels.mean(visit[i]));
            residual[i] = depth[i] - mean[i];
        }
    }

    /**
     * Soundings in open water without banks, all at one level. The arrays are not copied.
     *
     * @param sounding index of each in what they come from
     * @param x places, metres
     * @param y places, metres
     * @param depth metres
     * @param scaledVariance depth variance that η² multiplies, square metres
     * @param varX variance of the place to the right, square metres
     * @param varY variance of the place straight out, square metres
     * @param covXY covariance of the two, square metres
     */
    public record OpenWater(
            int[] sounding,
            double[] x,
            double[] y,
            double[] depth,
            double[] scaledVariance,
            double[] varX,
            double[] varY,
            double[] covXY) {}

    /** Soundings in open water. */
    public Observations(OpenWater soundings, StructurePrior prior) {
        edge = EdgeDepth.of(prior.structure());
        sounding = soundings.sounding();
        real = sounding.length;
        count = real;
        levels = Levels.same(1);
        places = PlaceCoordinates.of(soundings.x(), soundings.y(), prior);
        scaledVariance = soundings.scaledVariance();
        fixedVariance = new double[count];
        varX = soundings.varX();
        varY = soundings.varY();
        covXY = soundings.covXY();
        visit = new int[count];
        shift = new double[count];
        mean = new double[count];
        residual = new double[count];
        for (int i = 0; i < count; i++) {
            mean[i] = prior.depth(places, i);
            residual[i] = soundings.depth()[i] - mean[i];
        }
    }

    private Observations(Observations other, double[] residual, double[] fixedVariance, double[] shift) {
        count = other.count;
        real = other.real;
        sounding = other.sounding;
        places = other.places;
        mean = other.mean;
        scaledVariance = other.scaledVariance;
        varX = other.varX;
        varY = other.varY;
        covXY = other.covXY;
        visit = other.visit;
        edge = other.edge;
        levels = other.levels;
        this.residual = residual;
        this.fixedVariance = fixedVariance;
        this.shift = shift;
    }

    /**
     * These with other readings in the place of doubtful ones.
     *
     * @param deeper by how much each observation is deeper than it was read, metres
     * @param moreVariance by how much its variance is larger, square metres
     */
    Observations moved(double[] deeper, double[] moreVariance) {
        double[] residuals = residual.clone();
        double[] variances = fixedVariance.clone();
        double[] shifts = shift.clone();
        for (int i = 0; i < count; i++) {
            residuals[i] += deeper[i];
            variances[i] += moreVariance[i];
            shifts[i] += deeper[i];
        }
        return new Observations(this, residuals, variances, shifts);
    }

    /** These with what stood for doubtful readings before one observation was added. */
    Observations movedAs(Observations before, int added) {
        double[] deeper = new double[count];
        double[] moreVariance = new double[count];
        for (int i = 0; i < count; i++) {
            if (i != added) {
                int old = i < added ? i : i - 1;
                deeper[i] = before.shift[old];
                moreVariance[i] = before.fixedVariance[old] - fixedVariance[i];
            }
        }
        return moved(deeper, moreVariance);
    }

    /** Depth as it was read, at the level of its visit, metres. */
    double read(int i) {
        return mean[i] + residual[i] - shift[i];
    }

    /** Where they are, in the structure's coordinates. */
    public PlaceCoordinates places() {
        return places;
    }

    /** Index of the visit of an observation; below 0 for the banks' own, one number a bank. */
    int visit(int i) {
        return visit[i];
    }

    /**
     * Covariance of the errors that two observations have in common: the levels of their visits, or how much water
     * stands at the edge of their bank.
     */
    double commonErrorCovariance(int i, int j) {
        if (visit[i] >= 0 && visit[j] >= 0) {
            return levels.covariance(visit[i], visit[j]);
        }
        return visit[i] == visit[j] ? edge.sharedSdMetres() * edge.sharedSdMetres() : 0;
    }

    /** Covariance of each observation with the level of a visit. */
    double[] levelCovariances(int v) {
        double[] all = new double[count];
        for (int i = 0; i < real; i++) {
            all[i] = levels.covariance(v, visit[i]);
        }
        return all;
    }

    /** Variance of observation i about the bottom at the place that was meant. */
    double noise(int i, double eta, double[] inputNoise) {
        return eta * eta * scaledVariance[i] + fixedVariance[i] + inputNoise[i] + JITTER;
    }

    /** Covariance of all observations, noise included, row by row. */
    public double[] covariance(Covariance k, double eta, double[] inputNoise) {
        double[] matrix = new double[count * count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < i; j++) {
                double value = k.between(places, i, places, j) + commonErrorCovariance(i, j);
                matrix[i * count + j] = value;
                matrix[j * count + i] = value;
            }
            matrix[i * count + i] =
                    k.between(places, i, places, i) + commonErrorCovariance(i, i) + noise(i, eta, inputNoise);
        }
        return matrix;
    }

    /** What the position noise adds before the slopes are known: a sixteenth of half the trace of S. */
    public double[] firstInputNoise() {
        double[] inputNoise = new double[count];
        Arrays.setAll(inputNoise, i -> firstInputNoise(varX[i], varY[i]));
        return inputNoise;
    }

    public static double firstInputNoise(double varX, double varY) {
        return 0.0625 * (varX + varY) / 2;
    }
}
