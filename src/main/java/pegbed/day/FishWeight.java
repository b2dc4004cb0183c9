package pegbed.day;

import java.util.List;
import java.util.Optional;
import pegbed.model.DayEvent;

/**
 * The mean weight of a line's fish, kilograms, as a gamma distribution: that of its weighed fish together with one fish
 * of the day's mean weight, and so many times less varied as there are fish. Fish that were not weighed are taken to be
 * like those that were.
 */
final class FishWeight {
    /** Squared coefficient of variation of a fish's weight before any is weighed, and for how many fish that counts. */
    private static final double USUAL_VARIATION = 0.5;

    private static final double USUAL_COUNTS = 3;

    private final double meanKilograms;
    private final double variation;

    private FishWeight(double meanKilograms, double variation) {
        this.meanKilograms = meanKilograms;
        this.variation = variation;
    }

    /** The weights of a day; empty while none is known. */
    static Optional<FishWeight> of(List<LineHistory> lines) {
        int weighed = lines.stream().mapToInt(LineHistory::weighed).sum();
        if (weighed == 0) {
            return Optional.empty();
        }
        double mean = lines.stream().mapToDouble(LineHistory::kilograms).sum() / weighed;
        List<Double> alone = lines.stream()
                .flatMap(line -> line.events().stream())
                .filter(event -> event.weightKilograms().isPresent() && event.count() == 1)
                .map(DayEvent::weightKilograms)
                .map(kilograms -> kilograms.getAsDouble() / mean - 1)
                .toList();
        double squares = alone.stream().mapToDouble(off -> off * off).sum();
        double variation = (USUAL_COUNTS * USUAL_VARIATION + squares) / (USUAL_COUNTS + alone.size());
        return Optional.of(new FishWeight(mean, variation));
    }

    /** The mean weight of a line's fish. */
    GammaDistribution meanOn(LineHistory line) {
        double fish = 1 + line.weighed();
        return GammaDistribution.ofMean((meanKilograms + line.kilograms()) / fish, variation / fish);
    }
}
