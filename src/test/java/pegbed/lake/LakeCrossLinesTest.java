package pegbed.lake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.SoundingLog;
import pegbed.surface.FittedBottom;
import pegbed.surface.gaussian.KrigingReferenceTest;

/**
 * A real lake's survey against itself, as a survey's check lines are compared with its main lines (IHO S-44, edition 6:
 * depths of the one and the other where they cross, in statistics). Its track runs mainly east and west, and north and
 * south across that; the bottom is fitted to each of these alone, and told where they cross. Data: Hay, C. R. J. (IISD
 * Experimental Lakes Area), doi:10.5281/zenodo.18237230, CC BY 4.0; see {@code lake227/SOURCE.txt}.
 */
class LakeCrossLinesTest {
    /** Soundings further apart than this are not joined: the boat went elsewhere, metres. */
    private static final double NEXT_METRES = 20;

    private static final double NINETY_FIVE = 1.96;

    /** Where a main line and a check line cross: depths along the one and the other, metres. */
    private record Crossing(Coordinate place, double mainMetres, double checkMetres) {}

    /** A difference at a crossing, metres, and the standard deviation that both depths state for it. */
    private record Difference(double metres, double statedSdMetres) {}

    /** What a survey's report tells of its crossings. */
    private record Comparison(int crossings, double mean, double sd, double within95, double shareWithinStated) {
        static Comparison of(List<Difference> differences) {
            int n = differences.size();
            double mean = differences.stream()
                    .mapToDouble(Difference::metres)
                    .average()
                    .orElseThrow();
            double sd = Math.sqrt(differences.stream()
                            .mapToDouble(d -> Math.pow(d.metres - mean, 2))
                            .sum()
                    / (n - 1));
            double[] sizes = differences.stream()
                    .mapToDouble(d -> Math.abs(d.metres))
                    .sorted()
                    .toArray();
            double within = differences.stream()
                            .filter(d -> Math.abs(d.metres) <= NINETY_FIVE * d.statedSdMetres)
                            .count()
                    / (double) n;
            return new Comparison(n, mean, sd, sizes[(int) Math.ceil(0.95 * n) - 1], within);
        }
    }

    private static List<Coordinate> track;
    private static List<Crossing> crossings;
    private static Comparison fitted;

    @BeforeAll
    static void compare() throws IOException, InputException {
        track = track();
        crossings = crossings();
        fitted = fittedApart();
        if (Boolean.getBoolean("pegbed.print")) {
            System.out.printf(
                    Locale.ROOT,
                    "main %d, check %d soundings%njoined %s%nfitted %s%n",
                    line(true).size(),
                    line(false).size(),
                    alongTheLines(),
                    fitted);
        }
    }

    /** Every twentieth sounding lies in a file of its own. */
    private static List<Coordinate> track() throws IOException {
        List<Coordinate> apart = soundings("/lake227/train_every20.csv");
        List<Coordinate> track = soundings("/lake227/test_every20_with_gstat.csv");
        for (int i = 0; i < apart.size(); i++) {
            track.add(Math.min(20 * i + 19, track.size()), apart.get(i));
        }
        return track;
    }

