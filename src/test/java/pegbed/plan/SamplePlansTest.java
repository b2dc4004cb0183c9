package pegbed.plan;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import pegbed.findings.Confidence;
import pegbed.findings.Findings;
import pegbed.findings.Grounds;
import pegbed.findings.Invariants;
import pegbed.findings.PegMap;
import pegbed.model.Hazard;
import pegbed.model.InputException;
import pegbed.model.LineCounts;
import pegbed.model.LineWishes;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.RigWishes;
import pegbed.model.Wishes;
import pegbed.storage.disk.PegFile;
import pegbed.wording.PlanWords;

/** Plans of the sample pegs, whatever is wished, break no constraint. */
class SamplePlansTest {
    private static final List<PegMap> MAPS = maps();

    private static List<PegMap> maps() {
        List<PegMap> maps = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("sample-pegs"))) {
            for (Path file : files.sorted().toList()) {
                Peg peg = PegFile.read(file).peg();
                maps.add(PegMap.of(peg, Monitor.NONE));
                maps.add(PegMap.of(
                        peg.withToday(visit -> visit.withReadings(visit.readings()
                                .subList(0, Math.min(9, visit.readings().size())))),
                        Monitor.NONE));
                maps.add(PegMap.of(
                        peg.withHazards(List.of(
                                Grounds.hazard(Hazard.Kind.LOW_BRANCH, 0.7, new Place(-2, 3)),
                                Grounds.hazard(Hazard.Kind.SNAG, 1, new Place(1.5, 9.5)),
                                Grounds.hazard(
                                        Hazard.Kind.LILIES_OR_REEDS,
                                        0.3,
                                        new Place(3, 1),
                                        new Place(5, 1),
                                        new Place(4, 3)))),
                        Monitor.NONE));
            }
        } catch (IOException | InputException e) {
            throw new IllegalStateException(e);
        }
        return maps;
    }

    @Provide
    Arbitrary<Wishes> wishes() {
        return Arbitraries.randoms().map(SamplePlansTest::wishes);
    }

    private static Wishes wishes(Random random) {
        LineWishes lines = LineWishes.USUAL
                .withCounts(new LineCounts(
                        random.nextInt(3), random.nextInt(4), random.nextInt(3), random.nextInt(3), random.nextInt(2)))
                .withMost(random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(1 + random.nextInt(5)));
        for (int i = random.nextInt(3); i > 0; i--) {
            lines = lines.fixing(Place.polar(15 * random.nextDouble(), 180 * random.nextDouble() - 90));
        }
        for (int i = random.nextInt(4); i > 0; i--) {
            lines = lines.forbidding(Place.polar(13 * random.nextDouble(), 180 * random.nextDouble() - 90));
        }
        return Wishes.NONE
                .withLines(lines)
                .withRigs(RigWishes.USUAL
                        .withMost(random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(1 + random.nextInt(3)))
                        .withOverdepth(random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(0.03)));
    }

    @Property(tries = 300)
    void noWishMakesAPlanBreakAConstraint(@ForAll("wishes") Wishes wishes, @ForAll Random random) {
        PegMap map = MAPS.get(random.nextInt(MAPS.size()));
        OptionalDouble target =
                random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(0.3 + 1.5 * random.nextDouble());
        Invariants.check(Plan.of(Findings.of(map, target), wishes));
    }

    /** The best check is said of lines that are not sure, and lies on water that the pole reaches. */
    @Test
    void theBestCheckIsSaidWhereAReadingWouldTell() {
        int said = 0;
        for (PegMap map : MAPS) {
            Plan plan = Plan.of(Findings.of(map, OptionalDouble.empty()), Wishes.NONE);
            PlanWords words = PlanWords.of(plan);
            for (PlannedLine line : plan.lines()) {
                Optional<String> check = words.confirming(line);
                said += check.isPresent() ? 1 : 0;
                assertFalse(check.isPresent() && line.candidate().confidence() == Confidence.SURE, check::toString);
                assertTrue(
                        check.map(sentence -> sentence.startsWith("Best check: "))
                                .orElse(true),
                        check::toString);
            }
        }
        assertTrue(said > 0, "some line is not sure");
    }
}
