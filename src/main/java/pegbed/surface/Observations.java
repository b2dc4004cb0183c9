package pegbed.surface;

import java.util.Arrays;
import java.util.List;
import pegbed.geometry.BankCoordinates;
import pegbed.surface.BankSoundings.Edge;
import pegbed.surface.prior.Covariance;
import pegbed.surface.prior.PlaceCoordinates;
import pegbed.surface.prior.PriorMean;
import pegbed.surface.survey.Levels;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

/**
 * Everything that the field is conditioned on: the soundings in canonical order, then the banks' own soundings, as
 * parallel arrays. Not changed after it is made.
 */
public final class Observations {
    /** Added to every variance so that equal places can be told apart, square metres. */
    public static final double JITTER = 1e-6;

    final int count;
    /** How many of them, from the start, are real soundings. */
    final int real;
    /** Index of the sounding in the survey, for the real ones. */
    public final int[] sounding;

    final PlaceCoordinates places;
    /** Known mean at each, the level of its visit included, metres. */
    final double[] mean;
    /** Depth less the known mean, metres. */
    public final double[] residual;
    /** Depth variance that η² multiplies, square metres. */
    final double[] scaledVariance;
    /** Depth variance that it does not. */
    final double[] fixedVariance;

    final double[] varX;
    final double[] varY;
    final double[] covXY;

    private final int[] visit;
    private final Levels levels;

    public Observations(Survey survey, PriorMean tub) {
        List<Sounding> soundings = survey.soundings();
        List<Edge> edges = survey.water()
                .map(water -> BankSoundings.of(water, survey.used()))
                .orElse(List.of());
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
        for (int i = 0; i < real; i++) {
            Sounding s = soundings.get(sounding[i]);
            x[i] = s.xMetres();
            y[i] = s.yMetres();
            depth[i] = s.depthMetres();
            double sd = s.sdDepthMetres() * tub.scale().vertical();
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
            depth[i] = e.depth();
            fixedVariance[i] = e.variance();
            varX[i] = e.varX();
            varY[i] = e.varY();
            visit[i] = -1;
        }
        places = PlaceCoordinates.of(x, y, survey.coordinates(), tub);
        mean = new double[count];
        residual = new double[count];
        for (int i = 0; i < count; i++) {
            mean[i] = tub.depth(places, i) + (visit[i] < 0 ? 0 : levels.mean(visit[i]));
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
    public Observations(OpenWater soundings, PriorMean tub) {
        sounding = soundings.sounding();
        real = sounding.length;
        count = real;
        levels = Levels.same(1);
        places = PlaceCoordinates.of(soundings.x(), soundings.y(), BankCoordinates.OPEN, tub);
        scaledVariance = soundings.scaledVariance();
        fixedVariance = new double[count];
        varX = soundings.varX();
        varY = soundings.varY();
        covXY = soundings.covXY();
        visit = new int[count];
        mean = new double[count];
        residual = new double[count];
        for (int i = 0; i < count; i++) {
            mean[i] = tub.depth(places, i);
            residual[i] = soundings.depth()[i] - mean[i];
        }
    }

    /** Index of the visit of an observation; -1 for the banks' own. */
    int visit(int i) {
        return visit[i];
    }

    /** Covariance that two observations share because of the levels of their visits. */
    double levelCovariance(int i, int j) {
        return visit[i] < 0 || visit[j] < 0 ? 0 : levels.covariance(visit[i], visit[j]);
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
    double noise(int i, double eta, double[] placing) {
        return eta * eta * scaledVariance[i] + fixedVariance[i] + placing[i] + JITTER;
    }

    /** Covariance of all observations, noise included, row by row. */
    public double[] covariance(Covariance k, double eta, double[] placing) {
        double[] matrix = new double[count * count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < i; j++) {
                double value = k.between(places, i, places, j) + levelCovariance(i, j);
                matrix[i * count + j] = value;
                matrix[j * count + i] = value;
            }
            matrix[i * count + i] = k.between(places, i, places, i) + levelCovariance(i, i) + noise(i, eta, placing);
        }
        return matrix;
    }

    /** What the position noise adds before the slopes are known: a sixteenth of half the trace of S. */
    public double[] firstPlacing() {
        double[] placing = new double[count];
        Arrays.setAll(placing, i -> firstPlacing(varX[i], varY[i]));
        return placing;
    }

    public static double firstPlacing(double varX, double varY) {
        return 0.0625 * (varX + varY) / 2;
    }
}
