package pegbed.surface;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Bottom;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Precision;
import pegbed.model.Reading;
import pegbed.surface.posterior.Disc;
import pegbed.surface.posterior.Prediction;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.surface.survey.Scale;
import pegbed.surface.survey.Sounding;
import pegbed.surface.survey.Survey;

/** What holds of the whole model whatever the readings are. */
class BottomModelTest {
    private static final double[][] PLACES = {
        {0, 0.2}, {0, 2}, {0, 6}, {0, 11}, {-3, 1}, {3, 1}, {-5, 4.5}, {5, 4.5}, {-8, 7}, {8, 7}, {1.3, 9.9}
    };

    private static Reading with(Reading r, Precision precision, Bottom felt) {
        return new Reading(r.typed(), r.place(), precision, r.depthMetres(), felt, r.note(), r.time(), r.extras());
    }

    // Order

    @ParameterizedTest
    @ValueSource(ints = {5, 14, 30})
    void theOrderOfReadingsChangesNoBit(int count) throws InputException {
        List<Reading> readings = TestPegs.fan(count, 11);
        sameWhateverTheOrder(readings);
    }

    /** At one place and one depth, but differently sure. */
    @Test
    void theOrderOfReadingsThatDifferOnlyInHowSureTheyAreChangesNoBit() throws InputException {
        List<Reading> readings = new ArrayList<>(TestPegs.fan(6, 12));
        Reading r = Reading.of(5, 10, 1.3);
        readings.add(r);
        readings.add(with(r, new Precision(0.05, 1), Bottom.FIRM));
        readings.add(with(r, new Precision(0.05, 3), Bottom.FIRM));
        readings.add(with(r, Precision.PLAIN, Bottom.SILT));
        sameWhateverTheOrder(readings);
    }

