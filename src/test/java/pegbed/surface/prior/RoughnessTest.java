package pegbed.surface.prior;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pegbed.geometry.BankCoordinates;
import pegbed.model.InputException;
import pegbed.surface.TestPegs;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.survey.Scale;
import pegbed.surface.survey.Survey;

class RoughnessTest {
    /** Straight banks, 12 m apart. */
    private static final BankCoordinates STRAIGHT = new BankCoordinates() {
        @Override
        public double along(double x, double y) {
            return x;
        }

        @Override
        public double acrossAt(double fromNear, double fromFar) {
            return fromNear;
        }

        @Override
        public double fromNear(double x, double y) {
            return y;
        }

        @Override
        public double fromFar(double x, double y) {
            return 12 - y;
        }

        @Override
        public boolean hasFarBank() {
            return true;
        }
    };

    private static final Hyperparameters USUAL =
            tub(STRAIGHT, Scale.PEG).priors().medians();

    @Test
    void growsFromLevelGroundToSlopes() {
        assertEquals(0.7, Roughness.at(0), 1e-12);
        assertEquals(1.1, Roughness.at(0.2), 1e-12);
        assertTrue(Roughness.at(3) < 1.5 && Roughness.at(3) > Roughness.at(0.6));
    }

    @Test
    void isThatOfTheTubsOwnSteepness() {
        checkSteepness(tub(STRAIGHT, Scale.PEG), 0.1, 11.9);
    }

    @Test
    void isThatOfTheTubsOwnSteepnessOnAPond() throws InputException {
        checkSteepness(tub(Survey.of(TestPegs.pond()).coordinates(), Scale.PEG), 0.1, 16);
    }

    private static StructurePrior tub(BankCoordinates banks, Scale scale) {
        return new StructurePrior(Structure.TUB, banks, scale);
    }

    private static PlaceCoordinates at(StructurePrior prior, double x, double y) {
        return PlaceCoordinates.of(new double[] {x}, new double[] {y}, prior);
    }

    private static double depth(StructurePrior prior, double x, double y) {
        return prior.depth(at(prior, x, y), 0);
    }

    private static double roughness(StructurePrior prior, double x, double y) {
        return at(prior, x, y).roughness[0];
    }

    private static void checkSteepness(StructurePrior tub, double from, double to) {
        double h = 1e-5;
        for (double y = from; y <= to; y += 0.1) {
            double dx = depth(tub, 1 + h, y) - depth(tub, 1 - h, y);
            double dy = depth(tub, 1, y + h) - depth(tub, 1, y - h);
            double steepness = Math.hypot(dx, dy) / (2 * h);
            assertEquals(Roughness.at(steepness), roughness(tub, 1, y), 1e-4, "at " + y);
        }
    }

    /** So that the priors of σp and σr keep their meaning: 12 m between banks. */
    @Test
    void itsMeanSquareOverAUsualProfileIsALittleAboveOne() {
        StructurePrior tub = tub(STRAIGHT, Scale.PEG);
        double sum = 0;
        for (int i = 0; i < 120; i++) {
            sum += Math.pow(roughness(tub, 0, 0.05 + 0.1 * i), 2);
        }
        assertEquals(1.2, sum / 120, 0.05);
    }

    @Test
    void openWaterIsEverywhereAlike() {
        StructurePrior basin = new StructurePrior(Structure.BASIN, BankCoordinates.OPEN, new Scale(2, 3));
        for (double[] at : new double[][] {{0, 0}, {-400, 20}, {1e6, -1e6}}) {
            assertEquals(1, roughness(basin, at[0], at[1]), 0);
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Structure.class,
            names = {"FALL", "OPEN"})
    void onlyTheTubHasSlopesThatAreRougher(Structure structure) {
        StructurePrior prior = new StructurePrior(structure, STRAIGHT, Scale.PEG);
        for (double y = 0.2; y < 12; y += 0.7) {
            assertEquals(1, roughness(prior, 3, y), 0);
        }
    }

    /** A deep water is rough where a peg is: what its depths are multiplied by changes no place beside another. */
    @Test
    void aDeepWaterIsRoughAtTheSamePlaces() {
        for (double y = 0.2; y < 12; y += 0.7) {
            assertEquals(
                    roughness(tub(STRAIGHT, Scale.PEG), 0, y), roughness(tub(STRAIGHT, new Scale(4, 1)), 0, y), 1e-12);
        }
    }

    /**
     * A place in the middle of four readings, 1 m from each, is surer on the track than on the slope under the bank,
     * where the cross-profile is rougher.
     */
    @Test
    void levelGroundIsSurerThanASlopeWithTheSameReadingsAround() {
        assertTrue(sdAmongFour(2.1, USUAL) > sdAmongFour(6, USUAL));
        Hyperparameters profile =
                new Hyperparameters(USUAL.profileSdMetres(), USUAL.acrossMetres(), USUAL.alongMetres(), 0, 1, 0, 1, 1);
        assertTrue(sdAmongFour(2.1, profile) > sdAmongFour(6, profile));
        // Before any reading: h is 0.7 on level ground and more than 1.2 on a slope of 1 in 3.
        assertTrue(Math.sqrt(profileVariance(2.1) / profileVariance(6)) > 1.5);
    }

    /** Variance of the cross-profile at a place before any reading, by what the covariance is less without it. */
    private static double profileVariance(double y) {
        PlaceCoordinates place = at(tub(STRAIGHT, Scale.PEG), 0, y);
        Hyperparameters none =
                new Hyperparameters(0, 1, 1, USUAL.isotropicSdMetres(), USUAL.isotropicMetres(), 0, 1, 1);
        return new BottomCovariance(USUAL, Scale.PEG).between(place, 0, place, 0)
                - new BottomCovariance(none, Scale.PEG).between(place, 0, place, 0);
    }

    private static double sdAmongFour(double y, Hyperparameters hyper) {
        PlaceCoordinates places = PlaceCoordinates.of(
                new double[] {-1, 1, 0, 0, 0}, new double[] {y, y, y - 1, y + 1, y}, tub(STRAIGHT, Scale.PEG));
        BottomCovariance covariance = new BottomCovariance(hyper, Scale.PEG);
        double[] k = covariance(covariance, places, 4, 0.03 * 0.03);
        double[] toCentre = new double[4];
        covariance.between(places.part(0, 4), places, 4, toCentre);
        GaussianProcess conditioned = new GaussianProcess(k, new double[4], false);
        conditioned.whiten(toCentre);
        return Math.sqrt(covariance.between(places, 4, places, 4) - GaussianProcess.dot(toCentre, toCentre));
    }

    @Test
    void staysACovariance() throws InputException {
        Survey survey = Survey.of(TestPegs.bendWithIsland());
        Random random = new Random(8);
        double[] x = random.doubles(150, -11, 11).toArray();
        double[] y = random.doubles(150, -2, 14).toArray();
        PlaceCoordinates places = PlaceCoordinates.of(x, y, tub(survey.coordinates(), Scale.PEG));
        // Throws where a pivot is not above 0.
        GaussianProcess conditioned = new GaussianProcess(
                covariance(new BottomCovariance(USUAL, Scale.PEG), places, 150, 1e-9), new double[150], false);
        assertTrue(Double.isFinite(conditioned.logMarginalLikelihood()));
    }

    private static double[] covariance(BottomCovariance covariance, PlaceCoordinates places, int count, double noise) {
        double[] k = new double[count * count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                k[i * count + j] = covariance.between(places, i, places, j) + (i == j ? noise : 0);
            }
        }
        return k;
    }
}
