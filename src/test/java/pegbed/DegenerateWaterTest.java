package pegbed;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import pegbed.findings.DepthProfile;
import pegbed.findings.Findings;
import pegbed.findings.FlatSpot;
import pegbed.findings.PegMap;
import pegbed.findings.Pegs;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.Extras;
import pegbed.model.Hazard;
import pegbed.model.InputException;
import pegbed.model.Limits;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Pole;
import pegbed.model.Reading;
import pegbed.model.Typed;
import pegbed.report.drawing.Themes;
import pegbed.report.map.MapDrawing;
import pegbed.report.map.MapOptions;
import pegbed.report.paint.LetterOutlines;
import pegbed.report.paint.SvgWriter;

/** Whatever the water: an answer without a hole in it, or one sentence; never anything else. */
class DegenerateWaterTest {
    private static final Peg STRAIGHT = Pegs.straight();

    static Stream<Arguments> waters() {
        Random random = new Random(7);
        List<Reading> heap = new ArrayList<>();
        for (int i = 0; i < 150; i++) {
            heap.add(Reading.of(5 + 0.02 * random.nextGaussian(), 0.3 * random.nextGaussian(), 1.5));
        }
        return Stream.of(
                water("no reading", STRAIGHT),
                water("one reading", with(STRAIGHT, Reading.of(5, 0, 1.5))),
                water("two at one place", with(STRAIGHT, Reading.of(5, 0, 1.5), Reading.of(5, 0, 1.5))),
                water("two that contradict", with(STRAIGHT, Reading.of(5, 0, 0.2), Reading.of(5, 0, 2.9))),
                water("a heap", STRAIGHT.withToday(v -> v.withReadings(heap))),
                water("in a line", with(STRAIGHT, line())),
                water("depth all equal", Pegs.plumbed(STRAIGHT, (x, y) -> 1.2)),
                water("no depth at all", Pegs.plumbed(STRAIGHT, (x, y) -> 0)),
                water("thirty metres deep", Pegs.plumbed(STRAIGHT, (x, y) -> 30)),
                water("a tenth of the depth", Pegs.plumbed(STRAIGHT, (x, y) -> Pegs.ledges(x, y) / 10)),
                water("ten times the depth", Pegs.plumbed(STRAIGHT, (x, y) -> Pegs.ledges(x, y) * 10)),
                water("checkerboard", Pegs.plumbed(STRAIGHT, (x, y) -> (int) (x + 99) % 2 == 0 ? 0.3 : 2.5)),
                water("reach of 2 m", Pegs.plumbed(STRAIGHT, Pegs::ledges).withPole(new Pole(List.of(2.0)))),
                water("reading behind the seat", with(STRAIGHT, Reading.of(3, 170, 1), Reading.of(5, 0, 1))),
                water("reading far beyond reach", with(STRAIGHT, Reading.of(90, 0, 1), Reading.of(5, 0, 1))),
                water("reading at the seat", with(STRAIGHT, Reading.of(0, 0, 1))),
                water(
                        "narrow limits",
                        STRAIGHT.withLimits(new Limits(OptionalDouble.of(-0.8), OptionalDouble.of(0.8)))),
                water(
                        "limits to one side",
                        STRAIGHT.withLimits(new Limits(OptionalDouble.of(6), OptionalDouble.of(9)))),
                water(
                        "limits beyond reach",
                        STRAIGHT.withLimits(new Limits(OptionalDouble.of(50), OptionalDouble.of(60)))),
                water("island over the seat", island(square(0, 0, 2))),
                water("island over all", island(square(0, 5, 30))),
                water("island with no area", island(square(0, 5, 0.001))),
                water("island that crosses itself", island(List.of(at(-2, 3), at(2, 6), at(2, 3), at(-2, 6)))),
                water("hazard over all", STRAIGHT.withHazards(List.of(hazard(0, 5, 60)))),
                water("hazard of no size", STRAIGHT.withHazards(List.of(hazard(0, 5, 0)))),
                water(
                        "banks that touch",
                        banks(List.of(at(-12, -1), at(12, -1)), List.of(at(-12, 9), at(0, -1), at(12, 9)))),
                water("banks that cross", banks(List.of(at(-12, -1), at(12, 5)), List.of(at(-12, 9), at(12, -3)))),
                water(
                        "bank that loops",
                        banks(List.of(at(-5, -1), at(5, -1), at(5, 3), at(0, 3), at(0, -4)), List.of())),
                water("bank straight out", banks(List.of(at(-1, -2), at(-1, 15)), List.of())),
                water("bank of two equal points", banks(List.of(at(1, 1), at(1, 1)), List.of())),
                water(
                        "bank that folds back",
                        banks(List.of(at(-9, -1), at(4, -1), at(-4, -0.5), at(9, -0.5)), List.of())),
                water(
                        "far bank a step away",
                        banks(List.of(at(-12, -0.2), at(12, -0.2)), List.of(at(-12, 0.4), at(12, 0.4)))),
                water("near bank beyond the pole", banks(List.of(at(-40, 30), at(40, 30)), List.of())),
                water(
                        "banks on a giant scale",
                        banks(List.of(at(-1e6, -1), at(1e6, -1)), List.of(at(-1e6, 1e6), at(1e6, 1e6)))));
    }

