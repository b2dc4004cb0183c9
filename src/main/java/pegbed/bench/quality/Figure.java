package pegbed.bench.quality;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * A mean over pegs with its standard error; the draws of one peg count as one, because they share its bottom.
 *
 * @param mean of the pegs' means
 * @param error standard error of it
 */
record Figure(double mean, double error) {
    static Figure of(List<List<Score>> byPeg, ToDoubleFunction<Score> figure) {
        double[] means = byPeg.stream()
                .mapToDouble(
                        draws -> draws.stream().mapToDouble(figure).average().orElse(Double.NaN))
                .toArray();
        double mean = 0;
        for (double m : means) {
            mean += m / means.length;
        }
        double squares = 0;
        for (double m : means) {
            squares += (m - mean) * (m - mean);
        }
        return new Figure(mean, Math.sqrt(squares / (means.length - 1) / means.length));
    }

    /**
     * Share of the tasks that can be done and came out so, over all pegs; a ratio of two sums over pegs (Cochran 1977,
     * Sampling Techniques, ch. 6).
     */
    static Figure ofOutcomes(List<List<Score>> byPeg, Predicate<Outcome> good) {
        int pegs = byPeg.size();
        double[] done = new double[pegs];
        double[] tasks = new double[pegs];
        double allDone = 0;
        double allTasks = 0;
        for (int p = 0; p < pegs; p++) {
            for (Score score : byPeg.get(p)) {
                done[p] += score.flats().stream().filter(good).count();
                tasks[p] += score.flats().size();
            }
            allDone += done[p];
            allTasks += tasks[p];
        }
        double share = allDone / allTasks;
        double squares = 0;
        for (int p = 0; p < pegs; p++) {
            squares += (done[p] - share * tasks[p]) * (done[p] - share * tasks[p]);
        }
        return new Figure(share, Math.sqrt(squares * pegs / (pegs - 1)) / allTasks);
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.3f ± %.3f", mean, error);
    }
}
