package pegbed.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.decomposition.TriangularSolver_DDRM;
import pegbed.geometry.PegWater;
import pegbed.model.Monitor;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.prior.AcrossProfileBasis;
import pegbed.surface.prior.BottomCovariance;
import pegbed.surface.prior.Hyperparameters;
import pegbed.surface.prior.NeighbourInfluence;
import pegbed.surface.prior.Priors;
import pegbed.surface.prior.SharedProfile;
import pegbed.surface.prior.Structure;
import pegbed.surface.prior.StructurePrior;
import pegbed.surface.survey.Scale;
import pegbed.surface.survey.Survey;

/**
 * The prior of a peg from the mapped pegs of the same water: a hierarchy of Gaussian processes (hierarchical models:
 * Gelman et al. 2013, Bayesian Data Analysis, 3rd ed., ch. 5; of Gaussian processes: Hensman, Lawrence & Rattray 2013,
 * BMC Bioinformatics 14:252).
 *
 * <p>Of the variances of cross-profile and track a share ρ is the water's: one profile c over the share of the width
 * and one depth of track, which all pegs have in common; the rest is each peg's own. For a given ρ the posterior of
 * what is common, from the other pegs' readings about the tub, is Gaussian: precision P₀⁻¹ + ΣHᵀK⁻¹H, with K a peg's
 * own covariance and H what the common numbers count at its readings. ρ is weighed by how likely it makes the other
 * pegs' readings beside each other, so that pegs that disagree share little, and by how likely it makes this peg's
 * readings; against all that stands, with odds of {@value #UNLIKE}, that this peg is unlike them. The weighted mixture
 * is given by its mean and covariance (Bayesian model averaging: Hoeting et al. 1999, Statistical Science 14(4)).
 */
final class NeighbourProfile {
    /** Probability, before its readings, that a peg is unlike the others of its water (empirical, from made waters). */
    private static final double UNLIKE = 0.3;

    /** Shares of the variance that the pegs may have in common, each as likely as another before any reading. */
    private static final double[] SHARES = {0, 0.3, 0.6, 0.8, 0.9, 0.97};

    /** So many learned pegs move the medians of the hyperparameters half way to their mean (empirical). */
    private static final double HALF_WAY = 2;

    private final List<StructureFit> others;
    private final Priors priors;
    private final double[] pooled;
    private final AcrossProfileBasis basis;

    NeighbourProfile(List<FittedBottom> bottoms, boolean farBank, Priors priors) {
        others = bottoms.stream().flatMap(bottom -> bottom.tub().stream()).toList();
        this.priors = priors;
        pooled = pooled(bottoms, priors);
        basis = farBank
                ? AcrossProfileBasis.between(others.stream()
                        .mapToDouble(NeighbourProfile::width)
                        .average()
                        .orElseThrow())
                : AcrossProfileBasis.open();
    }

    /**
     * The prior of a peg from its neighbours.
     *
     * @param shared about the tub
     * @param priors of the hyperparameters, moved towards what the others have
     */
    record Said(SharedProfile shared, Priors priors) {}

    /** What a survey's neighbours say, given its own readings; nothing new where it has no neighbours of its kind. */
    static Said of(Survey survey, NeighbouringPegs neighbours, StructurePrior tub, Monitor monitor) {
        Priors priors = tub.priors();
        boolean farBank = survey.coordinates().hasFarBank();
        List<FittedBottom> bottoms = neighbours.alike(farBank);
        if (bottoms.isEmpty() || survey.water().isEmpty() || !tub.scale().equals(Scale.PEG)) {
            return new Said(SharedProfile.NONE, priors);
        }
        NeighbourProfile profile = new NeighbourProfile(bottoms, farBank, priors);
        Hyperparameters pooled = Hyperparameters.ofLogs(priors.variables(), profile.pooled);
        StructureFit alone = BottomModel.fitWith(survey, Structure.TUB, pooled, monitor);
        return profile.said(alone);
    }

    static double width(StructureFit bottom) {
        return bottom.survey().water().map(PegWater::widthMetres).orElseThrow();
    }

