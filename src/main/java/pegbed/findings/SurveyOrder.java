package pegbed.findings;

import java.util.Optional;

/**
 * The orders of a hydrographic survey by their largest total vertical uncertainty at 95 %, √(a² + (b·d)²): IHO S-44,
 * Standards for Hydrographic Surveys, Edition 6, Table 1. Shown beside a peg's doubt as a yardstick; a peg map is no
 * hydrographic survey.
 */
public enum SurveyOrder {
    EXCLUSIVE("Exclusive Order", 0.15, 0.0075),
    SPECIAL("Special Order", 0.25, 0.0075),
    ORDER_1A("Order 1a", 0.5, 0.013),
    ORDER_1B("Order 1b", 0.5, 0.013),
    ORDER_2("Order 2", 1.0, 0.023);

    private final String title;
    private final double a;
    private final double b;

    SurveyOrder(String title, double a, double b) {
        this.title = title;
        this.a = a;
        this.b = b;
    }

    public String title() {
        return title;
    }

    /** Largest total vertical uncertainty at 95 % at a depth, metres. */
    public double largestUncertainty(double depthMetres) {
        return Math.sqrt(a * a + b * depthMetres * b * depthMetres);
    }

    /** The strictest order that a standard deviation at a depth meets (95 % is 1.96 standard deviations). */
    public static Optional<SurveyOrder> metBy(double depthMetres, double sdMetres) {
        for (SurveyOrder order : values()) {
            if (1.96 * sdMetres <= order.largestUncertainty(depthMetres)) {
                return Optional.of(order);
            }
        }
        return Optional.empty();
    }
}
