package pegbed.surface.gaussian;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.model.InputException;
import pegbed.surface.TestPegs;
import pegbed.surface.prior.BottomCovariance;
import pegbed.surface.prior.Hyperparameters;
import pegbed.surface.prior.PlaceCoordinates;
import pegbed.surface.prior.Structure;
import pegbed.surface.prior.StructurePrior;
import pegbed.surface.survey.Scale;
import pegbed.surface.survey.Survey;

class MaternTest {
    /** Rasmussen & Williams (2006), eq. 4.17; values computed with an independent program. */
    @ParameterizedTest
    @CsvSource({
        "0,   1,            1",
        "0.5, 0.784887654,  0.8286491424",
        "1,   0.4833577246, 0.5239941088",
        "2,   0.1397313502, 0.1386602191"
    })
    void agreesWithOutsideValues(double r, double threeHalves, double fiveHalves) {
        assertEquals(threeHalves, Matern.threeHalves(r), 5e-11);
        assertEquals(fiveHalves, Matern.fiveHalves(r), 5e-11);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.7, 1.3, 4})
    void manyAtOnceAreTheSameWithTheirDerivatives(double r) {
        double[] distances = {1.7, 2 * r, 0, 12, 3};
        double[] three = new double[5];
        double[] threeByLog = new double[5];
        double[] five = new double[5];
        double[] fiveByLog = new double[5];
        Matern.threeHalves(distances, 2, three, threeByLog);
        Matern.fiveHalves(distances, 2, five, fiveByLog);

        assertEquals(Matern.threeHalves(r), three[1], 1e-11);
        assertEquals(Matern.fiveHalves(r), five[1], 1e-11);
        assertEquals(slope(s -> Matern.threeHalves(r * Math.exp(-s))), threeByLog[1], 1e-8);
        assertEquals(slope(s -> Matern.fiveHalves(r * Math.exp(-s))), fiveByLog[1], 1e-8);
    }

    @Test
    void manyExponentialsAtOnceAreExponentials() {
        double[] x = new double[6001];
        for (int i = 0; i < x.length; i++) {
            x[i] = i / 100.0;
        }
        double[] of = x.clone();
        Exponential.ofNegative(of, 1, x.length);

        assertEquals(0, of[0], "what is before the first is left alone");
        for (int i = 1; i < x.length; i++) {
            assertEquals(Math.exp(-x[i]), of[i], 1e-12, "at " + x[i]);
        }
        double[] far = {0, 61, 1e9, Double.MAX_VALUE, Double.POSITIVE_INFINITY, Double.NaN};
        Exponential.ofNegative(far, 0, far.length);
        assertEquals(1, far[0]);
        for (int i = 1; i < 5; i++) {
            assertEquals(0, far[i], 1e-26);
        }
        assertTrue(Double.isNaN(far[5]));
    }

    @Test
    void covariancesOfManyPlacesAreThoseOfEach() throws InputException {
        Random random = new Random(4);
        Hyperparameters all = new Hyperparameters(0.3, 1.4, 12, 0.2, 3, 0.08, 1.2, 1.1);
        for (Structure structure : Structure.values()) {
            StructurePrior prior = prior(structure);
            checkManyAtOnce(random, prior, prior.priors().medians());
            checkManyAtOnce(random, prior, all);
        }
    }

    private static void checkManyAtOnce(Random random, StructurePrior prior, Hyperparameters hyper) {
        PlaceCoordinates many = places(random, 37, prior);
        PlaceCoordinates other = places(random, 3, prior);
        BottomCovariance k = new BottomCovariance(hyper, prior.scale(), 0.003);
        double[] row = new double[37];
        // Three terms, each by an exponential within 1e-12.
        k.between(many, other, 1, row);
        for (int i = 0; i < 37; i++) {
            assertEquals(
                    k.between(many, i, other, 1),
                    row[i],
                    3e-12,
                    prior.structure().name());
        }
    }

    private static StructurePrior prior(Structure structure) throws InputException {
        return new StructurePrior(
                structure, Survey.of(TestPegs.bendWithIsland()).coordinates(), new Scale(1, 1));
    }

    private static PlaceCoordinates places(Random random, int count, StructurePrior prior) {
        double[] x = random.doubles(count, -8, 8).toArray();
        double[] y = random.doubles(count, 0.5, 11).toArray();
        return PlaceCoordinates.of(x, y, prior);
    }

    @Test
    void productIsTheProduct() {
        assertEquals(Matern.fiveHalves(0.4) * Matern.fiveHalves(1.9), Matern.fiveHalvesProduct(0.4, 1.9), 1e-15);
    }

    private static double slope(DoubleUnaryOperator f) {
        double h = 1e-5;
        return (f.applyAsDouble(h) - f.applyAsDouble(-h)) / (2 * h);
    }
}
