package pegbed.bench.practice;

import java.util.ArrayList;
import java.util.List;

/** Values in groups, one group a peg: the pegs are the sample, so the error of a mean is that of the groups' means. */
public final class Tally {
    private final List<double[]> groups = new ArrayList<>();

    /** Begins a peg. */
    public void group() {
        groups.add(new double[2]);
    }

    /** The values of several tallies of the same pegs, peg by peg. */
    public static Tally together(List<Tally> tallies) {
        Tally all = new Tally();
        for (int g = 0; g < tallies.get(0).groups.size(); g++) {
            all.group();
            for (Tally tally : tallies) {
                all.groups.get(g)[0] += tally.groups.get(g)[0];
                all.groups.get(g)[1] += tally.groups.get(g)[1];
            }
        }
        return all;
    }

    public void add(double value) {
        double[] group = groups.get(groups.size() - 1);
        group[0] += value;
        group[1]++;
    }

    private double[] means() {
        return groups.stream()
                .filter(g -> g[1] > 0)
                .mapToDouble(g -> g[0] / g[1])
                .toArray();
    }

    /** How many values there are. */
    public long count() {
        return Math.round(groups.stream().mapToDouble(g -> g[1]).sum());
    }

    /** Mean of the groups' means. */
    public double mean() {
        double sum = 0;
        for (double m : means()) {
            sum += m;
        }
        return sum / means().length;
    }

    /** Standard error of the mean. */
    public double error() {
        double[] means = means();
        double mean = mean();
        double sum = 0;
        for (double m : means) {
            sum += (m - mean) * (m - mean);
        }
        return Math.sqrt(sum / (means.length - 1) / means.length);
    }

    /** Square root of the mean, of values that are squares. */
    public double root() {
        return Math.sqrt(mean());
    }

    /** Standard error of that, to first order. */
    public double rootError() {
        return error() / (2 * root());
    }
}