    /** Medians moved towards the mean of what the pegs have learned. */
    private static double[] pooled(List<FittedBottom> bottoms, Priors priors) {
        List<double[]> learned = bottoms.stream()
                .filter(FittedBottom::learned)
                .map(bottom -> bottom.tub().orElseThrow().hyperparameters().logs(priors.variables()))
                .toList();
        double[] logs = priors.logMedians().clone();
        double moved = learned.size() / (learned.size() + HALF_WAY);
        for (int i = 0; i < logs.length && !learned.isEmpty(); i++) {
            int at = i;
            double mean =
                    learned.stream().mapToDouble(each -> each[at]).average().orElseThrow();
            logs[i] += moved * (mean - logs[i]);
        }
        return logs;
    }

    /** One share, what the pegs have in common if it is so, and the logarithm of its weight. */
    record Case(double share, double[] mean, double[][] factor, double logWeight) {}

    private Said said(StructureFit alone) {
        List<Case> cases = new ArrayList<>();
        double[] others = new double[SHARES.length];
        for (int i = 0; i < SHARES.length; i++) {
            Case common = common(SHARES[i]);
            others[i] = common.logWeight();
            cases.add(new Case(common.share(), common.mean(), common.factor(), evidence(alone, common)));
        }
        double all = logSum(others);
        double[] logs = new double[cases.size() + 1];
        for (int i = 0; i < cases.size(); i++) {
            logs[i] = Math.log(1 - UNLIKE) + others[i] - all + cases.get(i).logWeight();
        }
        logs[cases.size()] = Math.log(UNLIKE) + cases.get(0).logWeight();
        double total = logSum(logs);
        double[] weights = new double[cases.size()];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = Math.exp(logs[i] - total);
        }
        return mixed(cases, weights, Math.exp(logs[cases.size()] - total), width(alone));
    }

    private Said mixed(List<Case> cases, double[] weights, double unlike, double width) {
        int n = basis.size();
        double[] mean = new double[n];
        double[][] covariance = new double[n][n];
        double own = unlike;
        for (int c = 0; c < weights.length; c++) {
            own += weights[c] * (1 - cases.get(c).share());
            for (int i = 0; i < n; i++) {
                mean[i] += weights[c] * cases.get(c).mean()[i];
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double sum = -mean[i] * mean[j];
                for (int c = 0; c < weights.length; c++) {
                    Case each = cases.get(c);
                    sum += weights[c]
                            * (GaussianProcess.dot(each.factor()[i], each.factor()[j])
                                    + each.mean()[i] * each.mean()[j]);
                }
                covariance[i][j] = sum;
            }
        }
        double[] logs = priors.logMedians().clone();
        for (int i = 0; i < logs.length; i++) {
            logs[i] += (1 - unlike) * (pooled[i] - logs[i]);
        }
        logs[0] += Math.log(own) / 2;
        NeighbourInfluence lesson = new NeighbourInfluence(others.size(), 1 - unlike);
        return new Said(
                new SharedProfile(basis, width, mean, covariance, own, lesson),
                new Priors(priors.variables(), logs, priors.logSds()));
    }

    private static double logSum(double[] logs) {
        double most = java.util.Arrays.stream(logs).max().orElseThrow();
        double sum = 0;
        for (double log : logs) {
            sum += Math.exp(log - most);
        }
        return most + Math.log(sum);
    }

    /** The steps across. */
    AcrossProfileBasis basis() {
        return basis;
    }

    /** A peg's own part of the covariance. */
    BottomCovariance own(double share) {
        double[] logs = pooled.clone();
        logs[0] += Math.log(1 - share) / 2;
        return new BottomCovariance(Hyperparameters.ofLogs(priors.variables(), logs), Scale.PEG);
    }

    /** What the other pegs say is common; its weight is how likely their readings are. */
    Case common(double share) {
        int n = basis.size();
        BottomCovariance own = own(share);
        double[][] precision = new double[n][n];
        double[] pull = new double[n];
        double log = 0;
        for (StructureFit other : others) {
            Observations readings = other.observations();
            GaussianProcess conditioned = new GaussianProcess(
                    covariance(other, own, share), Arrays.copyOf(readings.residual, readings.real), false);
            log += conditioned.logMarginalLikelihood();
            double[][] counts = basis.weights(readings.places, readings.real, width(other));
            for (int i = 0; i < n; i++) {
                for (int r = 0; r < counts.length; r++) {
                    pull[i] += counts[r][i] * conditioned.alpha()[r];
                }
            }
            conditioned.whiten(counts, 0, n);
            for (double[] row : counts) {
                for (int i = 0; i < n; i++) {
                    for (int j = 0; j < n; j++) {
                        precision[i][j] += row[i] * row[j];
                    }
                }
            }
        }
        if (share == 0) {
            return new Case(0, new double[n], new double[n][n], log);
        }
        BottomCovariance whole = own(0);
        DMatrixRMaj prior = new DMatrixRMaj(basis.prior(
                share * whole.profile2,
                whole.across,
                share * StructurePrior.TRACK_SD_METRES * StructurePrior.TRACK_SD_METRES));
        DMatrixRMaj root = new DMatrixRMaj(n, n, true, GaussianProcess.factored(prior.data, n));
        double[] grown = GaussianProcess.factored(grown(root, new DMatrixRMaj(precision)).data, n);
        double[][] factor = new double[n][];
        for (int i = 0; i < n; i++) {
            factor[i] = Arrays.copyOfRange(root.data, i * n, (i + 1) * n);
            TriangularSolver_DDRM.solveL(grown, factor[i], n);
        }
        double[] moved = new double[n];
        for (int i = 0; i < n; i++) {
            for (int r = 0; r < n; r++) {
                moved[r] += factor[i][r] * pull[i];
            }
            log -= Math.log(grown[i * n + i]);
        }
        double[] mean = new double[n];
        for (int i = 0; i < n; i++) {
            mean[i] = GaussianProcess.dot(factor[i], moved);
        }
        return new Case(share, mean, factor, log + GaussianProcess.dot(moved, moved) / 2);
    }

    /** I + LᵀPL. */
    private static DMatrixRMaj grown(DMatrixRMaj l, DMatrixRMaj p) {
        int n = l.numRows;
        DMatrixRMaj pl = new DMatrixRMaj(n, n);
        CommonOps_DDRM.mult(p, l, pl);
        DMatrixRMaj grown = CommonOps_DDRM.identity(n);
        CommonOps_DDRM.multAddTransA(l, pl, grown);
        return grown;
    }

    /** How likely a peg's own readings are, by its logarithm, once the others have said what is common. */
    private double evidence(StructureFit peg, Case common) {
        Observations readings = peg.observations();
        int n = readings.real;
        double[][] counts = basis.weights(readings.places, n, width(peg));
        double[] k = covariance(peg, own(common.share()), common.share());
        double[] residual = Arrays.copyOf(readings.residual, n);
        double[][] features = new double[n][basis.size()];
        for (int i = 0; i < n; i++) {
            residual[i] -= GaussianProcess.dot(counts[i], common.mean());
            for (int b = 0; b < basis.size(); b++) {
                for (int r = 0; r < basis.size() && counts[i][b] != 0; r++) {
                    features[i][r] += counts[i][b] * common.factor()[b][r];
                }
            }
            for (int j = 0; j <= i; j++) {
                double shared = GaussianProcess.dot(features[i], features[j]);
                k[i * n + j] += shared;
                k[j * n + i] += i == j ? 0 : shared;
            }
        }
        return new GaussianProcess(k, residual, false).logMarginalLikelihood();
    }

    /**
     * Covariance of a peg's real readings, noise included, without the share of the track that all pegs have in common.
     */
    static double[] covariance(StructureFit peg, BottomCovariance own, double share) {
        Observations readings = peg.observations();
        int n = readings.real;
        double[] k = new double[n * n];
        double[] track = readings.places.features[0];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                k[i * n + j] = own.between(readings.places, i, readings.places, j)
                        - share * track[i] * track[j]
                        + readings.commonErrorCovariance(i, j);
            }
            k[i * n + i] += peg.observationNoise(i);
        }
        return k;
    }
}
