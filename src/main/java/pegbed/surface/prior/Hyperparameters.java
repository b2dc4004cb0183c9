package pegbed.surface.prior;

/**
 * What the model has learned of how the bottom varies. All above 0.
 *
 * @param profileSdMetres σp, standard deviation of the cross-profile about the tub, metres
 * @param acrossMetres ℓv, length scale of the cross-profile across the water, metres
 * @param alongMetres Lu, length along the water over which the cross-profile holds, metres
 * @param localSdMetres σr, standard deviation of what is local, metres
 * @param localMetres ℓr, length scale of what is local, metres
 * @param noise η, factor on the depth noise of the readings, no unit
 */
public record Hyperparameters(
        double profileSdMetres,
        double acrossMetres,
        double alongMetres,
        double localSdMetres,
        double localMetres,
        double noise) {
    /** Number of hyperparameters. */
    static final int COUNT = 6;

    /** The logarithms, in order. */
    public double[] logs() {
        return new double[] {
            Math.log(profileSdMetres),
            Math.log(acrossMetres),
            Math.log(alongMetres),
            Math.log(localSdMetres),
            Math.log(localMetres),
            Math.log(noise)
        };
    }

    public static Hyperparameters ofLogs(double[] logs) {
        return new Hyperparameters(
                Math.exp(logs[0]),
                Math.exp(logs[1]),
                Math.exp(logs[2]),
                Math.exp(logs[3]),
                Math.exp(logs[4]),
                Math.exp(logs[5]));
    }
}
