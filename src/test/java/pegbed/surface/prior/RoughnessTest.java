package pegbed.surface.prior;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
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
        public double across(double x, double y) {
            return y;
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
            Hyperparameters.ofLogs(Priors.banked(Scale.PEG).logMedians());

    @Test
    void growsFromLevelGroundToSlopes() {
        assertEquals(0.7, Roughness.at(0), 1e-12);
        assertEquals(1.1, Roughness.at(0.2), 1e-12);
        assertTrue(Roughness.at(3) < 1.5 && Roughness.at(3) > Roughness.at(0.6));
    }

    @Test
    void isThatOfTheTubsOwnSteepness() {
        checkSteepness(new PriorMean(STRAIGHT, Scale.PEG), 0.1, 11.9);
    }

    @Test
    void isThatOfTheTubsOwnSteepnessOnAPond() throws InputException {
        checkSteepness(new PriorMean(Survey.of(TestPegs.pond()).coordinates(), Scale.PEG), 0.1, 16);
    }

    private static void checkSteepness(PriorMean tub, double from, double to) {
        double h = 1e-5;
        for (double y = from; y <= to; y += 0.1) {
            double dx = tub.depth(tub.at(1 + h, y).share())
                    - tub.depth(tub.at(1 - h, y).share());
            double dy = tub.depth(tub.at(1, y + h).share())
                    - tub.depth(tub.at(1, y - h).share());
            double steepness = Math.hypot(dx, dy) / (2 * h);
            assertEquals(Roughness.at(steepness), tub.at(1, y).roughness(), 1e-4, "at " + y);
        }
    }

    /** So that the priors of σp and σr keep their meaning: 12 m between banks. */
    @Test
    void itsMeanSquareOverAUsualProfileIsALittleAboveOne() {
        PriorMean tub = new PriorMean(STRAIGHT, Scale.PEG);
        double sum = 0;
        for (int i = 0; i < 120; i++) {
            sum += Math.pow(tub.at(0, 0.05 + 0.1 * i).roughness(), 2);
        }
        assertEquals(1.2, sum / 120, 0.05);
    }

    @Test
    void openWaterIsEverywhereAlike() {
        PriorMean tub = new PriorMean(BankCoordinates.OPEN, new Scale(2, 3));
        for (double[] at : new double[][] {{0, 0}, {-400, 20}, {1e6, -1e6}}) {
            assertEquals(1, tub.at(at[0], at[1]).roughness(), 0);
        }
    }

    /** A deep water is rough where a peg is: what its depths are multiplied by changes no place beside another. */
    @Test
    void aDeepWaterIsRoughAtTheSamePlaces() {
        for (double y = 0.2; y < 12; y += 0.7) {
            assertEquals(
                    new PriorMean(STRAIGHT, Scale.PEG).at(0, y).roughness(),
                    new PriorMean(STRAIGHT, new Scale(4, 1)).at(0, y).roughness(),
                    1e-12);
        }
    }

    /** A place in the middle of four readings, 1 m from each, is surer on the track than on the slope under the bank. */
    @Test
    void levelGroundIsSurerThanASlopeWithTheSameReadingsAround() {
        double level = sdAmongFour(6);
        double slope = sdAmongFour(2.1);
        assertTrue(slope > 1.5 * level, level + " and " + slope);
    }

    private static double sdAmongFour(double y) {
        PriorMean tub = new PriorMean(STRAIGHT, Scale.PEG);
        PlaceCoordinates places =
                PlaceCoordinates.of(new double[] {-1, 1, 0, 0, 0}, new double[] {y, y, y - 1, y + 1, y}, STRAIGHT, tub);
        double[] k = covariance(places, 4, 0.03 * 0.03);
        BottomCovariance covariance = new BottomCovariance(USUAL, Scale.PEG, false);
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
        PlaceCoordinates places =
                PlaceCoordinates.of(x, y, survey.coordinates(), new PriorMean(survey.coordinates(), Scale.PEG));
        // Throws where a pivot is not above 0.
        GaussianProcess conditioned = new GaussianProcess(covariance(places, 150, 1e-9), new double[150], false);
        assertTrue(Double.isFinite(conditioned.logMarginalLikelihood()));
    }

    private static double[] covariance(PlaceCoordinates places, int count, double noise) {
        BottomCovariance covariance = new BottomCovariance(USUAL, Scale.PEG, false);
        double[] k = new double[count * count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                k[i * count + j] = covariance.between(places, i, places, j) + (i == j ? noise : 0);
            }
        }
        return k;
    }
}
