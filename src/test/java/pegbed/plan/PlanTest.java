package pegbed.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pegbed.findings.Findings;
import pegbed.findings.Grounds;
import pegbed.findings.Invariants;
import pegbed.findings.Zone;
import pegbed.model.Hazard;
import pegbed.model.LineCounts;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.RigWishes;
import pegbed.model.StartLine;
import pegbed.model.Wishes;
import pegbed.wording.PlanWords;

/** Plans over bottoms of known shape. */
class PlanTest {
    private static final Findings LEDGES = Grounds.findings(Grounds.LEDGES, 2.5 * Grounds.FOOT);

    private static Plan plan(Wishes wishes) {
        return Plan.of(LEDGES, wishes);
    }

    private static Wishes counts(int track, int across, int left, int right, int shortLines) {
        return Wishes.NONE.withLines(
                Wishes.NONE.lines().withCounts(new LineCounts(track, across, left, right, shortLines)));
    }

    private static List<Zone> zones(Plan plan) {
        return plan.lines().stream()
                .map(line -> line.candidate().zone().orElseThrow())
                .sorted()
                .toList();
    }

    private static PlannedLine in(Plan plan, Zone zone) {
        return plan.lines().stream()
                .filter(line -> line.candidate().zone().equals(Optional.of(zone)))
                .findFirst()
                .orElseThrow();
    }

    /** Common practice: 2 ft 6 in across and in both margins and 5 ft 6 in down the track need two rigs. */
    @Test
    void ledgeAndTrackNeedTwoRigs() {
        Plan plan = plan(Wishes.NONE);
        assertEquals(List.of(Zone.TRACK, Zone.ACROSS, Zone.LEFT_MARGIN, Zone.RIGHT_MARGIN), zones(plan));
        assertEquals(2, plan.rigs().size());
        Rig ledge = plan.rigs().get(0);
        Rig deep = plan.rigs().get(1);
        assertEquals(3, ledge.settings().size());
        assertEquals(in(plan, Zone.TRACK).number(), deep.settings().get(0).line());
        assertTrue(ledge.travelMetres() <= LineRules.TRAVEL_METRES);
        assertEquals(List.of(), plan.shortfalls());
        assertEquals(5.5 * Grounds.FOOT, in(plan, Zone.TRACK).spot().depthMetres(), 0.05);
        assertEquals(2.5 * Grounds.FOOT, in(plan, Zone.ACROSS).spot().depthMetres(), 0.05);
    }

    /** Common practice: start on the deep line, prime across, leave the margins until late. */
    @Test
    void theTrackIsStartedOnAndTheMarginsAreRested() {
        Plan plan = plan(Wishes.NONE);
        assertEquals(1, in(plan, Zone.TRACK).number());
        assertEquals(PlannedLine.Role.START, in(plan, Zone.TRACK).role());
        assertEquals(PlannedLine.Role.PRIME, in(plan, Zone.ACROSS).role());
        assertEquals(PlannedLine.Role.REST, in(plan, Zone.LEFT_MARGIN).role());
        assertEquals(PlannedLine.Role.REST, in(plan, Zone.RIGHT_MARGIN).role());
        assertEquals(
                "Start on line 1. Feed line 2 a little from the start; go there when line 1 slows."
                        + " Keep lines 3 and 4 quiet until late; feed before you go there.",
                PlanWords.of(plan).order());
    }

    private Plan starting(StartLine part, Wishes wishes) {
        return plan(wishes.withLines(wishes.lines().withStart(Optional.of(part))));
    }

    /** Common practice: some start across at the target and keep the deep line fed. */
    @Test
    void whoLikesToStartAcrossDoes() {
        Plan plan = starting(StartLine.ACROSS, Wishes.NONE);
        PlannedLine first = plan.lines().get(0);
        assertEquals(Optional.of(Zone.ACROSS), first.candidate().zone());
        assertEquals(PlannedLine.Role.START, first.role());
        assertEquals(PlannedLine.Role.PRIME, in(plan, Zone.TRACK).role());
        assertTrue(plan.startsAsWished());
        PlanWords words = PlanWords.of(plan);
        assertTrue(words.order().startsWith("Start on line 1, as you wished. Feed line 2 a little"), words.order());
        assertTrue(words.why(first).contains("First, since you wished to start across."), words.why(first));
        Set<Place> places = places(plan(Wishes.NONE));
        assertEquals(places, places(plan), "only the order is another");
    }

    private static Set<Place> places(Plan plan) {
        return plan.lines().stream().map(PlannedLine::place).collect(Collectors.toSet());
    }

