package pegbed.bench.quality;

import java.util.OptionalDouble;
import pegbed.findings.Confidence;

/**
 * What became of one spot that was named.
 *
 * @param confidence the word with which it was named
 * @param probability the odds that were reported, if any
 * @param right within 10 cm of the depth it was named for and no steeper than 0.30
 * @param strict within 5 cm and no steeper than 0.20, which is what the odds are of
 */
record Outcome(Confidence confidence, OptionalDouble probability, boolean right, boolean strict) {
    private static final double RIGHT_METRES = 0.10;
    private static final double RIGHT_SLOPE = 0.30;
    private static final double STRICT_METRES = 0.05;
    private static final double STRICT_SLOPE = 0.20;

    /** Where no spot was named at all. */
    static final Outcome NONE = new Outcome(Confidence.NONE, OptionalDouble.empty(), false, false);

    /**
     * Of a spot that lies so far from its depth, on such a slope.
     *
     * @param offMetres metres; NaN where it is partly land
     */
    static Outcome of(SurveyedBottom.Answer answer, double offMetres, double slope) {
        return new Outcome(
                answer.confidence(),
                answer.probability(),
                offMetres <= RIGHT_METRES && slope <= RIGHT_SLOPE,
                offMetres <= STRICT_METRES && slope <= STRICT_SLOPE);
    }
}
