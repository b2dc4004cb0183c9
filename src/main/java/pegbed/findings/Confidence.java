package pegbed.findings;

/** Classes of the probability that a spot is flat at the target. */
public enum Confidence {
    SURE(0.85),
    LIKELY(0.5),
    WORTH_A_READING(0.2),
    NONE(0);

    private final double minProbability;

    Confidence(double minProbability) {
        this.minProbability = minProbability;
    }

    /** The class of a probability, 0 to 1. */
    public static Confidence of(double probability) {
        for (Confidence confidence : values()) {
            if (probability >= confidence.minProbability) {
                return confidence;
            }
        }
        return NONE;
    }

    /** The lowest probability of this class, 0 to 1. */
    public double minProbability() {
        return minProbability;
    }
}
