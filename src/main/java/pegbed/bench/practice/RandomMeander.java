package pegbed.bench.practice;

import java.util.Random;

/**
 * A smooth random line along the water: many waves of one length scale (random Fourier features: Rahimi & Recht 2007).
 */
public final class RandomMeander {
    private final double[] k;
    private final double[] phase;
    private final double sd;

    /**
     * Draws a line.
     *
     * @param waves how many
     * @param sd standard deviation of its values
     * @param length over which it varies, metres
     */
    public RandomMeander(Random random, int waves, double sd, double length) {
        this.sd = sd;
        k = new double[waves];
        phase = new double[waves];
        for (int i = 0; i < waves; i++) {
            k[i] = random.nextGaussian() / length;
            phase[i] = 2 * Math.PI * random.nextDouble();
        }
    }

    public double at(double x) {
        double sum = 0;
        for (int i = 0; i < k.length; i++) {
            sum += Math.cos(k[i] * x + phase[i]);
        }
        return sd * sum * Math.sqrt(2.0 / k.length);
    }
}