    @Test
    void whoLikesToStartInAMarginOrShortDoes() {
        assertEquals(
                PlannedLine.Role.PRIME,
                in(starting(StartLine.MARGIN, Wishes.NONE), Zone.TRACK).role());
        assertTrue(starting(StartLine.MARGIN, Wishes.NONE).startsAsWished());
        Plan plan = starting(StartLine.SHORT, Wishes.NONE);
        assertEquals(Optional.of(Zone.SHORT), plan.lines().get(0).candidate().zone(), "a line is planned there");
    }

    @Test
    void aStartThatIsNotToBeHadIsSaid() {
        Wishes noMargins = Wishes.NONE.withLines(Wishes.NONE.lines().withCounts(new LineCounts(1, 1, 0, 0, 0)));
        Plan plan = starting(StartLine.MARGIN, noMargins);
        assertFalse(plan.startsAsWished());
        assertEquals(1, in(plan, Zone.TRACK).number());
        assertEquals(
                List.of("You wished to start in a margin, but no line is planned there; the first is the one it would"
                        + " be without that wish."),
                PlanWords.of(plan).shortfalls());
        assertEquals(
                "Start on line 1. Feed line 2 a little from the start; go there when line 1 slows.",
                PlanWords.of(plan).order());
    }

    @Test
    void hookToTipIsDepthAndOverdepth() {
        for (OptionalDouble over : List.of(OptionalDouble.empty(), OptionalDouble.of(0), OptionalDouble.of(0.1))) {
            Plan plan = plan(Wishes.NONE.withRigs(RigWishes.USUAL.withOverdepth(over)));
            for (PlannedLine line : plan.lines()) {
                Rig rig = plan.rigOf(line);
                double expected = over.orElse(rig.template().tipToBodyMetres());
                assertEquals(expected, rig.overdepthMetres());
                assertEquals(line.spot().depthMetres() + expected, plan.hookToTipMetres(line), 1e-12);
            }
        }
    }

    @Test
    void noMarginsMeansNone() {
        Plan plan = plan(counts(1, 1, 0, 0, 0));
        assertEquals(List.of(Zone.TRACK, Zone.ACROSS), zones(plan));
        assertEquals(List.of(), plan.shortfalls());
    }

    @Test
    void moreLinesInAZoneAreKeptTwoMetresApart() {
        Plan plan = plan(counts(2, 3, 1, 1, 1));
        assertEquals(3, zones(plan).stream().filter(Zone.ACROSS::equals).count());
        Invariants.check(plan);
    }

    @Test
    void atMostSoManyLinesAndRigs() {
        Wishes two = Wishes.NONE.withLines(Wishes.NONE.lines().withMost(OptionalInt.of(2)));
        Plan plan = plan(two);
        assertEquals(2, plan.lines().size());
        assertEquals(
                2,
                plan.shortfalls().stream()
                        .filter(shortfall -> shortfall.kind() == Shortfall.Kind.ENOUGH_LINES)
                        .count());

        Plan one = plan(Wishes.NONE.withRigs(RigWishes.USUAL.withMost(OptionalInt.of(1))));
        assertEquals(1, one.rigs().size());
        assertEquals(List.of(Zone.ACROSS, Zone.LEFT_MARGIN, Zone.RIGHT_MARGIN), zones(one));
        assertEquals(Shortfall.Kind.ENOUGH_RIGS, one.shortfalls().get(0).kind());
    }

    @Test
    void aFixedLineIsKeptAndCountsInItsZone() {
        Place place = new Place(4, 11);
        Plan plan = plan(Wishes.NONE.withLines(Wishes.NONE.lines().fixing(place)));
        assertEquals(place, in(plan, Zone.ACROSS).place());
        assertEquals(4, plan.lines().size());
        assertEquals(
                LineCandidate.Origin.FIXED, in(plan, Zone.ACROSS).candidate().origin());
    }

    @Test
    void pinningEveryLineOfAPlanGivesThatPlanAgain() {
        Plan plan = plan(Wishes.NONE);
        var lines = Wishes.NONE.lines();
        for (PlannedLine line : plan.lines()) {
            lines = lines.fixing(line.place());
        }
        Plan pinned = plan(Wishes.NONE.withLines(lines));
        assertEquals(
                plan.lines().stream().map(PlannedLine::place).toList(),
                pinned.lines().stream().map(PlannedLine::place).toList());
        assertEquals(zones(plan), zones(pinned));
    }

