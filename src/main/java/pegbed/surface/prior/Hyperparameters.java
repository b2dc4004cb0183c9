package pegbed.surface.prior;

/**
 * Hyperparameters of the covariance of one structure. Standard deviations are 0 where the structure has no such term;
 * all else is above 0.
 *
 * @param profileSdMetres σp, standard deviation of the cross-profile that holds along the water, metres
 * @param acrossMetres ℓv, length scale of the cross-profile across the water, metres
 * @param alongMetres Lu, length along the water over which the cross-profile holds, metres
 * @param isotropicSdMetres σm, standard deviation of the isotropic term, metres
 * @param isotropicMetres ℓm, its length scale, metres
 * @param localSdMetres σr, standard deviation of the local term, metres
 * @param localMetres ℓr, length scale of the local term, metres
 * @param noise η, factor on the depth noise of the readings, no unit
 */
public record Hyperparameters(
        double profileSdMetres,
        double acrossMetres,
        double alongMetres,
        double isotropicSdMetres,
        double isotropicMetres,
        double localSdMetres,
        double localMetres,
        double noise) {
    /** The variables by name, in order. */
    public enum Variable {
        PROFILE_SD,
        ACROSS,
        ALONG,
        ISOTROPIC_SD,
        ISOTROPIC_LENGTH,
        LOCAL_SD,
        LOCAL_LENGTH,
        NOISE
    }

    /**
     * From logarithms.
     *
     * @param variables which are given; standard deviations that are not are 0, lengths 1
     * @param logs theirs
     */
    public static Hyperparameters ofLogs(Variable[] variables, double[] logs) {
        double[] all = {0, 1, 1, 0, 1, 0, 1, 1};
        for (int i = 0; i < variables.length; i++) {
            all[variables[i].ordinal()] = Math.exp(logs[i]);
        }
        return new Hyperparameters(all[0], all[1], all[2], all[3], all[4], all[5], all[6], all[7]);
    }

    /** The logarithms of some of them. */
    public double[] logs(Variable[] variables) {
        double[] all = {
            profileSdMetres,
            acrossMetres,
            alongMetres,
            isotropicSdMetres,
            isotropicMetres,
            localSdMetres,
            localMetres,
            noise
        };
        double[] logs = new double[variables.length];
        for (int i = 0; i < logs.length; i++) {
            logs[i] = Math.log(all[variables[i].ordinal()]);
        }
        return logs;
    }
}
