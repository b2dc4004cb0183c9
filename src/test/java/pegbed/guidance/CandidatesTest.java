package pegbed.guidance;

import static java.util.stream.Collectors.toSet;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import pegbed.findings.InventedWater;
import pegbed.geometry.PegWater;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Extras;
import pegbed.model.InputException;
import pegbed.model.Mark;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;

class CandidatesTest {
    private static List<Candidate> all(Peg peg) throws InputException {
        return Candidates.of(peg, PegWater.of(peg)).all();
    }

    @Test
    void aJointStandsForTheHalfMetreBesideIt() throws InputException {
        List<Double> straight = all(InventedWater.cut()).stream()
                .filter(c -> c.angleDegrees() == 0)
                .map(Candidate::distanceMetres)
                .toList();

        assertTrue(straight.contains(2.6) && !straight.contains(2.5), straight.toString());
        assertTrue(straight.contains(3.0) && straight.contains(8.5), straight.toString());
    }

    @Test
    void aJointIsKnownBetterThanADistanceBetween() throws InputException {
        for (Candidate candidate : all(InventedWater.cut())) {
            boolean joint = InventedWater.cut().pole().jointMetres().contains(candidate.distanceMetres());
            assertEquals(joint ? 0.10 : 0.15, candidate.precision().sdDistanceMetres(), 1e-9);
        }
    }

    @Test
    void aMarkStandsForTheDirectionBesideIt() throws InputException {
        Mark post = new Mark("leaning post", Place.polar(12, -18), Extras.NONE);
        List<Candidate> all = all(InventedWater.cut().withMarks(List.of(post)));

        assertTrue(all.stream().noneMatch(c -> c.angleDegrees() == -20));
        assertTrue(all.stream()
                .filter(c -> Math.abs(c.angleDegrees() + 18) < 1e-9)
                .allMatch(c -> c.precision().sdAngleDegrees() == 1.5));
        assertTrue(all.stream().anyMatch(c -> Math.abs(c.angleDegrees() + 18) < 1e-9));
    }

    @Test
    void twoReadingsAtAPlaceCloseIt() throws InputException {
        Peg once = InventedWater.cut().withReading(Reading.of(7.1, 2, 1.6));
        Peg twice = once.withReading(Reading.of(6.9, -2, 1.6));

        assertTrue(open(once, 7.0));
        assertFalse(open(twice, 7.0));
        assertTrue(open(twice, 7.5));
    }

    private static boolean open(Peg peg, double metres) throws InputException {
        return Candidates.of(peg, PegWater.of(peg)).open().stream()
                .anyMatch(c -> c.angleDegrees() == 0 && c.distanceMetres() == metres);
    }

    private static Peg peg(List<BankPoint> near, List<List<BankPoint>> islands) {
        return Peg.EMPTY.withBanks(new Banks(near, List.of(), islands));
    }

    private static List<BankPoint> points(double... xy) {
        return IntStream.range(0, xy.length / 2)
                .mapToObj(i -> BankPoint.at(xy[2 * i], xy[2 * i + 1]))
                .toList();
    }

    private static boolean isWide(Candidate candidate) {
        double degrees = Math.abs(candidate.angleDegrees());
        return degrees > 90 || (degrees > 70 && candidate.distanceMetres() > 7);
    }

    @Test
    void alongAStraightBankNothingLiesBehindOrFarToTheSide() throws InputException {
        assertTrue(all(InventedWater.cut()).stream().noneMatch(CandidatesTest::isWide));
        assertTrue(all(peg(points(-20, 0, 20, 0), List.of())).stream().noneMatch(CandidatesTest::isWide));
    }

    /** The bank turns back on the right, at (1, 0) straight to (1, -20); its mirror image on the left. */
    @Test
    void aShoreThatTurnsBackIsPlumbedAlongItToo() throws InputException {
        List<Candidate> right = all(peg(points(-20, 0, 1, 0, 1, -20), List.of()));
        List<Candidate> left = all(peg(points(20, 0, -1, 0, -1, -20), List.of()));

        assertTrue(right.stream().anyMatch(c -> c.angleDegrees() == 80 && c.distanceMetres() > 10));
        assertTrue(right.stream().anyMatch(c -> c.angleDegrees() == 120 && c.distanceMetres() == 6));
        assertTrue(right.stream().filter(CandidatesTest::isWide).allMatch(c -> c.angleDegrees() > 0));
        assertEquals(
                right.stream()
                        .map(c -> c.distanceMetres() + " " + c.angleDegrees())
                        .collect(toSet()),
                left.stream()
                        .map(c -> c.distanceMetres() + " " + (0 - c.angleDegrees()))
                        .collect(toSet()));
    }

    @Test
    void aJettyIsPlumbedToBothSides() throws InputException {
        List<Candidate> all = all(peg(points(-20, -5, -1, -5, -1, 0, 1, 0, 1, -5, 20, -5), List.of()));

        for (double degrees : new double[] {-100, 100}) {
            assertTrue(all.stream().anyMatch(c -> c.angleDegrees() == degrees));
        }
        assertTrue(all.stream().noneMatch(c -> c.place().yMetres() < -4.7), "on the bank");
    }

    /** An island from 4 m to 7 m straight out: nothing on it, and what lies behind it like any other water. */
    @Test
    void behindAnIslandIsPlumbedOverIt() throws InputException {
        List<Double> straight = all(peg(points(-20, 0, 20, 0), List.of(points(-2, 4, 2, 4, 2, 7, -2, 7)))).stream()
                .filter(c -> c.angleDegrees() == 0)
                .map(Candidate::distanceMetres)
                .toList();

        assertTrue(straight.stream().noneMatch(metres -> metres > 3.7 && metres < 7.3), straight.toString());
        assertTrue(straight.contains(3.0) && straight.contains(8.0) && straight.contains(12.0), straight.toString());
    }
}
