package pegbed.bench.practice;

import java.util.function.DoubleBinaryOperator;

/** Mean depth and gradient over a disc of 0.5 m, on the 13 nodes of a 25 cm grid in it. */
public final class DiscMeans {
    private DiscMeans() {}

    /**
     * A disc.
     *
     * @param depth mean depth, metres; NaN where a node has none
     * @param slopeX gradient to the right
     * @param slopeY gradient straight out
     */
    public record Mean(double depth, double slopeX, double slopeY) {
        public double slope() {
            return Math.hypot(slopeX, slopeY);
        }
    }

    public static Mean of(DoubleBinaryOperator depth, double x, double y) {
        double sum = 0;
        double gx = 0;
        double gy = 0;
        for (int i = -2; i <= 2; i++) {
            for (int j = -2; j <= 2; j++) {
                if (i * i + j * j <= 4) {
                    double d = depth.applyAsDouble(x + i * 0.25, y + j * 0.25);
                    sum += d / 13;
                    gx += d * i * 0.25 / 0.875;
                    gy += d * j * 0.25 / 0.875;
                }
            }
        }
        return new Mean(sum, gx, gy);
    }
}
