package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.surface.posterior.Gradient;
import pegbed.surface.posterior.Prediction;
import pegbed.surface.prior.BankDistances;
import pegbed.surface.survey.Sounding;

class SteepnessDoubtTest {
    @Test
    void levelGroundIsBetterKnownThanTheSolveSaysAndSlopesWorse() {
        assertEquals(0.75, SteepnessDoubt.bottom(0), 1e-12);
        assertEquals(1.05, SteepnessDoubt.bottom(0.25), 1e-12);
        assertEquals(1.8, SteepnessDoubt.bottom(5), 1e-12);
        Gradient level = SteepnessDoubt.of(new Gradient(0, 0, 0.04, 0.01));
        assertEquals(0.09 * 0.04, level.varDx(), 1e-12);
        assertEquals(0.09 * 0.01, level.varDy(), 1e-12);
        Gradient steep = SteepnessDoubt.of(new Gradient(0.6, -0.8, 0.04, 0.01));
        assertEquals(0.6, steep.dx(), 1e-12);
        assertEquals(1.96 * 0.04, steep.varDx(), 1e-12);
    }

    /** With one visit nothing but the factors stands between what is stated and what the solve says. */
    @Test
    void theCovarianceIsTheSolvesTimesBothFactors() throws InputException {
        List<Reading> readings = new ArrayList<>();
        for (double angle = -40; angle <= 40; angle += 20) {
            for (double distance : new double[] {3, 5, 7, 9}) {
                Place place = Place.polar(distance, angle);
                readings.add(Reading.of(distance, angle, TestPegs.bottom(place.xMetres(), place.yMetres())));
            }
        }
        FittedBottom bottom = TestPegs.fit(TestPegs.bend().withToday(v -> v.withReadings(readings)));
        List<Sounding> at = List.of(Sounding.of(Reading.of(6, 10, 1), 0), Sounding.of(Reading.of(2.5, -30, 1), 0));
        double[][] stated = SteepnessDoubt.covariance(bottom, at);
        for (int i = 0; i < 2; i++) {
            Prediction p = bottom.at(at.get(i).xMetres(), at.get(i).yMetres());
            BankDistances distances = BankDistances.of(
                    new double[] {at.get(i).xMetres()},
                    new double[] {at.get(i).yMetres()},
                    bottom.survey().coordinates(),
                    1);
            double placing = PlacingVariance.at(distances, 0, p.slopeX(), p.slopeY());
            double factor = SteepnessDoubt.bottom(Math.hypot(p.slopeX(), p.slopeY()));
            assertEquals(factor * Math.sqrt(p.sdMetres() * p.sdMetres() - placing), Math.sqrt(stated[i][i]), 1e-9);
        }
        assertTrue(stated[0][1] != 0 && stated[0][1] == stated[1][0]);
    }
}
