package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.model.InputException;
import pegbed.surface.prior.EdgeDepth;

/** How much water stands at the edge of a bank is unknown for the bank as a whole. */
class BankErrorsTest {
    @Test
    void pointsOfOneBankShareAnErrorAndOthersNone() throws InputException {
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bendWithIsland(), TestPegs.fan(6, 3)));
        for (StructureFit fit : bottom.fits()) {
            Observations o = fit.observations();
            double shared = EdgeDepth.of(fit.structure()).sharedSdMetres();
            int same = 0;
            int others = 0;
            for (int i = o.real; i < o.count; i++) {
                assertEquals(0, o.commonErrorCovariance(i, 0), "a bank and a reading");
                for (int j = o.real; j < i; j++) {
                    boolean one = o.visit(i) == o.visit(j);
                    assertEquals(one ? shared * shared : 0, o.commonErrorCovariance(i, j), 1e-15);
                    same += one ? 1 : 0;
                    others += one ? 0 : 1;
                }
            }
            assertTrue(same > 20 && others > 20, "near bank, far bank and island");
        }
    }

    /**
     * Some fifteen points a bank, each with an error of 0.15 m of its own, don't make its edge known to a few
     * centimetres.
     */
    @ParameterizedTest
    @ValueSource(ints = {0, 15, 30})
    void manyPointsOfABankLeaveItsEdgeInDoubt(int count) throws InputException {
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), TestPegs.fan(count, 3)));
        double own = EdgeDepth.of(bottom.structures().get(0).structure()).ownSdMetres();
        for (double x = -8; x <= 8; x += 4) {
            double near = -0.4 + 0.05 * x + 0.01 * x * x;
            double far = 11.8 + 0.1 * x - 0.005 * x * x;
            assertTrue(
                    bottom.at(x, near + 0.1).sdMetres() > own, "near bank at " + x + ": " + bottom.at(x, near + 0.1));
            assertTrue(bottom.at(x, far - 0.1).sdMetres() > own, "far bank at " + x + ": " + bottom.at(x, far - 0.1));
        }
    }
}
