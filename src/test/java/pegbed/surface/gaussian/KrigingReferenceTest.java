package pegbed.surface.gaussian;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** The one solver against ordinary kriging as others have published it. */
public class KrigingReferenceTest {
    /** A solved data set whose covariance depends on distance alone. */
    private record Kriged(double[][] data, DoubleUnaryOperator covariance, GaussianProcess solved) {
        static Kriged of(double[][] data, DoubleUnaryOperator covariance) {
            int n = data.length;
            double[] k = new double[n * n];
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    k[i * n + j] =
                            covariance.applyAsDouble(Math.hypot(data[i][0] - data[j][0], data[i][1] - data[j][1]));
                }
            }
            double[] values = Arrays.stream(data).mapToDouble(row -> row[2]).toArray();
            return new Kriged(data, covariance, new GaussianProcess(k, values, true));
        }

        double[] covariances(double x, double y) {
            return Arrays.stream(data)
                    .mapToDouble(row -> covariance.applyAsDouble(Math.hypot(row[0] - x, row[1] - y)))
                    .toArray();
        }

        double estimate(double x, double y) {
            return solved.mean(covariances(x, y));
        }

        double variance(double x, double y) {
            double[] k = covariances(x, y);
            solved.whiten(k);
            return solved.covariance(covariance.applyAsDouble(0), k, k, 1, 1);
        }

        double[] weights(double x, double y) {
            return solved.weights(covariances(x, y));
        }
    }

    /** Isaaks & Srivastava, An Introduction to Applied Geostatistics (1989), ch. 12. */
    @Test
    void agreesWithIsaaksAndSrivastava() {
        Kriged kriged = Kriged.of(
                new double[][] {
                    {61, 139, 477},
                    {63, 140, 696},
                    {64, 129, 227},
                    {68, 128, 646},
                    {71, 140, 606},
                    {73, 141, 791},
                    {75, 128, 783}
                },
                h -> 10 * Math.exp(-0.3 * h));
        assertArrayEquals(
                new double[] {0.1729, 0.3178, 0.1287, 0.0864, 0.1511, 0.0572, 0.0858},
                kriged.weights(65, 137),
                0.00005);
        assertEquals(592.729, kriged.estimate(65, 137), 0.0005);
        assertEquals(8.956, kriged.variance(65, 137), 0.0005);
    }

    /** Kitanidis, Introduction to Geostatistics (1997), ex. 3.2: γ(h) = 0.1 + 0.006 h, γ(0) = 0, here C = 10 − γ. */
    private static final Kriged KITANIDIS = Kriged.of(
            new double[][] {{9.7, 47.6, 1.22}, {43.8, 24.6, 2.822}}, h -> 10 - (h == 0 ? 0 : 0.1 + 0.006 * h));

    @Test
    void agreesWithKitanidis() {
        double[] weights = KITANIDIS.weights(18.8, 67.9);
        assertEquals(0.7400811, weights[0], 5e-8);
        assertEquals(0.2599189, weights[1], 5e-8);
        assertEquals(1.63639, KITANIDIS.estimate(18.8, 67.9), 5e-6);
        assertEquals(0.42010, KITANIDIS.variance(18.8, 67.9), 5e-6);
    }

    @Test
    void givesTheDatumWithoutDoubtAtADatum() {
        assertEquals(1.22, KITANIDIS.estimate(9.7, 47.6), 1e-12);
        assertEquals(0, KITANIDIS.variance(9.7, 47.6), 1e-12);
        assertArrayEquals(new double[] {1, 0}, KITANIDIS.weights(9.7, 47.6), 1e-12);
    }

    /** The nugget told as noise of the readings instead gives the same estimate away from the data. */
    @Test
    void takesANuggetAsNoiseToo() {
        double[][] data = KITANIDIS.data();
        double apart = 9.9 - 0.006 * Math.hypot(data[0][0] - data[1][0], data[0][1] - data[1][1]);
        GaussianProcess noisy =
                new GaussianProcess(new double[] {10, apart, apart, 10}, new double[] {1.22, 2.822}, true);
        double[] k = Arrays.stream(data)
                .mapToDouble(row -> 9.9 - 0.006 * Math.hypot(row[0] - 18.8, row[1] - 67.9))
                .toArray();
        assertEquals(1.63639, noisy.mean(k), 5e-6);
        noisy.whiten(k);
        // Without the nugget of the new place itself.
        assertEquals(0.42010 - 0.1, noisy.covariance(9.9, k, k, 1, 1), 5e-6);
    }

    /**
     * Ordinary-kriging grid of the program KT3D_H2O (Karanovic, Tonkin & Wilson 2009, Groundwater 47(4):580–586), from
     * {@code kt3d/}; SOURCE.txt there tells its layout (the data file holds fifteen points, the last line without an
     * end). C(h) = 500·exp(−h/1000).
     */
    @Test
    void agreesWithAnOutsideGridOfTenThousandNodes() throws IOException {
        double[][] data = lines("/kt3d/test_data.txt").stream()
                .map(KrigingReferenceTest::numbers)
                .toArray(double[][]::new);
        assertEquals(15, data.length);
        Kriged kriged = Kriged.of(data, h -> 500 * Math.exp(-h / 1000));
        List<double[]> rows = lines("/kt3d/test1_answer.asc").stream()
                .filter(line -> !Character.isLetter(line.charAt(0)))
                .map(KrigingReferenceTest::numbers)
                .toList();
        double[] nodes = rows.stream().flatMapToDouble(Arrays::stream).toArray();
        assertEquals(100 * 100, nodes.length);
        for (int i = 0; i < nodes.length; i++) {
            double x = 1067275 + 50 * (i % 100);
            double y = 241459 + 25 * (99 - i / 100);
            assertEquals(nodes[i], kriged.estimate(x, y), 2e-5, "node " + i);
        }
    }

    @Test
    void weightsAddUpToOneAndMakeTheEstimate() {
        double[][] data = {{0, 0, 1}, {3, 1, 4}, {1, 2, 1}, {5, 5, 5}};
        Kriged kriged = Kriged.of(data, h -> 2 * Math.exp(-h));
        double[] weights = kriged.weights(2, 2);
        assertEquals(1, Arrays.stream(weights).sum(), 1e-12);
        double sum = 0;
        for (int i = 0; i < data.length; i++) {
            sum += weights[i] * data[i][2];
        }
        assertEquals(sum, kriged.estimate(2, 2), 1e-12);
        // Far away nothing is known but the constant.
        assertEquals(kriged.solved().constant(), kriged.estimate(1e6, 0), 1e-12);
        assertTrue(kriged.variance(1e6, 0) > 2);
    }

    public static List<String> lines(String resource) throws IOException {
        try (InputStream in = KrigingReferenceTest.class.getResourceAsStream(resource)) {
            List<String> lines = new ArrayList<>(new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList());
            lines.removeIf(String::isBlank);
            return lines;
        }
    }

    private static double[] numbers(String line) {
        return Arrays.stream(line.trim().split("\\s+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
