package pegbed.lake;

import pegbed.surface.gaussian.Exponential;
import pegbed.surface.gaussian.Matern;
import pegbed.surface.prior.BottomCovariance;
import pegbed.surface.prior.Hyperparameters;
import pegbed.surface.prior.StructurePrior;
import pegbed.surface.survey.Scale;

/**
 * The covariance of open water about its mean depth as a function of distance alone, with its slope: what
 * {@link BottomCovariance} says where there are no banks.
 */
final class RadialCovariance {
    private final double isotropic2;
    private final double isotropicRate;
    private final double local2;
    private final double localRate;
    private final double constant2;

    RadialCovariance(Hyperparameters hyper, Scale scale) {
        BottomCovariance open = new BottomCovariance(hyper, scale);
        double track = StructurePrior.TRACK_SD_METRES * scale.vertical();
        isotropic2 = open.isotropic2;
        isotropicRate = Matern.ROOT5 / open.isotropic;
        local2 = open.local2;
        localRate = Matern.ROOT3 / open.local;
        constant2 = open.level2 + track * track;
    }

    /** The longer of the ranges over which depths are alike, metres. */
    double rangeMetres() {
        return Math.max(Matern.ROOT5 / isotropicRate, Matern.ROOT3 / localRate);
    }

    /** Covariance of depths so far apart, square metres. */
    double at(double distance) {
        double s = isotropicRate * distance;
        double w = localRate * distance;
        return isotropic2 * (1 + s + s * s / 3) * Math.exp(-s) + local2 * (1 + w) * Math.exp(-w) + constant2;
    }

    /** Its derivative over the distance, no unit. */
    double slopeOverDistance(double distance) {
        double s = isotropicRate * distance;
        double w = localRate * distance;
        return -isotropic2 * isotropicRate * isotropicRate / 3 * (1 + s) * Math.exp(-s)
                - local2 * localRate * localRate * Math.exp(-w);
    }

    /**
     * Covariances and derivatives over the distance, at many distances at once; the distances become the derivatives.
     */
    void at(double[] distances, double[] covariances) {
        int count = distances.length;
        double[] isotropic = new double[count];
        double[] local = new double[count];
        for (int i = 0; i < count; i++) {
            isotropic[i] = isotropicRate * distances[i];
            local[i] = localRate * distances[i];
        }
        Exponential.ofNegative(isotropic, 0, count);
        Exponential.ofNegative(local, 0, count);
        double isotropicBend = isotropic2 * isotropicRate * isotropicRate / 3;
        double localBend = local2 * localRate * localRate;
        for (int i = 0; i < count; i++) {
            double s = isotropicRate * distances[i];
            double w = localRate * distances[i];
            covariances[i] = isotropic2 * isotropic[i] * (1 + s + s * s / 3) + local2 * local[i] * (1 + w) + constant2;
            distances[i] = -isotropicBend * isotropic[i] * (1 + s) - localBend * local[i];
        }
    }

    /** Variance of the slope in a direction, no unit. */
    double slopeVariance() {
        return -slopeOverDistance(0);
    }
}
