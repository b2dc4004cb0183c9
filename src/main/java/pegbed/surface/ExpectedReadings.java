package pegbed.surface;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.posterior.Gradient;
import pegbed.surface.prior.PlaceCoordinates;
import pegbed.surface.prior.Structure;
import pegbed.surface.survey.Levels;
import pegbed.surface.survey.Sounding;

/**
 * The readings of some visits beside what all others make expected of them: y = f + L + n, the bottom f at the banks'
 * own level, the level L of the reading's visit, and the reading's noise n.
 *
 * <p>Two covariances are held: that of the solve, which is what any estimate weighs by, and that with the doubt of
 * bottom and slopes calibrated for the steepness of the ground ({@link SteepnessDoubt}), which is what is stated. Both
 * are the mixture's over the structures. Not changed after it is made.
 */
final class ExpectedReadings {
    /** The observations left out, in the observations' order. */
    final int[] left;
    /** Places of the readings left out, then of those planned. */
    final double[] x;

    final double[] y;
    /** What was read less what the others make expected, of the readings left out, metres. */
    final double[] difference;

    private final int count;
    private final int[] visit;
    /** The visits whose levels are held: those left out, and those asked about. */
    private final int[] held;
    /** Where the level of a visit stands behind the readings; below 0 where it is not held. */
    private final int[] part;
    /**
     * Covariance of the bottom at each reading and then of each level held, given the others; 0 between the levels of
     * two visits that are only asked about, between which nothing is asked.
     */
    private final double[][] solved;
    /** Factors on the standard deviations of the same. */
    private final double[] factor;

    private final double[] noise;
    private final double[] calibratedNoise;

    private ExpectedReadings(FittedBottom bottom, IntPredicate visits, IntPredicate against, List<Sounding> planned) {
        Observations o = bottom.fits().get(0).observations();
        List<Sounding> soundings = bottom.survey().soundings();
        left = IntStream.range(0, o.real).filter(i -> visits.test(o.visit(i))).toArray();
        count = left.length + planned.size();
        x = new double[count];
        y = new double[count];
        visit = new int[count];
        for (int i = 0; i < count; i++) {
            boolean taken = i < left.length;
            Sounding plan = taken ? null : planned.get(i - left.length);
            x[i] = taken ? o.places.x[left[i]] : plan.xMetres();
            y[i] = taken ? o.places.y[left[i]] : plan.yMetres();
            visit[i] = taken ? o.visit(left[i]) : plan.visit();
        }
        int all = bottom.survey().levels().visits();
        held = IntStream.range(0, all).filter(visits.or(against)).toArray();
        part = new int[all];
        Arrays.fill(part, -1);
        for (int h = 0; h < held.length; h++) {
            part[held[h]] = count + h;
        }
        int parts = count + held.length;
        double[] mean = new double[parts];
        solved = new double[parts][parts];
        for (int s : bottom.counting()) {
            add(bottom.fits().get(s), bottom.weight(s), visits, mean);
        }
        for (int a = 0; a < parts; a++) {
            boolean askedOnly = a >= count && !visits.test(held[a - count]);
            for (int b = 0; b < parts; b++) {
                if (!askedOnly || b < count || a == b || visits.test(held[b - count])) {
                    solved[a][b] -= mean[a] * mean[b];
                }
            }
        }
        difference = new double[left.length];
        for (int i = 0; i < left.length; i++) {
            double read = o.mean[left[i]] + o.residual[left[i]];
            difference[i] = read - mean[i] - mean[part[visit[i]]];
        }
        factor = new double[parts];
        Arrays.fill(factor, 1);
        noise = new double[count];
        calibratedNoise = new double[count];
        Gradient[] gradients = bottom.gradients(x, y);
        for (int i = 0; i < count; i++) {
            Gradient g = gradients[i];
            factor[i] = SteepnessDoubt.bottom(Math.hypot(g.dx(), g.dy()));
            Sounding s = i < left.length ? soundings.get(o.sounding[left[i]]) : planned.get(i - left.length);
            double more = s.changeSdMetres() * s.changeSdMetres() + Observations.JITTER;
            noise[i] = i < left.length ? bottom.observationNoise(left[i]) : bottom.readingVariance(s, g) + more;
            calibratedNoise[i] = bottom.readingVariance(s, SteepnessDoubt.of(g)) + more;
        }
    }

    /**
     * Adds what one structure expects: its means and, to what is solved, its second moments, times its weight. The
     * means are those of the bottom at the banks' own level, then of each visit's level.
     */
    private void add(StructureFit fit, double weight, IntPredicate visits, double[] mean) {
        Observations o = fit.observations();
        int[] rest = IntStream.range(0, o.count)
                .filter(i -> Arrays.binarySearch(left, i) < 0)
                .toArray();
        Levels levels = fit.survey().levels();
        GaussianProcess others = others(fit, rest);
        PlaceCoordinates places = fit.places(x, y);
        int shownVisit = fit.survey().shown();
        double shown = fit.levelWithShown(shownVisit);
        double[] shownLevel = o.levelCovariances(shownVisit);
        double[][] whitened = new double[mean.length][];
        double[] own = new double[mean.length];
        double[] row = new double[o.count];
        for (int i = 0; i < count; i++) {
            fit.covariances(places, i, row);
            double[] bed = new double[rest.length];
            for (int j = 0; j < rest.length; j++) {
                bed[j] = row[rest[j]] - shownLevel[rest[j]];
            }
            own[i] = fit.prior().depth(places, i) - levels.mean(shownVisit) + others.mean(bed);
            others.whiten(bed);
            whitened[i] = bed;
        }
        for (int v : held) {
            double[] all = o.levelCovariances(v);
            double[] level = Arrays.stream(rest).mapToDouble(j -> all[j]).toArray();
            own[part[v]] = levels.mean(v) + GaussianProcess.dot(level, others.alpha());
            others.whiten(level);
            whitened[part[v]] = level;
        }
        for (int a = 0; a < whitened.length; a++) {
            mean[a] += weight * own[a];
            boolean askedOnly = a >= count && !visits.test(held[a - count]);
            for (int b = 0; b <= a; b++) {
                if (askedOnly && b >= count && b < a && !visits.test(held[b - count])) {
                    continue;
                }
                double prior = 0;
                if (a < count) {
                    prior = fit.covariance().between(places, a, places, b) - shown;
                } else if (b >= count) {
                    prior = levels.covariance(held[a - count], held[b - count]);
                }
                double second = others.covariance(prior, whitened[a], whitened[b], a < count ? 1 : 0, b < count ? 1 : 0)
                        + own[a] * own[b];
                solved[a][b] += weight * second;
                if (a != b) {
                    solved[b][a] += weight * second;
                }
            }
        }
    }

