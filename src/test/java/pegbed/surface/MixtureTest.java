package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbed.model.InputException;
import pegbed.surface.posterior.Disc;
import pegbed.surface.posterior.Gradient;
import pegbed.surface.posterior.Prediction;
import pegbed.surface.prior.BankDistances;

/** A mixture's mean and variance are those of its parts: the law of total expectation and of total variance. */
class MixtureTest {
    private static FittedBottom bottom;

    @BeforeAll
    static void fit() throws InputException {
        bottom = TestPegs.fit(TestPegs.with(TestPegs.bendWithIsland(), TestPegs.fan(14, 8)));
        assertTrue(bottom.counting().length > 1, "a mixture");
    }

    @ParameterizedTest
    @CsvSource({"0, 6", "-4, 2.5", "7, 9.5", "0, 0.1", "1.7, 7"})
    void depthAndDoubtAreTheMomentsOfTheComponents(double x, double y) {
        Prediction p = bottom.at(x, y);
        List<FittedBottom.Component> components = bottom.components(x, y);
        double weights = 0;
        double mean = 0;
        for (FittedBottom.Component c : components) {
            weights += c.weight();
            mean += c.weight() * c.depthMetres();
        }
        double variance = 0;
        for (FittedBottom.Component c : components) {
            double off = c.depthMetres() - mean;
            variance += c.weight() * (c.sdMetres() * c.sdMetres() + off * off);
        }
        assertEquals(1, weights, 1e-12);
        assertEquals(mean, p.depthMetres(), 1e-12);
        assertEquals(Math.sqrt(variance), p.sdMetres(), 1e-9);
    }

    /** Each component is one structure's own prediction, and what an unsure place adds on the mixture's slope. */
    @ParameterizedTest
    @CsvSource({"0, 6", "-4, 2.5", "7, 9.5", "0, 0.1"})
    void componentsAreTheStructuresOwn(double x, double y) {
        List<FittedBottom.Component> components = bottom.components(x, y);
        Prediction p = bottom.at(x, y);
        BankDistances distances = BankDistances.of(
                new double[] {x}, new double[] {y}, bottom.survey().coordinates(), 1);
        double placing = PlacingVariance.at(distances, 0, p.slopeX(), p.slopeY());
        int[] counting = bottom.counting();
        assertEquals(counting.length, components.size());
        double slopeX = 0;
        for (int i = 0; i < counting.length; i++) {
            StructureFit fit = bottom.fits().get(counting[i]);
            double[] depth = new double[1];
            double[] variance = new double[1];
            fit.predict(new double[] {x}, new double[] {y}, depth, variance);
            assertEquals(depth[0], components.get(i).depthMetres(), 1e-12);
            assertEquals(Math.sqrt(variance[0] + placing), components.get(i).sdMetres(), 1e-12);
            slopeX += bottom.weight(counting[i]) * fit.gradient(x, y).dx();
        }
        assertEquals(slopeX, p.slopeX(), 1e-12);
    }

    @Test
    void gradientsHaveTheMixturesVariance() {
        Gradient g = bottom.gradients(new double[] {-4}, new double[] {2.5})[0];
        double variance = 0;
        for (int s : bottom.counting()) {
            Gradient own = bottom.fits().get(s).gradient(-4, 2.5);
            variance += bottom.weight(s) * (own.varDy() + (own.dy() - g.dy()) * (own.dy() - g.dy()));
        }
        assertEquals(variance, g.varDy(), 1e-12);
    }

    @Test
    void aDiscOfOneIsThatDisc() {
        Disc disc = bottom.fits().get(0).disc(1, 5);
        assertSame(disc, Disc.mixture(List.of(new Disc.Component(1, disc))));
    }

    /** Covariances about the mean: Σ w (C + (m − m̄)(m − m̄)ᵀ), worked for each pair. */
    @Test
    void aDiscHasTheMomentsOfItsComponents() {
        List<Disc.Component> components = new ArrayList<>();
        components.add(new Disc.Component(0.5, new Disc(1.2, 0.1, -0.2, 0.04, 0.01, -0.005, 0.02, 0.003, 0.03)));
        components.add(new Disc.Component(0.3, new Disc(1.5, 0.3, 0.1, 0.09, -0.02, 0.01, 0.05, -0.01, 0.04)));
        components.add(new Disc.Component(0.2, new Disc(0.9, -0.1, 0.4, 0.01, 0, 0, 0.01, 0, 0.02)));
        Disc mixture = Disc.mixture(components);

        // 0.5·1.2 + 0.3·1.5 + 0.2·0.9, and so on
        double[] mean = {1.23, 0.12, 0.01};
        assertEquals(mean[0], mixture.depthMetres(), 1e-12);
        assertEquals(mean[1], mixture.slopeX(), 1e-12);
        assertEquals(mean[2], mixture.slopeY(), 1e-12);
        double[][] c = new double[3][3];
        for (Disc.Component component : components) {
            Disc d = component.disc();
            double[] off = {d.depthMetres() - mean[0], d.slopeX() - mean[1], d.slopeY() - mean[2]};
            double[][] own = {
                {d.varD(), d.covDX(), d.covDY()}, {d.covDX(), d.varX(), d.covXY()}, {d.covDY(), d.covXY(), d.varY()}
            };
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    c[i][j] += component.weight() * (own[i][j] + off[i] * off[j]);
                }
            }
        }
        assertEquals(c[0][0], mixture.varD(), 1e-12);
        assertEquals(c[0][1], mixture.covDX(), 1e-12);
        assertEquals(c[0][2], mixture.covDY(), 1e-12);
        assertEquals(c[1][1], mixture.varX(), 1e-12);
        assertEquals(c[1][2], mixture.covXY(), 1e-12);
        assertEquals(c[2][2], mixture.varY(), 1e-12);
        BottomModelTest.positiveSemidefinite(mixture);
    }

    @Test
    void theDiscsOfABottomAreMixedByItsWeights() {
        Disc disc = bottom.disc(-2, 4);
        int[] counting = bottom.counting();
        assertEquals(counting.length, disc.components().size());
        for (int i = 0; i < counting.length; i++) {
            assertEquals(bottom.weight(counting[i]), disc.components().get(i).weight());
            assertEquals(
                    bottom.fits().get(counting[i]).disc(-2, 4),
                    disc.components().get(i).disc());
        }
    }
}