    @Test
    void aForbiddenPlaceIsLeftByAMetre() {
        Place across = in(plan(Wishes.NONE), Zone.ACROSS).place();
        Plan plan = plan(Wishes.NONE.withLines(Wishes.NONE.lines().forbidding(across)));
        assertTrue(in(plan, Zone.ACROSS).place().distanceTo(across) >= LineRules.FORBIDDEN_METRES);
    }

    @Test
    void fixedLinesThatCannotBeFishedAreLeftOutAndSaid() {
        var lines = Wishes.NONE
                .lines()
                .fixing(new Place(0, 20))
                .fixing(new Place(4, 11))
                .fixing(new Place(4.5, 11));
        Plan plan = plan(Wishes.NONE.withLines(lines));
        assertEquals(
                List.of(Shortfall.Kind.FIXED_OUTSIDE, Shortfall.Kind.FIXED_CROWDED),
                plan.shortfalls().stream().map(Shortfall::kind).toList());
        Invariants.check(plan);
    }

    @Test
    void noPoleGoesUnderAnOverheadLine() {
        Peg peg = Grounds.LEDGES.withHazards(List.of(
                Grounds.hazard(Hazard.Kind.OVERHEAD_LINE, 1, new Place(0.5, 2), new Place(8, 12), new Place(8.5, 12))));
        Plan plan = Plan.of(
                Grounds.findings(peg, 2.5 * Grounds.FOOT),
                Wishes.NONE.withLines(Wishes.NONE.lines().fixing(new Place(4, 11))));
        assertEquals(
                Shortfall.Kind.FIXED_UNDER_SOMETHING, plan.shortfalls().get(0).kind());
        assertTrue(plan.lines().size() > 1);
        Invariants.check(plan);
    }

    @Test
    void whatCouldNotBeHadIsSaidWithTheNearestDepth() {
        Plan plan = Plan.of(Grounds.findings(Grounds.SHALLOW_RIGHT, 2.75 * Grounds.FOOT), Wishes.NONE);
        PlannedLine right = in(plan, Zone.RIGHT_MARGIN);
        assertEquals(LineCandidate.Origin.NEAREST_FLAT, right.candidate().origin());
        assertEquals((2 + 1 / 12.0) * Grounds.FOOT, right.spot().depthMetres(), 0.05);
        String said = PlanWords.of(plan).shortfalls().stream()
                .filter(sentence -> sentence.contains("right margin"))
                .findFirst()
                .orElseThrow();
        assertTrue(
                said.matches(
                        "No flat at 2 ft 9 in is known in the right margin; nearest (1 ft 11|2 ft( [123])?)( in)?, which is line "
                                + right.number() + "\\."),
                said);
    }

    @Test
    void everyLineSaysWhereHowDeepAndWhy() {
        Plan plan = plan(Wishes.NONE);
        PlanWords words = PlanWords.of(plan);
        for (PlannedLine line : plan.lines()) {
            assertTrue(words.distance(line).matches("section \\d+( [+-] \\d\\.\\d m)? \\(\\d+\\.\\d m\\)"));
            assertTrue(words.direction(line).matches("straight out|\\d+° (left|right)"));
            assertTrue(words.clock(line).matches("\\d{1,2}:\\d\\d"));
            assertFalse(words.aim(line).isBlank());
            assertTrue(words.depth(line).matches("\\d ft( \\d+ in)?"));
            String why = words.why(line);
            Stream.of(words.depth(line), words.doubt(line), words.slope(line), " of it", "The next line, ")
                    .forEach(part -> assertTrue(why.contains(part), () -> why + " lacks " + part));
            assertFalse(words.checks(line).isEmpty());
        }
    }

    @Test
    void whatWasGivenUpForALineIsSaid() {
        Place beside = new Place(0.9, 11);
        Wishes across = counts(0, 2, 0, 0, 0);
        Plan plan = Plan.of(
                Grounds.findings(Grounds.ONE_BAR, 2.5 * Grounds.FOOT),
                across.withLines(across.lines().fixing(beside)));
        PlannedLine other = plan.lines().stream()
                .filter(line -> !line.candidate().isFixed())
                .findFirst()
                .orElseThrow();
        PlannedLine pinned = plan.lines().get(2 - other.number());
        assertEquals(PlannedLine.Reason.SPACING, other.givenUp().orElseThrow().reason());
        String why = PlanWords.of(plan).why(other);
        assertTrue(why.contains("Given up for it: 2 ft"), why);
        assertTrue(why.contains("because it is less than 2 m from line " + pinned.number()), why);
    }

    @Test
    void theSamePlanComesOutAgain() {
        assertEquals(plan(Wishes.NONE).lines(), plan(Wishes.NONE).lines());
    }
}
