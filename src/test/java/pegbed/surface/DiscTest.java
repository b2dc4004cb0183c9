package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;
import pegbed.surface.prior.PlaceCoordinates;
import pegbed.surface.survey.Survey;

class DiscTest {
    /** The nodes are those of the 25 cm grid within 0.5 m, each once. */
    @Test
    void hasTheThirteenNodesWithinHalfAMetre() {
        long within = IntStream.rangeClosed(-2, 2)
                .mapToLong(i -> IntStream.rangeClosed(-2, 2)
                        .filter(j -> Math.hypot(i, j) * 0.25 <= 0.5)
                        .count())
                .sum();
        assertEquals(Disc.NODES, within);
        long different = IntStream.range(0, Disc.NODES)
                .mapToObj(i -> Disc.DX[i] + " " + Disc.DY[i])
                .distinct()
                .count();
        assertEquals(13, different);
        for (int i = 0; i < Disc.NODES; i++) {
            assertEquals(true, Math.hypot(Disc.DX[i], Disc.DY[i]) <= 2);
        }
    }

    /** Of a plane the weights make its height at the centre and its slopes, exactly. */
    @Test
    void weightsReproduceAPlane() {
        double[] found = new double[3];
        for (int i = 0; i < Disc.NODES; i++) {
            double z = 1.7 + 0.3 * Disc.DX[i] * 0.25 - 0.8 * Disc.DY[i] * 0.25;
            for (int f = 0; f < 3; f++) {
                found[f] += Disc.weight(f, i) * z;
            }
        }
        assertEquals(1.7, found[0], 1e-12);
        assertEquals(0.3, found[1], 1e-12);
        assertEquals(-0.8, found[2], 1e-12);
    }

    @Test
    void steepnessAndDoubt() {
        Disc disc = new Disc(1.2, 0.3, -0.4, 0.04, 0, 0, 1, 0, 1);
        assertEquals(0.5, disc.slope(), 1e-15);
        assertEquals(0.2, disc.sdMetres(), 1e-15);
    }

    @ParameterizedTest
    @CsvSource({"0, 6", "-4, 2.5", "7, 9.5", "0, 0.1"})
    void depthAndSlopesAreSumsOfPlaces(double x, double y) throws InputException {
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), TestPegs.fan(20, 41)));
        double[] sums = new double[3];
        for (int i = 0; i < Disc.NODES; i++) {
            double depth =
                    bottom.at(x + Disc.DX[i] * 0.25, y + Disc.DY[i] * 0.25).depthMetres();
            for (int f = 0; f < 3; f++) {
                sums[f] += Disc.weight(f, i) * depth;
            }
        }
        Disc disc = bottom.disc(x, y);
        assertEquals(sums[0], disc.depthMetres(), 1e-10);
        assertEquals(sums[1], disc.slopeX(), 1e-10);
        assertEquals(sums[2], disc.slopeY(), 1e-10);
    }

    /** The prior that the grid takes apart is the plain double sum over the nodes. */
    @ParameterizedTest
    @CsvSource({"0, 6", "-4, 2.5", "7, 9.5", "0, 0.1", "-9, 1"})
    void priorIsThePlainDoubleSum(double x, double y) throws InputException {
        for (StructureFit prior : TestPegs.fit(TestPegs.bendWithIsland()).fits()) {
            checkPrior(prior, x, y);
        }
        checkPrior(BottomModel.fit(Survey.open(List.of()), Monitor.NONE).fits().get(0), x, y);
    }

    private static void checkPrior(StructureFit prior, double x, double y) {
        GridFrame frame = new GridFrame(x - 1.25, y - 1, 0.25, 12, 9);
        boolean[] water = new boolean[frame.size()];
        water[frame.index(5, 4)] = true;
        water[frame.index(6, 4)] = true;
        GridNodes nodes = new GridNodes(frame, water);
        double[][] at = nodes.coordinates();
        DiscPrior lags = new DiscPrior(prior.covariance(), nodes, prior.places(at[0], at[1]));
        DiscStencil stencil = new DiscStencil(nodes);
        stencil.to(frame.index(5, 4));
        double[] covariances = lags.of(stencil);
        double[] xs = new double[Disc.NODES];
        double[] ys = new double[Disc.NODES];
        for (int i = 0; i < Disc.NODES; i++) {
            xs[i] = x + Disc.DX[i] * 0.25;
            ys[i] = y + Disc.DY[i] * 0.25;
        }
        PlaceCoordinates places = prior.places(xs, ys);
        int pair = 0;
        for (int f = 0; f < 3; f++) {
            for (int g = f; g < 3; g++) {
                double sum = 0;
                for (int i = 0; i < Disc.NODES; i++) {
                    for (int j = 0; j < Disc.NODES; j++) {
                        sum += Disc.weight(f, i)
                                * Disc.weight(g, j)
                                * prior.covariance().between(places, i, places, j);
                    }
                }
                assertEquals(sum, covariances[pair], 1e-11, prior.structure() + ", functionals " + f + " and " + g);
                pair++;
            }
        }
    }

    /** Far from every sounding the posterior of open water is the prior with its constant unknown. */
    @Test
    void withoutSoundingsTheCovarianceIsThePriors() {
        FittedBottom open = BottomModel.fit(Survey.open(List.of()), Monitor.NONE);
        Disc disc = open.disc(3, 4);
        double[] xs = new double[Disc.NODES];
        double[] ys = new double[Disc.NODES];
        for (int i = 0; i < Disc.NODES; i++) {
            xs[i] = 3 + Disc.DX[i] * 0.25;
            ys[i] = 4 + Disc.DY[i] * 0.25;
        }
        StructureFit basin = open.fits().get(0);
        PlaceCoordinates places = basin.places(xs, ys);
        double sum = 0;
        for (int i = 0; i < Disc.NODES; i++) {
            for (int j = 0; j < Disc.NODES; j++) {
                sum += basin.covariance().between(places, i, places, j) / 169;
            }
        }
        assertEquals(sum, disc.varD(), 1e-12);
        // No direction is preferred.
        assertEquals(disc.varX(), disc.varY(), 1e-12);
        assertEquals(0, disc.covXY(), 1e-12);
    }
}
