package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import pegbed.geometry.PegWater;
import pegbed.geometry.Shapes;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.surface.grid.Field;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;
import pegbed.surface.posterior.Prediction;
import pegbed.surface.prior.BankDistances;
import pegbed.surface.survey.Survey;

class BottomGridTest {
    private static FittedBottom bottom;
    private static PegWater water;
    private static BottomGrid grid;

    @BeforeAll
    static void compute() throws InputException {
        bottom = TestPegs.fit(TestPegs.with(TestPegs.bendWithIsland(), TestPegs.fan(25, 31)));
        water = bottom.survey().water().orElseThrow();
        grid = bottom.grid(Monitor.NONE);
    }

    private static double x(int node) {
        return grid.frame().x(node % grid.frame().columns());
    }

    private static double y(int node) {
        return grid.frame().y(node / grid.frame().columns());
    }

    private static Point point(int node) {
        return Shapes.FACTORY.createPoint(new Coordinate(x(node), y(node)));
    }

    /** Every seventh node, to be quick. */
    private static IntStream nodes() {
        return IntStream.range(0, grid.frame().size()).filter(i -> i % 7 == 0);
    }

    @Test
    void valuesAreThoseOfThePlaces() {
        nodes().filter(i -> !Double.isNaN(grid.depth().at(i))).forEach(i -> {
            Prediction p = bottom.at(x(i), y(i));
            assertEquals(p.depthMetres(), grid.depth().at(i), 1e-9);
        });
    }

    /**
     * The doubt of the bottom alone is the same. The slope that an unsure place multiplies is that between the nodes
     * here and a finer one there; a metre from the banks that makes less than a centimetre.
     */
    @Test
    void doubtsAreThoseOfThePlaces() {
        GridFrame frame = grid.frame();
        Field depth = grid.depth();
        nodes().filter(grid::isWater).forEach(i -> {
            Prediction p = bottom.at(x(i), y(i));
            double place = p.sdMetres() * p.sdMetres() - placing(i, p.slopeX(), p.slopeY());
            double gx = (depth.at(i + 1) - depth.at(i - 1)) / (2 * frame.cellMetres());
            double gy = (depth.at(i + frame.columns()) - depth.at(i - frame.columns())) / (2 * frame.cellMetres());
            double node = grid.sd().at(i) * grid.sd().at(i) - placing(i, gx, gy);
            assertEquals(place, node, 1e-9);
            boolean edge = water.fromNear(x(i), y(i)) < 1
                    || water.fromFar(x(i), y(i)) < 1
                    || water.islands().get(0).isWithinDistance(point(i), 1);
            assertEquals(p.sdMetres(), grid.sd().at(i), edge ? 0.05 : 0.01);
        });
    }

    private static double placing(int node, double slopeX, double slopeY) {
        BankDistances distances = BankDistances.of(new double[] {x(node)}, new double[] {y(node)}, water, 1);
        return PlacingVariance.at(distances, 0, slopeX, slopeY);
    }

    @Test
    void discsAreThoseOfThePlaces() {
        nodes().filter(grid::isWater).forEach(i -> {
            Disc expected = bottom.disc(x(i), y(i));
            Disc disc = grid.disc(i);
            assertEquals(expected.depthMetres(), disc.depthMetres(), 1e-9);
            assertEquals(expected.depthMetres(), grid.disc(i).depthMetres(), 1e-9);
            assertEquals(expected.slopeX(), disc.slopeX(), 1e-9);
            assertEquals(expected.slopeY(), disc.slopeY(), 1e-9);
            assertEquals(expected.varD(), disc.varD(), 1e-9);
            assertEquals(expected.covDX(), disc.covDX(), 1e-9);
            assertEquals(expected.covDY(), disc.covDY(), 1e-9);
            assertEquals(expected.varX(), disc.varX(), 1e-9);
            assertEquals(expected.covXY(), disc.covXY(), 1e-9);
            assertEquals(expected.varY(), disc.varY(), 1e-9);
            BottomModelTest.positiveSemidefinite(disc);
        });
    }

    @Test
    void everyNodeInTheWaterHasAllAndFarFromItNone() {
        Geometry wide = water.water().buffer(1.5);
        for (int i = 0; i < grid.frame().size(); i++) {
            boolean in = water.isWater(x(i), y(i));
            assertEquals(in, grid.isWater(i));
            assertEquals(in, !Double.isNaN(grid.disc(i).depthMetres()));
            if (in) {
                assertTrue(Double.isFinite(grid.depth().at(i)) && grid.sd().at(i) > 0);
            } else if (!wide.covers(point(i))) {
                assertTrue(Double.isNaN(grid.depth().at(i))
                        && Double.isNaN(grid.sd().at(i)));
            }
        }
    }

    /** So that what is drawn can be clipped to the outline: half a metre beyond it there still are values. */
    @Test
    void valuesReachBeyondTheOutline() {
        Geometry wide = water.water().buffer(0.5);
        nodes().filter(i -> wide.covers(point(i)))
                .forEach(i -> assertFalse(Double.isNaN(grid.depth().at(i))));
    }

    @Test
    void openWaterHasNoGrid() {
        FittedBottom open = BottomModel.fit(Survey.open(List.of()), Monitor.NONE);
        assertThrows(IllegalStateException.class, () -> open.grid(Monitor.NONE));
    }

    @Test
    void tellsItsProgressAndStopsWhenNobodyWantsIt() {
        List<Double> shares = new ArrayList<>();
        bottom.grid(new Monitor() {
            @Override
            public void progress(double share) {
                shares.add(share);
            }

            @Override
            public boolean cancelled() {
                return false;
            }
        });
        for (int i = 1; i < shares.size(); i++) {
            assertTrue(shares.get(i) >= shares.get(i - 1));
        }
        assertEquals(1, shares.get(shares.size() - 1));
        Monitor nobody = new Monitor() {
            @Override
            public void progress(double share) {}

            @Override
            public boolean cancelled() {
                return true;
            }
        };
        assertThrows(Monitor.Cancelled.class, () -> bottom.grid(nobody));
        assertThrows(Monitor.Cancelled.class, () -> BottomModel.fit(bottom.survey(), nobody));
    }
}
