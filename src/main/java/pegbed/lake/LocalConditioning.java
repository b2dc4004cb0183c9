package pegbed.lake;

import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.posterior.Gradient;

/**
 * A whole water's field conditioned on a few soundings near each other: what they say of places among them.
 *
 * <p>A place depends on its nearest soundings nearly alone, which is what makes large surveys possible: Vecchia (1988,
 * Estimation and model identification for continuous spatial processes, J. R. Statist. Soc. B 50), Datta, Banerjee,
 * Finley & Gelfand (2016, nearest-neighbor Gaussian process, J. Am. Statist. Assoc. 111), Katzfuss & Guinness (2021, A
 * general framework for Vecchia approximations, Statistical Science 36). In kriging it is the search neighbourhood
 * (Isaaks & Srivastava 1989, ch. 14).
 */
final class LocalConditioning {
    /** Places are answered so many at a time, which bounds the memory. */
    private static final int BATCH = 512;

    private final LakeField field;
    private final int[] chosen;
    private final double[] x;
    private final double[] y;
    private final int[] bumps;
    /** Height of each bump at each of the chosen, bump by sounding, metres. */
    private final double[][] bumpAt;

    private final GaussianProcess conditioned;

    LocalConditioning(LakeField field, int[] chosen) {
        this.field = field;
        this.chosen = chosen;
        LakeSoundings s = field.soundings();
        int n = chosen.length;
        x = LakeSoundings.chosen(s.x, chosen);
        y = LakeSoundings.chosen(s.y, chosen);
        bumps = field.outstanding().among(chosen);
        bumpAt = new double[bumps.length][n];
        for (int b = 0; b < bumps.length; b++) {
            for (int i = 0; i < n; i++) {
                bumpAt[b][i] = bump(b, x[i], y[i]);
            }
        }
        double[] k = new double[n * n];
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double dx = x[i] - x[j];
                double dy = y[i] - y[j];
                double value = field.covariance().at(Math.sqrt(dx * dx + dy * dy));
                for (double[] at : bumpAt) {
                    value += at[i] * at[j];
                }
                k[i * n + j] = value;
                k[j * n + i] = value;
            }
            k[i * n + i] += field.noise(chosen[i]);
            values[i] = s.depth[chosen[i]] - field.meanMetres();
        }
        conditioned = new GaussianProcess(k, values, false);
    }

    private double bump(int b, double atX, double atY) {
        double dx = atX - field.soundings().x[bumps[b]];
        double dy = atY - field.soundings().y[bumps[b]];
        return field.outstanding().at(bumps[b], dx * dx + dy * dy);
    }

    /** By how much a sounding differs from what the others expect, and the variance of that (eq. 5.12). */
    Left left(int position) {
        double[] unit = conditioned.whitenedUnit(position);
        double precision = GaussianProcess.dot(unit, unit);
        return new Left(conditioned.alpha()[position] / precision, 1 / precision);
    }

    /**
     * A sounding beside what the others expect of it.
     *
     * @param residual its depth less what they expect, metres
     * @param variance of that, its own noise included, square metres
     */
    record Left(double residual, double variance) {}

    /** Position of a sounding among those of this conditioning; -1 if it is not one of them. */
    int position(int sounding) {
        for (int j = 0; j < chosen.length; j++) {
            if (chosen[j] == sounding) {
                return j;
            }
        }
        return -1;
    }

    /** The gradient at a place and its variance. */
    Gradient gradient(double atX, double atY) {
        int n = chosen.length;
        double[] kx = new double[n];
        double[] ky = new double[n];
        double priorX = field.covariance().slopeVariance();
        double priorY = priorX;
        for (int j = 0; j < n; j++) {
            double dx = atX - x[j];
            double dy = atY - y[j];
            double slope = field.covariance().slopeOverDistance(Math.sqrt(dx * dx + dy * dy));
            kx[j] = slope * dx;
            ky[j] = slope * dy;
        }
        for (int b = 0; b < bumps.length; b++) {
            double fromX = atX - field.soundings().x[bumps[b]];
            double fromY = atY - field.soundings().y[bumps[b]];
            double slope = bump(b, atX, atY) * field.outstanding().slopeShare(bumps[b], fromX * fromX + fromY * fromY);
            double slopeX = slope * fromX;
            double slopeY = slope * fromY;
            priorX += slopeX * slopeX;
            priorY += slopeY * slopeY;
            for (int j = 0; j < n; j++) {
                kx[j] += slopeX * bumpAt[b][j];
                ky[j] += slopeY * bumpAt[b][j];
            }
        }
        double gx = GaussianProcess.dot(kx, conditioned.alpha());
        double gy = GaussianProcess.dot(ky, conditioned.alpha());
        conditioned.whiten(kx);
        conditioned.whiten(ky);
        return new Gradient(
                gx,
                gy,
                Math.max(0, priorX - GaussianProcess.dot(kx, kx)),
                Math.max(0, priorY - GaussianProcess.dot(ky, ky)));
    }

    /**
     * Adds what the soundings say of places, each with its own weight, to what others say.
     *
     * @param places which of the answers' places
     * @param atX places, metres in the water's own frame
     * @param weights one for each of the places
     */
    void add(int[] places, double[] atX, double[] atY, double[] weights, LakeDepths.Sums sums) {
        for (int from = 0; from < places.length; from += BATCH) {
            add(places, from, Math.min(places.length, from + BATCH), atX, atY, weights, sums);
        }
    }

    private void add(
            int[] places, int from, int to, double[] atX, double[] atY, double[] weights, LakeDepths.Sums sums) {
        int count = to - from;
        double[][] rows = new double[chosen.length][count];
        double[] mean = new double[count];
        double[] slopeX = new double[count];
        double[] slopeY = new double[count];
        double[] variance = new double[count];
        java.util.Arrays.fill(mean, field.meanMetres());
        java.util.Arrays.fill(variance, field.covariance().at(0));
        double[] slopes = new double[count];
        for (int j = 0; j < rows.length; j++) {
            double pull = conditioned.alpha()[j];
            for (int p = 0; p < count; p++) {
                double dx = atX[places[from + p]] - x[j];
                double dy = atY[places[from + p]] - y[j];
                slopes[p] = Math.sqrt(dx * dx + dy * dy);
            }
            field.covariance().at(slopes, rows[j]);
            for (int p = 0; p < count; p++) {
                mean[p] += pull * rows[j][p];
                slopeX[p] += pull * slopes[p] * (atX[places[from + p]] - x[j]);
                slopeY[p] += pull * slopes[p] * (atY[places[from + p]] - y[j]);
            }
        }
        for (int b = 0; b < bumps.length; b++) {
            double pull = GaussianProcess.dot(bumpAt[b], conditioned.alpha());
            for (int p = 0; p < count; p++) {
                double px = atX[places[from + p]];
                double py = atY[places[from + p]];
                double height = bump(b, px, py);
                mean[p] += height * pull;
                variance[p] += height * height;
                double fromX = px - field.soundings().x[bumps[b]];
                double fromY = py - field.soundings().y[bumps[b]];
                double share = field.outstanding().slopeShare(bumps[b], fromX * fromX + fromY * fromY);
                slopeX[p] += height * pull * share * fromX;
                slopeY[p] += height * pull * share * fromY;
                for (int j = 0; j < rows.length; j++) {
                    rows[j][p] += height * bumpAt[b][j];
                }
            }
        }
        conditioned.whiten(rows, 0, count);
        conditioned.takeKnown(variance, rows, 1);
        for (int p = 0; p < count; p++) {
            sums.add(places[from + p], weights[from + p], mean[p], variance[p], slopeX[p], slopeY[p]);
        }
    }
}