    private static Arguments water(String name, Peg peg) {
        return Arguments.of(name, peg);
    }

    private static Peg with(Peg peg, Reading... readings) {
        return peg.withToday(visit -> visit.withReadings(List.of(readings)));
    }

    private static Reading[] line() {
        Reading[] line = new Reading[40];
        for (int i = 0; i < line.length; i++) {
            line[i] = Reading.of(0.25 * (i + 1), 0, 1 + 0.01 * i);
        }
        return line;
    }

    private static BankPoint at(double x, double y) {
        return BankPoint.at(x, y);
    }

    private static List<BankPoint> square(double x, double y, double half) {
        return List.of(at(x - half, y - half), at(x + half, y - half), at(x + half, y + half), at(x - half, y + half));
    }

    private static Peg island(List<BankPoint> ring) {
        Peg peg = Pegs.plumbed(STRAIGHT, Pegs::ledges);
        return peg.withBanks(new Banks(peg.banks().near(), peg.banks().far(), List.of(ring)));
    }

    private static Peg banks(List<BankPoint> near, List<BankPoint> far) {
        return with(Peg.EMPTY, Reading.of(5, 0, 1.4)).withBanks(new Banks(near, far, List.of()));
    }

    private static Hazard hazard(double x, double y, double radius) {
        return new Hazard(Hazard.Kind.SNAG, List.of(new Place(x, y)), radius, "", Typed.NOTHING, Extras.NONE);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("waters")
    void anAnswerWithoutAHoleOrOneSentence(String name, Peg peg) {
        PegMap map;
        try {
            map = PegMap.of(peg, Monitor.NONE);
        } catch (InputException e) {
            assertTrue(e.getMessage().matches("(?s)[A-Z].*\\."), e.getMessage());
            assertFalse(e.getMessage().contains("NaN"), e.getMessage());
            return;
        }
        for (int i = 0; i < map.grid().frame().size(); i++) {
            if (map.grid().isWater(i)) {
                assertTrue(Double.isFinite(map.grid().depth().at(i)), name);
                assertTrue(map.grid().sd().at(i) >= 0, name);
            }
        }
        for (double target : new double[] {0, 0.8, 30}) {
            Findings findings = Findings.of(map, OptionalDouble.of(target));
            for (FlatSpot flat : findings.flats()) {
                assertTrue(flat.spot().pFlat() >= 0 && flat.spot().pFlat() <= 1, name);
                assertTrue(
                        Double.isFinite(flat.spot().depthMetres() + flat.spot().slope()), name);
            }
        }
        Findings findings = Findings.of(map, OptionalDouble.empty());
        assertTrue(Double.isFinite(findings.deepest().spot().depthMetres()), name);
        assertTrue(DepthProfile.towards(map, 10).points().stream().allMatch(p -> p.sdMetres() >= 0), name);
        byte[] svg = SvgWriter.write(
                MapDrawing.of(map, findings, MapOptions.USUAL).sheet(900, 700, LetterOutlines.MEASURE),
                Themes.LIGHT,
                name,
                1);
        assertFalse(new String(svg, java.nio.charset.StandardCharsets.UTF_8).contains("NaN"), name);
    }
}
