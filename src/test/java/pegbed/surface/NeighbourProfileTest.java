package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.surface.gaussian.GaussianProcess;
import pegbed.surface.grid.GridFrame;
import pegbed.surface.posterior.Disc;
import pegbed.surface.prior.BottomCovariance;
import pegbed.surface.prior.PlaceCoordinates;
import pegbed.surface.prior.Structure;
import pegbed.surface.prior.StructurePrior;
import pegbed.surface.survey.Survey;

class NeighbourProfileTest {
    /** An invented water that the tub does not know: wide shelves, a narrow deep track; a peg's own tilt and hump. */
    private static double water(double x, double y, double own) {
        double in = Math.min(1, Math.max(0, (y - 3.5) / 1.5)) * Math.min(1, Math.max(0, (8.5 - y) / 1.5));
        double edge = Math.min(1, Math.max(0, (y + 0.4) / 0.6)) * Math.min(1, Math.max(0, (12 - y) / 0.6));
        double hump = 0.15 * own * Math.exp(-((x - 3) * (x - 3) + (y - 6) * (y - 6)) / 3);
        return 0.1 + 0.45 * edge + 1.5 * in + 0.005 * own * x - hump;
    }

    private static Peg peg(int count, long number) {
        Random random = new Random(number);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double distance = 1.5 + 9.5 * random.nextDouble();
            double angle = -60 + 120 * random.nextDouble();
            Place place = Place.polar(distance, angle);
            double depth =
                    water(place.xMetres(), place.yMetres(), (double) (number % 3 - 1)) + 0.02 * random.nextGaussian();
            readings.add(Reading.of(distance, angle, Math.max(0.05, depth)));
        }
        return TestPegs.with(TestPegs.bend(), readings);
    }

    private static List<FittedBottom> mapped(int pegs) throws InputException {
        List<FittedBottom> mapped = new ArrayList<>();
        for (int i = 0; i < pegs; i++) {
            mapped.add(TestPegs.fit(peg(25, 100 + i)));
        }
        return mapped;
    }

    private static FittedBottom beside(Peg peg, List<FittedBottom> others) throws InputException {
        return BottomModel.fit(Survey.of(peg), NeighbouringPegs.of(others), Monitor.NONE);
    }

    private static double rmse(FittedBottom bottom, double own) {
        double sum = 0;
        int count = 0;
        for (double x = -5; x <= 5; x += 0.5) {
            for (double y = 1; y <= 10.5; y += 0.5, count++) {
                double error = bottom.at(x, y).depthMetres() - water(x, y, own);
                sum += error * error;
            }
        }
        return Math.sqrt(sum / count);
    }

    @Test
    void fewReadingsBesideMappedPegsAreNearerToTheTruth() throws InputException {
        Peg fresh = peg(6, 4);
        double alone = rmse(TestPegs.fit(fresh), 0);
        FittedBottom taught = beside(fresh, mapped(3));

        assertTrue(rmse(taught, 0) < 0.8 * alone, rmse(taught, 0) + " beside " + alone);
        assertEquals(3, taught.lesson().orElseThrow().pegs());
        assertTrue(taught.lesson().orElseThrow().heeded());
        double sd = TestPegs.fit(fresh).at(-4, 9).sdMetres();
        assertTrue(taught.at(-4, 9).sdMetres() < sd, "what the others tell lessens the doubt");
    }

    @Test
    void withoutPegsOfItsKindEveryBitIsAsBefore() throws InputException {
        Peg fresh = peg(20, 4);
        FittedBottom alone = TestPegs.fit(fresh);
        FittedBottom pond = TestPegs.fit(TestPegs.with(TestPegs.pond(), TestPegs.fan(20, 5)));
        FittedBottom unread = TestPegs.fit(peg(NeighbouringPegs.TEACHES_FROM - 1, 9));
        for (FittedBottom same : List.of(beside(fresh, List.of()), beside(fresh, List.of(pond, unread)))) {
            assertTrue(same.lesson().isEmpty());
            assertEquals(TestPegs.hyperparameters(alone), TestPegs.hyperparameters(same));
            assertArrayEquals(alone.weights(), same.weights(), 0);
            assertEquals(alone.at(2, 5), same.at(2, 5));
            assertEquals(alone.disc(-3, 7), same.disc(-3, 7));
        }
    }

    @Test
    void aPegUnlikeTheOthersIsHardlyMovedByThem() throws InputException {
        Peg other = TestPegs.with(TestPegs.bend(), TestPegs.fan(14, 8));
        FittedBottom alone = TestPegs.fit(other);
        FittedBottom taught = beside(other, mapped(4));

        assertFalse(taught.lesson().orElseThrow().heeded());
        for (double y = 2; y <= 10; y += 2) {
            assertEquals(alone.at(0, y).depthMetres(), taught.at(0, y).depthMetres(), 0.05, "at " + y);
        }
    }

    /** However many pegs say otherwise, at a reading the bottom is what was read there, to within its noise. */
    @Test
    void readingsOverruleTheOthers() throws InputException {
        Peg other = TestPegs.with(TestPegs.bend(), TestPegs.fan(40, 8));
        FittedBottom taught = beside(other, mapped(6));
        FittedBottom alone = TestPegs.fit(other);
        double difference = 0;
        for (Reading reading : other.readings()) {
            double x = reading.place().xMetres();
            double y = reading.place().yMetres();
            difference +=
                    Math.abs(taught.at(x, y).depthMetres() - alone.at(x, y).depthMetres())
                            / other.readings().size();
        }
        assertTrue(difference < 0.015, "mean " + difference);
    }

    @Test
    void pegsThatDisagreeTeachLess() throws InputException {
        List<FittedBottom> agreeing = mapped(3);
        List<FittedBottom> disagreeing = List.of(
                agreeing.get(0),
                TestPegs.fit(TestPegs.with(TestPegs.bend(), TestPegs.fan(25, 3))),
                TestPegs.fit(TestPegs.with(
                        TestPegs.bend(),
                        TestPegs.fan(25, 4).stream()
                                .map(r -> Reading.of(
                                        r.place().distanceMetres(), r.place().angleDegrees(), 2.2 - r.depthMetres()))
                                .toList())));
        Peg fresh = peg(3, 4);
        FittedBottom little = beside(fresh, disagreeing);
        FittedBottom much = beside(fresh, agreeing);
        // They speak of the tub only.
        double doubt = tubSd(little);
        assertTrue(doubt > 1.3 * tubSd(much), doubt + " beside " + tubSd(much));
        assertTrue(little.at(-3, 9).sdMetres() > much.at(-3, 9).sdMetres());
    }

    private static double tubSd(FittedBottom bottom) {
        double[] depth = new double[1];
        double[] variance = new double[1];
        TestPegs.fit(bottom, Structure.TUB).predict(new double[] {-3}, new double[] {9}, depth, variance);
        return Math.sqrt(variance[0]);
    }

    @Test
    void theOrderOfTheOthersDoesNotMatter() throws InputException {
        List<FittedBottom> others = mapped(3);
        List<FittedBottom> turned = new ArrayList<>(others);
        Collections.reverse(turned);
        Peg fresh = peg(6, 4);
        assertEquals(
                beside(fresh, others).at(1, 5).depthMetres(),
                beside(fresh, turned).at(1, 5).depthMetres(),
                1e-9);
    }

    /**
     * What is common by the sums of each peg's precision is what one Gaussian process over all pegs' readings has for
     * it, and so is how likely the readings are (Rasmussen & Williams 2006, eq. 2.23 to 2.25 and 2.30).
     */
    @Test
    void whatIsCommonIsThatOfOneProcessOverAllPegs() throws InputException {
        List<FittedBottom> others = mapped(3);
        List<StructureFit> tubs =
                others.stream().map(other -> TestPegs.fit(other, Structure.TUB)).toList();
        NeighbourProfile profile =
                new NeighbourProfile(others, true, tubs.get(0).priors());
        double share = 0.8;
        NeighbourProfile.Case common = profile.common(share);
        BottomCovariance own = profile.own(share);
        BottomCovariance whole = profile.own(0);
        int size = profile.basis().size();
        double track2 = StructurePrior.TRACK_SD_METRES * StructurePrior.TRACK_SD_METRES;
        double[][] prior = profile.basis().prior(share * whole.profile2, whole.across, share * track2);
        List<double[]> counts = new ArrayList<>();
        int n = tubs.stream().mapToInt(other -> other.observations().real).sum();
        double[] k = new double[n * n];
        double[] residual = new double[n];
        for (StructureFit other : tubs) {
            int first = counts.size();
            int real = other.observations().real;
            double[] block = NeighbourProfile.covariance(other, own, share);
            for (int i = 0; i < real; i++) {
                residual[first + i] = other.observations().residual[i];
                System.arraycopy(block, i * real, k, (first + i) * n + first, real);
            }
            Collections.addAll(
                    counts, profile.basis().weights(other.observations().places, real, NeighbourProfile.width(other)));
        }
        double[][] covariance = new double[size][n];
        for (int b = 0; b < size; b++) {
            for (int i = 0; i < n; i++) {
                covariance[b][i] = GaussianProcess.dot(prior[b], counts.get(i));
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                for (int b = 0; b < size; b++) {
                    k[i * n + j] += counts.get(i)[b] * covariance[b][j];
                }
            }
        }
        GaussianProcess all = new GaussianProcess(k, residual, false);

        assertEquals(all.logMarginalLikelihood(), common.logWeight(), 1e-5);
        double[] mean = new double[size];
        double[] variance = new double[size];
        double[] found = new double[size];
        for (int b = 0; b < size; b++) {
            mean[b] = all.mean(covariance[b]);
            double[] whitened = covariance[b].clone();
            all.whiten(whitened);
            variance[b] = all.covariance(prior[b][b], whitened, whitened, 1, 1);
            found[b] = GaussianProcess.dot(common.factor()[b], common.factor()[b]);
        }
        assertArrayEquals(mean, common.mean(), 1e-6);
        assertArrayEquals(variance, found, 1e-6);
    }

    @Test
    void covariancesOfManyPlacesAreThoseOfEach() throws InputException {
        FittedBottom taught = beside(peg(8, 4), mapped(2));
        StructureFit tub = TestPegs.fit(taught, Structure.TUB);
        PlaceCoordinates places = tub.places(new double[] {-6, 0, 2.5}, new double[] {3, 6, 9});
        PlaceCoordinates at = tub.observations().places;
        double[] row = new double[3];
        for (int j = 0; j < at.count; j++) {
            tub.covariance().between(places, at, j, row);
            for (int i = 0; i < 3; i++) {
                assertEquals(tub.covariance().between(places, i, at, j), row[i], 1e-12);
            }
        }
        assertTrue(places.features.length > 1, "the track, and what the others say");
    }

    /** The grid reckons discs by its own sums; they are those of the disc itself. */
    @Test
    void theGridKnowsTheSameDiscs() throws InputException {
        FittedBottom taught = beside(peg(8, 4), mapped(2));
        BottomGrid grid = taught.grid(Monitor.NONE);
        GridFrame frame = grid.frame();
        for (int[] at : new int[][] {{frame.columns() / 2, 22}, {frame.columns() / 2 - 12, 35}}) {
            Disc seen = grid.disc(frame.index(at[0], at[1]));
            Disc real = taught.disc(frame.x(at[0]), frame.y(at[1]));
            assertEquals(real.depthMetres(), seen.depthMetres(), 1e-9);
            assertEquals(real.varD(), seen.varD(), 1e-9);
            assertEquals(real.covDY(), seen.covDY(), 1e-9);
            assertEquals(real.varX(), seen.varX(), 1e-9);
            assertEquals(real.varY(), seen.varY(), 1e-9);
        }
    }
}