    /**
     * What the others make expected of the readings of some visits.
     *
     * @param visits whose readings are left out, by their indices
     */
    static ExpectedReadings of(FittedBottom bottom, IntPredicate visits) {
        return of(bottom, visits, visit -> false, List.of());
    }

    /**
     * The same with further readings that are planned at those visits.
     *
     * @param against the visits against whose levels that of one left out will be asked
     */
    static ExpectedReadings of(FittedBottom bottom, IntPredicate visits, IntPredicate against, List<Sounding> planned) {
        return new ExpectedReadings(bottom, visits, against, planned);
    }

    private static GaussianProcess others(StructureFit fit, int[] rest) {
        Observations o = fit.observations();
        double[] k = new double[rest.length * rest.length];
        double[] residual = new double[rest.length];
        double[] row = new double[o.count];
        for (int i = 0; i < rest.length; i++) {
            fit.observationCovariances(rest[i], row);
            residual[i] = o.residual[rest[i]];
            for (int j = 0; j < rest.length; j++) {
                k[i * rest.length + j] = row[rest[j]];
            }
        }
        return new GaussianProcess(k, residual, fit.structure() == Structure.BASIN);
    }

    /** The differences of the readings left out, weighed by their calibrated doubt. */
    GaussianProcess calibrated() {
        int n = left.length;
        double[] k = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                k[i * n + j] = calibratedCovariance(i, j) + (i == j ? calibratedNoise[i] : 0);
            }
        }
        return new GaussianProcess(k, difference, false);
    }

    /**
     * Calibrated standard deviation of how much higher the water stood at one visit than at another, metres, once the
     * readings left out and those planned are known. One of the two is left out here, the other is too or was named as
     * one to be asked about.
     *
     * <p>The estimate is the solve's, t·(y − ŷ) with t = Q⁻¹q its weights; its error is what those weights make of the
     * errors of bottom, levels and readings, and the variance of that is computed with the calibrated doubt.
     */
    double levelSd(int of, int against) {
        double[] error = new double[solved.length];
        error[part[of]] += 1;
        error[part[against]] -= 1;
        double[] with = new double[count];
        for (int i = 0; i < count; i++) {
            for (int seen : new int[] {i, part[visit[i]]}) {
                with[i] += solved[seen][part[of]] - solved[seen][part[against]];
            }
        }
        GaussianProcess weigh = new GaussianProcess(solvedCovariance(), with, false);
        double variance = 0;
        for (int i = 0; i < count; i++) {
            double weight = weigh.alpha()[i];
            error[i] -= weight;
            error[part[visit[i]]] -= weight;
            variance += weight * weight * calibratedNoise[i];
        }
        int[] erring =
                IntStream.range(0, error.length).filter(a -> error[a] != 0).toArray();
        for (int a : erring) {
            for (int b : erring) {
                variance += error[a] * calibrated(a, b) * error[b];
            }
        }
        return Math.sqrt(Math.max(0, variance));
    }

    /** Number of readings left out and planned. */
    int count() {
        return count;
    }

    /** Covariance of what two readings see, bottom and level, with the calibrated doubt, square metres. */
    double calibratedCovariance(int i, int j) {
        return calibrated(i, j)
                + calibrated(i, part[visit[j]])
                + calibrated(part[visit[i]], j)
                + calibrated(part[visit[i]], part[visit[j]]);
    }

    /** Covariance of what a reading sees with how much higher the water stood at one visit than at another. */
    double calibratedWithLevel(int i, int of, int against) {
        double withOf = calibrated(i, part[of]) + calibrated(part[visit[i]], part[of]);
        return withOf - calibrated(i, part[against]) - calibrated(part[visit[i]], part[against]);
    }

    /** Variance of a reading about what it sees, calibrated, square metres. */
    double calibratedNoise(int i) {
        return calibratedNoise[i];
    }

    private double calibrated(int a, int b) {
        return solved[a][b] * (factor[a] * factor[b]);
    }

    /**
     * Covariance of the bottom at the readings left out and those planned, with the calibrated doubt, square metres.
     */
    double[][] calibratedBottom() {
        double[][] all = new double[count][count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                all[i][j] = calibrated(i, j);
            }
        }
        return all;
    }

    /** Covariance of all readings as the solve has it, noise included, row by row. */
    private double[] solvedCovariance() {
        double[] k = new double[count * count];
        for (int i = 0; i < count; i++) {
            int vi = part[visit[i]];
            for (int j = 0; j < count; j++) {
                int vj = part[visit[j]];
                k[i * count + j] =
                        solved[i][j] + solved[i][vj] + solved[vi][j] + solved[vi][vj] + (i == j ? noise[i] : 0);
            }
        }
        return k;
    }
}
