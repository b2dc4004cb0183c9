package pegbed.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import pegbed.geometry.PegWater;
import pegbed.geometry.Shapes;
import pegbed.model.Hazard;
import pegbed.model.LineWishes;
import pegbed.model.RigWishes;
import pegbed.plan.LineCandidates;
import pegbed.plan.LineRules;
import pegbed.plan.Plan;
import pegbed.plan.PlannedLine;
import pegbed.plan.Rig;
import pegbed.wording.PlanWords;

/** What holds of every plan, whatever the peg and the wishes. */
public final class Invariants {
    private Invariants() {}

    public static void check(Plan plan) {
        PegMap map = plan.findings().map();
        LineWishes wishes = plan.wishes().lines();
        List<PlannedLine> lines = plan.lines();
        long fixed = lines.stream().filter(line -> line.candidate().isFixed()).count();
        assertEquals(
                IntStream.rangeClosed(1, lines.size()).boxed().toList(),
                lines.stream().map(PlannedLine::number).toList());
        assertTrue(lines.size() <= Math.max(fixed, wishes.most().orElse(LineWishes.MOST)));
        for (Zone zone : Zone.values()) {
            long free = lines.stream()
                    .filter(line -> line.candidate().zone().equals(Optional.of(zone)))
                    .filter(line -> !line.candidate().isFixed())
                    .count();
            assertTrue(free <= LineCandidates.number(wishes.wanted(), zone));
        }
        for (PlannedLine line : lines) {
            checkPlace(plan, line, map);
            for (PlannedLine other : lines) {
                assertTrue(line == other || line.place().distanceTo(other.place()) >= 2 - 1e-9, "spacing");
            }
        }
        checkRigs(plan, fixed);
        checkWords(plan);
    }

    private static void checkPlace(Plan plan, PlannedLine line, PegMap map) {
        Geometry point = Shapes.FACTORY.createPoint(Shapes.coordinate(line.place()));
        assertTrue(line.place().distanceMetres() <= map.peg().pole().reachMetres(), "within reach");
        assertTrue(map.water().water().covers(point), "in the water");
        Geometry pole = Shapes.FACTORY.createLineString(
                new Coordinate[] {new Coordinate(0, 0), Shapes.coordinate(line.place())});
        for (Hazard hazard : map.peg().hazards()) {
            Geometry kept = PegWater.around(hazard);
            assertFalse(kept.contains(point), "in a hazard");
            if (hazard.kind() == Hazard.Kind.OVERHEAD_LINE || hazard.kind() == Hazard.Kind.LOW_BRANCH) {
                assertFalse(kept.intersects(pole), "under a " + hazard.kind().word());
            }
        }
        if (!line.candidate().isFixed()) {
            plan.wishes()
                    .lines()
                    .forbidden()
                    .forEach(pin -> assertTrue(pin.place().distanceTo(line.place()) >= 1, "forbidden"));
        }
    }

    private static void checkRigs(Plan plan, long fixed) {
        assertTrue(
                fixed > 0 || plan.rigs().size() <= plan.wishes().rigs().most().orElse(RigWishes.MOST), "rigs");
        int[] served = new int[plan.lines().size()];
        for (Rig rig : plan.rigs()) {
            assertTrue(rig.travelMetres() <= LineRules.TRAVEL_METRES + 1e-9, "travel");
            rig.settings().forEach(setting -> {
                served[setting.line() - 1]++;
                assertEquals(rig.number(), plan.lines().get(setting.line() - 1).rig());
            });
        }
        assertTrue(Arrays.stream(served).allMatch(times -> times == 1), "every line has one rig");
    }

    /** A spot less than worth a reading is named only with that said; lines in each other's way too. */
    private static void checkWords(Plan plan) {
        PlanWords words = PlanWords.of(plan);
        for (PlannedLine line : plan.lines()) {
            String said = String.join(" ", words.checks(line));
            if (line.spot().pFlat() < Confidence.WORTH_A_READING.minProbability()) {
                assertTrue(said.contains("do not show"), said);
                assertTrue(words.confidence(line).contains("not shown by the readings"));
            }
            for (PlannedLine.Neighbour other : line.neighbours()) {
                assertEquals(
                        other.inTheWay(),
                        said.contains("It and line " + other.number() + " are in each other's way"),
                        said);
            }
        }
        assertEquals(plan.shortfalls().size(), words.shortfalls().size());
    }
}
