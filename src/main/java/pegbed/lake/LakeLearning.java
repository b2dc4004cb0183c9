package pegbed.lake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import pegbed.geometry.BankCoordinates;
import pegbed.model.Monitor;
import pegbed.model.Parallel;
import pegbed.surface.BottomModel;
import pegbed.surface.LogPosterior;
import pegbed.surface.Observations;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.prior.BottomCovariance;
import pegbed.surface.prior.Hyperparameters;
import pegbed.surface.prior.Priors;
import pegbed.surface.prior.Structure;
import pegbed.surface.prior.StructurePrior;

/**
 * Learns a whole water's hyperparameters by a composite likelihood: that of a sample spread over the water, which tells
 * what varies over long ways, times those of small neighbourhoods, which tell what varies over short ones (Vecchia
 * 1988; Varin, Reid & Firth 2011, An overview of composite likelihood methods, Statistica Sinica 21, from memory). Of a
 * few hundred soundings all are in the sample, and it is the exact likelihood.
 */
final class LakeLearning {
    /** Size of the sample of the whole water; a survey of no more is learned from exactly. */
    static final int SAMPLE = 250;

    private static final int NEIGHBOURHOODS = 24;
    private static final int NEIGHBOURS = 48;
    private static final long SEED = 20260101;

    private final LakeSoundings soundings;
    private final Priors priors;
    private final StructurePrior prior;
    /** The sample first. */
    private final List<int[]> blocks = new ArrayList<>();

    LakeLearning(LakeSoundings soundings, Neighbourhoods near) {
        this.soundings = soundings;
        prior = new StructurePrior(Structure.BASIN, BankCoordinates.OPEN, soundings.scale);
        priors = prior.priors();
        SplittableRandom random = new SplittableRandom(SEED);
        int n = soundings.count;
        if (n <= SAMPLE) {
            blocks.add(IntStream.range(0, n).toArray());
        } else {
            blocks.add(random.ints(0, n).distinct().limit(SAMPLE).sorted().toArray());
            for (int b = 0; b < NEIGHBOURHOODS; b++) {
                int i = random.nextInt(n);
                blocks.add(near.around(soundings.x[i], soundings.y[i], NEIGHBOURS));
            }
        }
    }

    Priors priors() {
        return priors;
    }

    double[] logMedians() {
        return priors.logMedians().clone();
    }

    /** The hyperparameters of the greatest posterior density, those that stand out left aside. */
    double[] learned(double[] start, double[] placing, Outliers outstanding, Monitor monitor) {
        List<LogPosterior> parts = blocks.stream()
                .map(block -> ordinary(block, outstanding))
                .map(block -> new LogPosterior(
                        soundings.observations(block, prior),
                        priors,
                        soundings.scale,
                        LakeSoundings.chosen(placing, block),
                        true))
                .toList();
        return BottomModel.minimised(
                (point, gradient) -> {
                    monitor.check();
                    return sum(parts, point, gradient);
                },
                priors,
                start);
    }

    private double sum(List<LogPosterior> parts, double[] point, double[] gradient) {
        double[][] gradients = new double[parts.size()][point.length];
        double[] values = new double[parts.size()];
        Parallel.each(values.length, p -> values[p] = parts.get(p).value(point, gradients[p]));
        // Each part has the priors in it, which count once.
        double value = Arrays.stream(values).sum() - (values.length - 1) * priors.penalty(point);
        for (int i = 0; i < gradient.length; i++) {
            gradient[i] = -(values.length - 1) * priors.penaltyGradient(point, i);
            for (double[] part : gradients) {
                gradient[i] += part[i];
            }
        }
        return value;
    }

    private static int[] ordinary(int[] block, Outliers outstanding) {
        return Arrays.stream(block).filter(i -> !outstanding.contains(i)).toArray();
    }

    /** The water's mean depth by generalised least squares over the sample, metres. */
    double mean(Hyperparameters hyper, double[] placing, Outliers outstanding) {
        int[] block = ordinary(blocks.get(0), outstanding);
        Observations sample = soundings.observations(block.length == 0 ? blocks.get(0) : block, prior);
        double[] k = sample.covariance(
                new BottomCovariance(hyper, soundings.scale),
                hyper.noise(),
                LakeSoundings.chosen(placing, sample.sounding));
        return prior.depth(sample.places(), 0) + new GaussianProcess(k, sample.residual, true).constant();
    }
}