    private static void sameWhateverTheOrder(List<Reading> readings) throws InputException {
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), readings));
        List<Reading> reversed = new ArrayList<>(readings);
        Collections.reverse(reversed);
        List<Reading> shuffled = new ArrayList<>(readings);
        Collections.shuffle(shuffled, new Random(3));
        for (List<Reading> order : List.of(reversed, shuffled)) {
            FittedBottom other = TestPegs.fit(TestPegs.with(TestPegs.bend(), order));
            assertEquals(TestPegs.hyperparameters(bottom), TestPegs.hyperparameters(other));
            assertArrayEquals(bottom.weights(), other.weights(), 0);
            for (double[] p : PLACES) {
                assertEquals(bottom.at(p[0], p[1]), other.at(p[0], p[1]));
                assertEquals(bottom.disc(p[0], p[1]), other.disc(p[0], p[1]));
            }
        }
    }

    // Mirror

    private static Peg mirrored(Peg peg) {
        return peg.withBanks(new Banks(
                        mirrored(peg.banks().near()),
                        mirrored(peg.banks().far()),
                        peg.banks().islands().stream()
                                .map(BottomModelTest::mirrored)
                                .toList()))
                .withToday(visit -> visit.withReadings(visit.readings().stream()
                        .map(r -> new Reading(
                                r.typed(),
                                new Place(-r.place().xMetres(), r.place().yMetres()),
                                r.precision(),
                                r.depthMetres(),
                                r.bottom(),
                                r.note(),
                                r.time(),
                                r.extras()))
                        .toList()));
    }

    private static List<BankPoint> mirrored(List<BankPoint> points) {
        return points.stream()
                .map(p -> BankPoint.at(-p.place().xMetres(), p.place().yMetres()))
                .toList();
    }

    static List<Arguments> pegs() {
        List<BankPoint> bay = List.of(
                BankPoint.at(-10, -0.5),
                BankPoint.at(3, -0.5),
                BankPoint.at(3.5, 3),
                BankPoint.at(2.5, 5),
                BankPoint.at(6, 5),
                BankPoint.at(6.5, -0.5),
                BankPoint.at(11, -0.5));
        Peg doublingBack =
                TestPegs.bend().withBanks(new Banks(bay, TestPegs.bend().banks().far(), List.of()));
        List<BankPoint> stepped = List.of(
                BankPoint.at(-10, -0.5),
                BankPoint.at(-2, -0.5),
                BankPoint.at(-2, -1.2),
                BankPoint.at(4, -1.2),
                BankPoint.at(4, -0.2),
                BankPoint.at(10, -0.2));
        Peg step = TestPegs.bend()
                .withBanks(new Banks(stepped, TestPegs.bend().banks().far(), List.of()));
        return List.of(
                Arguments.of("bend", TestPegs.bend()),
                Arguments.of("island", TestPegs.bendWithIsland()),
                Arguments.of("pond", TestPegs.pond()),
                Arguments.of("doubling back", doublingBack),
                Arguments.of("steps", step));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pegs")
    void aMirroredPegGivesMirroredAnswers(String name, Peg empty) throws InputException {
        for (int count : new int[] {0, 9, 25}) {
            Peg peg = TestPegs.with(empty, TestPegs.fan(count, 13));
            FittedBottom bottom = TestPegs.fit(peg);
            FittedBottom mirror = TestPegs.fit(mirrored(peg));
            for (double[] p : PLACES) {
                Prediction here = bottom.at(p[0], p[1]);
                Prediction there = mirror.at(-p[0], p[1]);
                assertEquals(here.depthMetres(), there.depthMetres(), 1e-9);
                assertEquals(here.sdMetres(), there.sdMetres(), 1e-9);
                assertEquals(here.slopeX(), -there.slopeX(), 1e-9);
                assertEquals(here.slopeY(), there.slopeY(), 1e-9);
                Disc disc = bottom.disc(p[0], p[1]);
                Disc other = mirror.disc(-p[0], p[1]);
                assertEquals(disc.depthMetres(), other.depthMetres(), 1e-9);
                assertEquals(disc.slopeX(), -other.slopeX(), 1e-9);
                assertEquals(disc.covDX(), -other.covDX(), 1e-9);
                assertEquals(disc.covDY(), other.covDY(), 1e-9);
                assertEquals(disc.varX(), other.varX(), 1e-9);
            }
        }
    }

    // Units

    /** 1 ft = 0.3048 m exactly (international agreement of 1959): depths said in feet make the same bottom. */
    @Test
    void feetMakeTheSameBottomAsMetres() throws InputException {
        List<Reading> metres = new ArrayList<>();
        List<Reading> feet = new ArrayList<>();
        for (int inches = 12; inches < 72; inches += 3) {
            double angle = inches * 1.5 - 60;
            double distance = 2 + inches / 9.0;
            metres.add(Reading.of(distance, angle, inches * 0.0254));
            feet.add(Reading.of(distance / 0.3048 * 0.3048, angle, inches / 12.0 * 0.3048));
        }
        FittedBottom one = TestPegs.fit(TestPegs.with(TestPegs.bend(), metres));
        FittedBottom other = TestPegs.fit(TestPegs.with(TestPegs.bend(), feet));
        for (double[] p : PLACES) {
            assertEquals(one.at(p[0], p[1]).depthMetres(), other.at(p[0], p[1]).depthMetres(), 1e-9);
            assertEquals(one.at(p[0], p[1]).sdMetres(), other.at(p[0], p[1]).sdMetres(), 1e-9);
        }
    }

    // Awkward readings

    static List<Arguments> awkward() {
        List<Reading> collinear = IntStream.range(0, 20)
                .mapToObj(i -> Reading.of(1 + i * 0.5, 0, 0.5 + 0.05 * i))
                .toList();
        List<Reading> onePlace = Collections.nCopies(20, Reading.of(6, 10, 1.4));
        List<Reading> disagree = IntStream.range(0, 20)
                .mapToObj(i -> Reading.of(6, 10, i % 2 == 0 ? 0.4 : 2.4))
                .toList();
        Random random = new Random(14);
        List<Reading> heap = IntStream.range(0, 500)
                .mapToObj(i -> Reading.of(6 + 0.2 * random.nextDouble(), 2 * random.nextDouble(), 1.4))
                .toList();
        List<Reading> deep = TestPegs.fan(20, 15).stream()
                .map(r -> new Reading(
                        r.typed(), r.place(), r.precision(), 5 * r.depthMetres(), r.bottom(), "", r.time(), r.extras()))
                .toList();
        List<Reading> seat = List.of(Reading.of(0, 0, 0));
        List<Reading> wrong = new ArrayList<>(TestPegs.fan(20, 16));
        wrong.add(Reading.of(7, 0, 30));
        return List.of(
                Arguments.of("none", List.of()),
                Arguments.of("one", List.of(Reading.of(6, 10, 1.4))),
                Arguments.of("two", TestPegs.fan(2, 17)),
                Arguments.of("all at one place", onePlace),
                Arguments.of("at one place and disagreeing", disagree),
                Arguments.of("collinear", collinear),
                Arguments.of("500 in a heap", heap),
                Arguments.of("five times as deep", deep),
                Arguments.of("at the seat", seat),
                Arguments.of("one far outlier", wrong));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("awkward")
    void everyPlaceInTheWaterHasAnAnswer(String name, List<Reading> readings) throws InputException {
        for (Peg empty : readings.size() < 100
                ? List.of(TestPegs.bendWithIsland(), TestPegs.pond())
                : List.of(TestPegs.bend())) {
            Peg peg = TestPegs.with(empty, readings);
            FittedBottom bottom = TestPegs.fit(peg);
            assertEquals(readings.size(), bottom.soundings());
            assertEquals(bottom.fittedSoundings() >= BottomModel.LEARNS_FROM, bottom.learned());
            for (double x = -12; x <= 12; x += 3) {
                for (double y = -0.4; y <= 15; y += 1.9) {
                    assertFinite(bottom.at(x, y));
                    assertFinite(bottom.disc(x, y));
                }
            }
            for (ReadingCheck check : bottom.readings()) {
                assertTrue(Double.isFinite(check.standardised()));
            }
        }
    }

    private static void assertFinite(Prediction p) {
        assertTrue(Double.isFinite(p.depthMetres()) && p.sdMetres() > 0 && Double.isFinite(p.sdMetres()), p.toString());
        assertTrue(Double.isFinite(p.slopeX()) && Double.isFinite(p.slopeY()), p.toString());
    }

    private static void assertFinite(Disc d) {
        assertTrue(Double.isFinite(d.depthMetres()) && Double.isFinite(d.slope()), d.toString());
        positiveSemidefinite(d);
    }

    /** All principal minors of the 3 × 3 covariance are 0 or more, but for rounding. */
    static void positiveSemidefinite(Disc d) {
        double scale = Math.max(1e-3, Math.max(d.varD(), Math.max(d.varX(), d.varY())));
        double least = -1e-9 * scale;
        assertTrue(d.varD() >= least && d.varX() >= least && d.varY() >= least, d.toString());
        assertTrue(d.varD() * d.varX() - d.covDX() * d.covDX() >= least * scale, d.toString());
        assertTrue(d.varD() * d.varY() - d.covDY() * d.covDY() >= least * scale, d.toString());
        assertTrue(d.varX() * d.varY() - d.covXY() * d.covXY() >= least * scale, d.toString());
        double determinant = d.varD() * (d.varX() * d.varY() - d.covXY() * d.covXY())
                - d.covDX() * (d.covDX() * d.varY() - d.covXY() * d.covDY())
                + d.covDY() * (d.covDX() * d.covXY() - d.varX() * d.covDY());
        assertTrue(determinant >= least * scale * scale, d.toString());
    }

    @Test
    void oneReadingPullsTheBottomThereAndMakesItSurer() throws InputException {
        FittedBottom prior = TestPegs.fit(TestPegs.bend());
        Place place = Place.polar(6, 10);
        double expected = prior.at(place.xMetres(), place.yMetres()).depthMetres();
        FittedBottom one = TestPegs.fit(TestPegs.with(TestPegs.bend(), List.of(Reading.of(6, 10, expected + 0.5))));
        Prediction before = prior.at(place.xMetres(), place.yMetres());
        Prediction after = one.at(place.xMetres(), place.yMetres());
        assertTrue(after.depthMetres() > expected + 0.35 && after.depthMetres() < expected + 0.5);
        assertTrue(after.sdMetres() < 0.5 * before.sdMetres());
        // Far away along the water it tells less than near by.
        assertTrue(one.at(12, 6).sdMetres() > one.at(2, 6).sdMetres());
    }

    @Test
    void readingsThatDisagreeAreMet() throws InputException {
        List<Reading> two = List.of(Reading.of(6, 10, 1.0), Reading.of(6, 10, 2.0));
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), two));
        Place place = Place.polar(6, 10);
        assertEquals(1.5, bottom.at(place.xMetres(), place.yMetres()).depthMetres(), 0.1);
        for (ReadingCheck check : bottom.readings()) {
            assertTrue(Math.abs(check.standardised()) > 3, "each is suspicious beside the other");
        }
    }

    @Test
    void aPegSaysThatItUsedAPegsScale() throws InputException {
        assertEquals(
                Scale.PEG,
                TestPegs.fit(TestPegs.with(TestPegs.bend(), TestPegs.fan(20, 18)))
                        .scale());
    }

    /** Depths five times a peg's: told so, and the bottom at the readings is still the readings'. */
    @Test
    void aDeepPegIsMappedAtItsOwnScale() throws InputException {
        List<Reading> deep = new ArrayList<>();
        for (double angle = -50; angle <= 50; angle += 20) {
            for (double distance : new double[] {3, 5, 7, 9}) {
                Place p = Place.polar(distance, angle);
                Reading r = Reading.of(distance, angle, 5 * TestPegs.bottom(p.xMetres(), p.yMetres()));
                deep.add(with(r, new Precision(0.02, 0.2), Bottom.FIRM));
            }
        }
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bend(), deep));
        double[] depths =
                deep.stream().mapToDouble(Reading::depthMetres).sorted().toArray();
        assertEquals(depths[(int) (0.95 * depths.length)] / 3, bottom.scale().vertical(), 1e-12);
        assertEquals(1, bottom.scale().horizontal());
        for (Reading r : deep) {
            assertEquals(
                    r.depthMetres(),
                    bottom.at(r.place().xMetres(), r.place().yMetres()).depthMetres(),
                    0.25);
        }
    }

    @Test
    void anEdgeDepthThatThePersonGaveTakesThePlaceOfTheBanksOwn() throws InputException {
        Peg peg = TestPegs.bend();
        List<BankPoint> near = new ArrayList<>(peg.banks().near());
        BankPoint edge = near.get(6);
        near.set(6, new BankPoint(edge.place(), OptionalDouble.of(0.9), edge.typed(), edge.extras()));
        FittedBottom given =
                TestPegs.fit(peg.withBanks(new Banks(near, peg.banks().far(), List.of())));
        assertEquals(1, given.soundings());
        double there = given.at(edge.place().xMetres(), edge.place().yMetres()).depthMetres();
        double without = TestPegs.fit(peg)
                .at(edge.place().xMetres(), edge.place().yMetres())
                .depthMetres();
        assertTrue(there > without + 0.15, without + " became " + there);
    }

    @Test
    void silentBanksStillSayThatTheEdgeIsShallow() throws InputException {
        FittedBottom bottom = TestPegs.fit(TestPegs.bend());
        Prediction edge = bottom.at(0, -0.4);
        Prediction middle = bottom.at(0, 6);
        assertEquals(0.15, edge.depthMetres(), 0.1);
        assertTrue(middle.depthMetres() > edge.depthMetres() + 0.5, middle.toString());
        assertTrue(middle.sdMetres() > 0.3, "nothing was plumbed there");
        // A cut is 1 to 2 m deep along its middle (common practice).
        assertEquals(1.5, middle.depthMetres(), middle.sdMetres());
    }

    // Open water

    @Test
    void openWaterWorksWithFewSoundings() {
        Precision sure = new Precision(0.1, 0);
        for (int count = 0; count <= 3; count++) {
            List<Sounding> soundings = IntStream.range(0, count)
                    .mapToObj(i -> new Sounding(20.0 * i, 10, 4, 0.02, sure, 0))
                    .toList();
            FittedBottom bottom = BottomModel.fit(Survey.open(soundings), Monitor.NONE);
            assertFinite(bottom.at(15, 12));
            assertFinite(bottom.disc(15, 12));
            if (count > 0) {
                assertEquals(4, bottom.at(15, 12).depthMetres(), 1e-3);
            }
            assertFalse(bottom.learned());
        }
    }

    // Threads and monitor

    @Test
    void manyThreadsHearWhatOneHears() throws InputException {
        FittedBottom bottom = TestPegs.fit(TestPegs.with(TestPegs.bendWithIsland(), TestPegs.fan(30, 19)));
        List<double[]> places = new ArrayList<>();
        for (double x = -10; x <= 10; x += 0.5) {
            for (double y = 0; y <= 11; y += 1) {
                places.add(new double[] {x, y});
            }
        }
        List<Prediction> serial =
                places.stream().map(p -> bottom.at(p[0], p[1])).toList();
        List<Disc> discs = places.stream().map(p -> bottom.disc(p[0], p[1])).toList();
        assertEquals(
                serial, places.parallelStream().map(p -> bottom.at(p[0], p[1])).toList());
        assertEquals(
                discs, places.parallelStream().map(p -> bottom.disc(p[0], p[1])).toList());
    }

    @Test
    void fitsInParallelAreTheSame() throws InputException {
        Survey survey = Survey.of(TestPegs.with(TestPegs.bend(), TestPegs.fan(20, 20)));
        Prediction alone = BottomModel.fit(survey, Monitor.NONE).at(1, 5);
        List<Prediction> together = IntStream.range(0, 8)
                .parallel()
                .mapToObj(i -> BottomModel.fit(survey, Monitor.NONE).at(1, 5))
                .toList();
        assertEquals(Collections.nCopies(8, alone), together);
    }
}
