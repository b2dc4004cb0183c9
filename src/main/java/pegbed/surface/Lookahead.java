package pegbed.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;
import pegbed.surface.prior.PlaceCoordinates;
import pegbed.surface.survey.Sounding;

/**
 * What planned readings would tell before they are taken: by how much a planned reading that comes out one standard
 * deviation deeper than expected would move what is expected elsewhere, cov(f, f_c)/√(var f_c + τ²), with τ² the noise
 * of the planned reading (its depth, and its place on the slope there). The variance of f would fall by the square of
 * that.
 *
 * <p>Of a mixture of structures the covariances are the mixture's, Σ w (C + (m − m̄)(m − m̄)ᵀ): a reading also tells
 * which structure the bottom has, as far as one Gaussian can hold that.
 *
 * <p>Immutable and thread-safe.
 */
public final class Lookahead {
    private final FittedBottom bottom;
    private final List<View> views;
    private final double[] plannedX;
    private final double[] plannedY;
    private final double[] spread;

    /**
     * The planned readings under one structure.
     *
     * @param weight how much it counts
     * @param planned the planned readings
     * @param whitened L⁻¹k of the planned readings, observation by reading; then of the one that was taken, if there is
     *     one
     * @param deviation expected depth at each planned reading, less the mixture's, metres
     */
    private record View(
            StructureFit fit, double weight, PlaceCoordinates planned, double[][] whitened, double[] deviation) {}

    private Lookahead(FittedBottom bottom, List<View> views, double[] plannedX, double[] plannedY, double[] spread) {
        this.bottom = bottom;
        this.views = views;
        this.plannedX = plannedX;
        this.plannedY = plannedY;
        this.spread = spread;
    }

    /**
     * The view from a fitted bottom on readings that might be taken next, each by itself.
     *
     * @param planned their depths are not looked at
     */
    public static Lookahead of(FittedBottom bottom, List<Sounding> planned) {
        double[] x = planned.stream().mapToDouble(Sounding::xMetres).toArray();
        double[] y = planned.stream().mapToDouble(Sounding::yMetres).toArray();
        int[] counting = bottom.counting();
        double[] spread = new double[x.length];
        List<View> views = new ArrayList<>();
        for (int s : counting) {
            StructureFit fit = bottom.fits().get(s);
            double weight = bottom.weight(s);
            PlaceCoordinates places = fit.places(x, y);
            double[][] rows = new double[fit.observations().count][x.length];
            double[] mean = prepare(fit, places, rows);
            double[] variance = new double[x.length];
            for (int c = 0; c < x.length; c++) {
                variance[c] = fit.covariance().between(places, c, places, c);
            }
            fit.process().takeKnown(variance, rows, 1);
            for (int c = 0; c < x.length; c++) {
                spread[c] += weight * Math.max(variance[c], 0);
            }
            views.add(new View(fit, weight, places, rows, mean));
        }
        subtractMixture(views.stream().map(View::deviation).toList(), views);
        double[] noise = bottom.readingVariances(planned);
        for (int c = 0; c < x.length; c++) {
            for (View view : views) {
                spread[c] += view.weight() * view.deviation()[c] * view.deviation()[c];
            }
            spread[c] = Math.sqrt(spread[c] + noise[c]);
        }
        return new Lookahead(bottom, views, x, y, spread);
    }

    /** Expected depths at places; the rows are filled with L⁻¹k, observation by place. */
    private static double[] prepare(StructureFit fit, PlaceCoordinates places, double[][] rows) {
        fit.covariances(places, rows);
        double[] mean = new double[places.count];
        for (int i = 0; i < mean.length; i++) {
            mean[i] = fit.prior().depth(places, i) + fit.process().constant();
        }
        for (int j = 0; j < rows.length; j++) {
            double pull = fit.process().alpha()[j];
            for (int i = 0; i < mean.length; i++) {
                mean[i] += pull * rows[j][i];
            }
        }
        fit.process().whiten(rows, 0, places.count);
        return mean;
    }

    /** From each structure's means to what they differ from the mixture's, in place. */
    private static void subtractMixture(List<double[]> means, List<View> views) {
        int count = means.isEmpty() ? 0 : means.get(0).length;
        for (int i = 0; i < count; i++) {
            double mixture = 0;
            for (int s = 0; s < means.size(); s++) {
                mixture += views.get(s).weight() * means.get(s)[i];
            }
            for (double[] mean : means) {
                mean[i] -= mixture;
            }
        }
    }

    /** The view on some of the planned readings, in the order given. */
    public Lookahead only(int[] readings) {
        double[] x = some(plannedX, readings);
        double[] y = some(plannedY, readings);
        List<View> fewer = new ArrayList<>();
        for (View view : views) {
            double[][] rows = new double[view.whitened().length][];
            for (int j = 0; j < rows.length; j++) {
                rows[j] = some(view.whitened()[j], readings);
            }
            fewer.add(new View(
                    view.fit(), view.weight(), view.fit().places(x, y), rows, some(view.deviation(), readings)));
        }
        return new Lookahead(bottom, fewer, x, y, some(spread, readings));
    }

    private static double[] some(double[] values, int[] chosen) {
        return Arrays.stream(chosen).mapToDouble(c -> values[c]).toArray();
    }

