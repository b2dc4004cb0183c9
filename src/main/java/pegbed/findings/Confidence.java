package pegbed.findings;

/** How a probability that a spot is flat at the target is said. */
public enum Confidence {
    SURE("sure", 0.8),
    LIKELY("likely", 0.5),
    WORTH_A_READING("worth a reading", 0.2),
    NONE("none", 0);

    private final String words;
    private final double least;

    Confidence(String words, double least) {
        this.words = words;
        this.least = least;
    }

    /** The word for a probability. */
    public static Confidence of(double probability) {
        for (Confidence confidence : values()) {
            if (probability >= confidence.least) {
                return confidence;
            }
        }
        return NONE;
    }

    public String words() {
        return words;
    }

    /** The least probability that earns this word. */
    public double least() {
        return least;
    }
}
