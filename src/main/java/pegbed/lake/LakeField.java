package pegbed.lake;

import pegbed.surface.prior.Hyperparameters;

/**
 * What is assumed of a whole water and its soundings, ready to be conditioned place by place. Not changed after it is
 * made.
 *
 * @param soundings in the water's own frame
 * @param near finds their neighbours
 * @param hyper what was learned
 * @param covariance of the depths about their mean
 * @param meanMetres mean depth of the water, metres
 * @param placing what each sounding's unsure place adds to its variance, square metres
 * @param outstanding those that stand out
 */
record LakeField(
        LakeSoundings soundings,
        Neighbourhoods near,
        Hyperparameters hyper,
        RadialCovariance covariance,
        double meanMetres,
        double[] placing,
        Outliers outstanding) {

    /** Variance of a sounding about the bottom at the place that was meant. */
    double noise(int i) {
        return soundings.noise(i, hyper.noise(), placing[i]);
    }

    /** The same with other placing and other soundings that stand out. */
    LakeField with(double[] otherPlacing, Outliers others) {
        return new LakeField(soundings, near, hyper, covariance, meanMetres, otherPlacing, others);
    }
}