    /**
     * The view that has one more reading at its end: one that was taken. Its moves are those that it made, for each
     * standard deviation that it came out deeper than the others expected it (Rasmussen & Williams 2006, eq. 5.12, with
     * the hyperparameters and weights as they are now). Before it the expectations were less by the move times the
     * {@linkplain #outcome outcome}, and the variances more by the square of the move.
     *
     * @param sounding its index in the survey
     * @return empty where the bottom was not fitted to that sounding itself, but to a mean of many
     */
    public Optional<Lookahead> withTaken(int sounding) {
        OptionalInt observation = bottom.observation(sounding);
        if (observation.isEmpty()) {
            return Optional.empty();
        }
        List<View> more = new ArrayList<>();
        for (View view : views) {
            double[] unit = view.fit().process().whitenedUnit(observation.getAsInt());
            double length = Math.sqrt(GaussianProcess.dot(unit, unit));
            double[][] rows = new double[view.whitened().length][];
            for (int j = 0; j < rows.length; j++) {
                rows[j] = Arrays.copyOf(view.whitened()[j], size() + 1);
                // Covariances fall by the product of what is whitened, and there is none to fall from.
                rows[j][size()] = -unit[j] / length;
            }
            more.add(new View(
                    view.fit(), view.weight(), view.planned(), rows, Arrays.copyOf(view.deviation(), size() + 1)));
        }
        double[] wider = Arrays.copyOf(spread, size() + 1);
        wider[size()] = 1;
        return Optional.of(new Lookahead(bottom, more, plannedX, plannedY, wider));
    }

    /** By how many standard deviations a reading that was taken came out deeper than the others expect it. */
    public double outcome(int sounding) {
        int observation = bottom.observation(sounding).orElseThrow();
        double outcome = 0;
        for (View view : views) {
            GaussianProcess process = view.fit().process();
            double[] unit = process.whitenedUnit(observation);
            outcome += view.weight() * process.alpha()[observation] / Math.sqrt(GaussianProcess.dot(unit, unit));
        }
        return outcome;
    }

    /** Number of planned readings. */
    public int size() {
        return plannedX.length;
    }

    /** Standard deviation of what a planned reading would say, about the depth expected there, metres. */
    public double spreadMetres(int reading) {
        return spread[reading];
    }

    /** Moves of the expected depth at places, metres: place by reading. */
    public double[][] depths(double[] xMetres, double[] yMetres) {
        double[][] moves = new double[xMetres.length][spread.length];
        List<double[]> means = new ArrayList<>();
        for (View view : views) {
            StructureFit fit = view.fit();
            PlaceCoordinates places = fit.places(xMetres, yMetres);
            double[][] rows = new double[fit.observations().count][places.count];
            means.add(prepare(fit, places, rows));
            double[][] own = new double[places.count][spread.length];
            for (int i = 0; i < places.count; i++) {
                fit.covariance().between(view.planned(), places, i, own[i]);
            }
            fit.process().takeKnown(own, rows, view.whitened());
            for (int i = 0; i < own.length; i++) {
                for (int c = 0; c < spread.length; c++) {
                    moves[i][c] += view.weight() * own[i][c];
                }
            }
        }
        subtractMixture(means, views);
        for (int s = 0; s < views.size(); s++) {
            View view = views.get(s);
            for (int i = 0; i < moves.length; i++) {
                double weighted = view.weight() * means.get(s)[i];
                for (int c = 0; c < spread.length; c++) {
                    moves[i][c] += weighted * view.deviation()[c];
                }
            }
        }
        for (double[] row : moves) {
            for (int c = 0; c < row.length; c++) {
                row[c] /= spread[c];
            }
        }
        return moves;
    }

    /**
     * Moves of the disc quantities at nodes of a grid of {@link Disc#CELL_METRES}: node by quantity (mean depth, then
     * slope to the right, then slope straight out) by reading.
     */
    public double[][][] discs(GridFrame frame, int[] nodes) {
        int[] slot = new int[frame.size()];
        Arrays.fill(slot, -1);
        int[] members = new int[nodes.length * Disc.NODES];
        int count = 0;
        for (int node : nodes) {
            for (int m = 0; m < Disc.NODES; m++) {
                int at = node + Disc.DX[m] + Disc.DY[m] * frame.columns();
                if (slot[at] < 0) {
                    members[count] = at;
                    slot[at] = count++;
                }
            }
        }
        double[] x = new double[count];
        double[] y = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = frame.x(members[i] % frame.columns());
            y[i] = frame.y(members[i] / frame.columns());
        }
        double[][] depths = depths(x, y);
        double[][][] moves = new double[nodes.length][3][spread.length];
        for (int k = 0; k < nodes.length; k++) {
            for (int m = 0; m < Disc.NODES; m++) {
                double[] member = depths[slot[nodes[k] + Disc.DX[m] + Disc.DY[m] * frame.columns()]];
                for (int f = 0; f < 3; f++) {
                    double weight = Disc.weight(f, m);
                    for (int c = 0; c < member.length && weight != 0; c++) {
                        moves[k][f][c] += weight * member[c];
                    }
                }
            }
        }
        return moves;
    }
}