    private static List<Coordinate> soundings(String resource) throws IOException {
        return new ArrayList<>(KrigingReferenceTest.lines(resource).stream()
                .skip(1)
                .map(line -> Arrays.stream(line.split(","))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .map(v -> new Coordinate(v[0], v[1], v[2]))
                .toList());
    }

    private static boolean joined(int from) {
        double metres = from < 0 || from + 1 >= track.size()
                ? Double.NaN
                : track.get(from).distance(track.get(from + 1));
        return metres > 0 && metres < NEXT_METRES;
    }

    /** Whether the boat went more east or west than north or south there. */
    private static boolean isMain(int i) {
        Coordinate from = track.get(joined(i - 1) ? i - 1 : i);
        Coordinate to = track.get(joined(i) ? i + 1 : i);
        return Math.abs(to.x - from.x) >= Math.abs(to.y - from.y);
    }

    private static List<Coordinate> line(boolean main) {
        List<Coordinate> line = new ArrayList<>();
        for (int i = 0; i < track.size(); i++) {
            if (isMain(i) == main) {
                line.add(track.get(i));
            }
        }
        return line;
    }

    private static List<Crossing> crossings() {
        List<Crossing> crossings = new ArrayList<>();
        for (int i = 0; i + 1 < track.size(); i++) {
            for (int j = 0; j + 1 < track.size(); j++) {
                if (isLeg(i, true) && isLeg(j, false)) {
                    crossing(leg(i), leg(j)).ifPresent(crossings::add);
                }
            }
        }
        return crossings;
    }

    private static boolean isLeg(int from, boolean main) {
        return joined(from) && isMain(from) == main && isMain(from + 1) == main;
    }

    private static LineSegment leg(int from) {
        return new LineSegment(track.get(from), track.get(from + 1));
    }

    private static Optional<Crossing> crossing(LineSegment main, LineSegment check) {
        Coordinate place = main.intersection(check);
        return Optional.ofNullable(place).map(at -> new Crossing(at, depth(main, at), depth(check, at)));
    }

    private static double depth(LineSegment leg, Coordinate place) {
        double along = leg.segmentFraction(place);
        return leg.p0.z + along * (leg.p1.z - leg.p0.z);
    }

    /** The survey itself: soundings joined along each line, and nothing stated. */
    private static Comparison alongTheLines() {
        return Comparison.of(crossings.stream()
                .map(c -> new Difference(c.mainMetres - c.checkMetres, 0))
                .toList());
    }

    private static Comparison fittedApart() throws InputException {
        LakeDepths main = depths(line(true));
        LakeDepths check = depths(line(false));
        List<Difference> differences = new ArrayList<>();
        for (int i = 0; i < crossings.size(); i++) {
            differences.add(new Difference(
                    main.depthMetres()[i] - check.depthMetres()[i], Math.hypot(bottomSd(main, i), bottomSd(check, i))));
        }
        return Comparison.of(differences);
    }

    private static LakeDepths depths(List<Coordinate> line) throws InputException {
        SoundingLog log = SoundingLog.placedWithin(SoundingLog.BOAT_SD_METRES);
        line.forEach(s -> log.add(s.x, s.y, s.z));
        return LakeModel.fit(log, Monitor.NONE)
                .depths(
                        crossings.stream().mapToDouble(c -> c.place.x).toArray(),
                        crossings.stream().mapToDouble(c -> c.place.y).toArray(),
                        Monitor.NONE);
    }

    /** The bottom's own doubt: nobody lays a rig there, so what that would add is left out. */
    private static double bottomSd(LakeDepths depths, int i) {
        return Math.sqrt(Math.pow(depths.sdMetres()[i], 2)
                - FittedBottom.placingVariance(depths.slopeX()[i], depths.slopeY()[i]));
    }

    @Test
    void theTrackIsInOrderAgain() {
        assertEquals(1027, track.size());
        long joined = IntStream.range(0, track.size())
                .filter(LakeCrossLinesTest::joined)
                .count();
        assertTrue(joined > 950, joined + " soundings lie within " + NEXT_METRES + " m of the one before");
    }

    @Test
    void mainLinesAndCheckLinesAgreeWhereTheyCross() {
        assertTrue(fitted.crossings > 60, fitted::toString);
        assertTrue(Math.abs(fitted.mean) < 0.1, fitted::toString);
        Comparison joined = alongTheLines();
        assertTrue(fitted.sd < joined.sd && fitted.within95 < joined.within95, fitted + " against " + joined);
    }

    @Test
    void theyAgreeAsOftenAsTheyState() {
        assertTrue(fitted.shareWithinStated > 0.88 && fitted.shareWithinStated < 0.995, fitted::toString);
    }
}
