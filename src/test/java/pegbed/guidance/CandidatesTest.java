package pegbed.guidance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pegbed.findings.InventedWater;
import pegbed.geometry.PegWater;
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
}
