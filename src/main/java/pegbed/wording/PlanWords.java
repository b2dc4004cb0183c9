package pegbed.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import pegbed.findings.Confidence;
import pegbed.findings.FlatProbability;
import pegbed.findings.Spot;
import pegbed.findings.Zone;
import pegbed.geometry.PegWater;
import pegbed.geometry.Shapes;
import pegbed.guidance.ConfirmingReading;
import pegbed.model.Bottom;
import pegbed.model.Decimals;
import pegbed.model.Hazard;
import pegbed.model.Place;
import pegbed.plan.LineCandidate;
import pegbed.plan.LineCandidates;
import pegbed.plan.Plan;
import pegbed.plan.PlannedLine;

/** The lines of a plan in the person's words and units. */
public final class PlanWords {
    /** Doubt above this wants another reading, metres: the map is drawn as a guess above twice as much. */
    private static final double DOUBTFUL_METRES = 0.05;

    /** A reading that moves the odds of a line by less is not worth the walk. */
    private static final double WORTH_PLUMBING = 0.05;

    /** Places as near as this are one place, metres. */
    private static final double SAME_METRES = 0.2;

    /** Ground less steep than this has no direction worth naming, rise over run. */
    private static final double LEVEL = 0.05;

    private final Plan plan;
    private final Quantities quantities;

    private PlanWords(Plan plan) {
        this.plan = plan;
        quantities = Quantities.of(plan.findings().map().peg());
    }

    public static PlanWords of(Plan plan) {
        return new PlanWords(plan);
    }

    /** The part of the peg, such as {@code left margin}. */
    public String where(PlannedLine line) {
        return line.candidate().zone().map(this::zone).orElse("your own line");
    }

    String zone(Zone zone) {
        return zone.words(plan.findings().map().water().hasFarBank());
    }

    /** Sections and metres, as the person says distances. */
    public String distance(PlannedLine line) {
        return quantities.distance(line.place().distanceMetres());
    }

    /** Degrees, such as {@code 20° left}. */
    public String direction(PlannedLine line) {
        return quantities.direction(line.place().angleDegrees());
    }

    /** The clock, such as {@code 11:20}. */
    public String clock(PlannedLine line) {
        return quantities.clock(line.place().angleDegrees());
    }

    /** What to sight on. */
    public String aim(PlannedLine line) {
        return quantities.aim(line.place());
    }

    public String depth(PlannedLine line) {
        return quantities.depth(line.spot().depthMetres());
    }

    /** One standard deviation of the depth, such as {@code give or take 2 in}. */
    public String doubt(PlannedLine line) {
        return "give or take " + small(line.spot().sdMetres());
    }

    /** As {@link #doubt}, short: {@code ± 2 in}. */
    public String plusMinus(PlannedLine line) {
        return "± " + small(line.spot().sdMetres());
    }

    /** A small length, never nothing: at least an inch or a centimetre. */
    String small(double metres) {
        return quantities.doubt(metres);
    }

    /** Steepness and which way it falls, such as {@code 1 in 8, deeper to the right}. */
    public String slope(PlannedLine line) {
        double slope = line.spot().slope();
        String steepness = Steepness.oneIn(slope);
        return slope < LEVEL ? steepness : steepness + ", deeper " + towards(line.downhillDegrees());
    }

    /** A direction from where one looks straight out, to the nearest quarter. */
    private static String towards(double degrees) {
        double turn = Math.abs(degrees);
        if (turn <= 45) {
            return "further out";
        }
        if (turn >= 135) {
            return "towards you";
        }
        return degrees < 0 ? "to the left" : "to the right";
    }

    /** What it is: {@code flat at 2 ft 9 in: likely (64 %)}. */
    public String confidence(PlannedLine line) {
        LineCandidate candidate = line.candidate();
        String what = "flat at " + quantities.depth(candidate.flatAtMetres());
        String words = candidate.confidence() == Confidence.NONE
                ? "not shown by the readings"
                : FindingWords.confidence(candidate.confidence());
        return what + ": " + words + " (" + Quantities.percent(line.spot().pFlat()) + ")";
    }

    /** Where the person likes to start, such as {@code across} or {@code in a margin}. */
    String start() {
        return plan.wishes()
                .lines()
                .start()
                .map(part -> switch (part) {
                    case TRACK -> in(Zone.TRACK);
                    case ACROSS -> in(Zone.ACROSS);
                    case SHORT -> in(Zone.SHORT);
                    case MARGIN -> "in a margin";
                })
                .orElse("");
    }

    private static boolean isDeep(LineCandidate candidate) {
        return candidate.zone().stream().anyMatch(zone -> zone == Zone.TRACK);
    }

    /** Why it was chosen: depth, flatness, area, doubt, the next line, and what was given up for it. */
    public String why(PlannedLine line) {
        LineCandidate candidate = line.candidate();
        List<String> parts = new ArrayList<>();
        parts.add(origin(line));
        if (line.role() == PlannedLine.Role.START && plan.startsAsWished()) {
            parts.add("First, since you wished to start " + start() + ".");
        }
        parts.add(Sentences.capital(confidence(line))
                + (candidate.areaMetres2() > 0
                        ? ", " + area(candidate.areaMetres2()) + " of it."
                        : "; how much of it there is the readings do not show."));
        parts.add("Depth " + depth(line) + ", " + doubt(line) + "; ground " + slope(line) + ".");
        if (!line.neighbours().isEmpty()) {
            PlannedLine.Neighbour next = line.neighbours().get(0);
            parts.add("The next line, " + next.number() + ", is " + Decimals.text(next.metres(), 1) + " m away.");
        }
        line.givenUp().ifPresent(better -> parts.add(givenUp(better)));
        return String.join(" ", parts);
    }

    static String area(double metres2) {
        return Decimals.text(metres2, metres2 < 10 ? 1 : 0) + " m²";
    }

    private String origin(PlannedLine line) {
        LineCandidate candidate = line.candidate();
        return switch (candidate.origin()) {
            case DEEPEST -> deep(candidate);
            case FOOT_OF_SLOPE -> "The foot of a slope, in deep water.";
            case FLAT -> "The best flat spot " + in(line) + " that goes with the other lines.";
            case NEAREST_FLAT ->
                "The best flat spot " + in(line) + " near "
                        + quantities.target(plan.findings().targetMetres()) + ", at which none is surer.";
            case SHORT -> "The best flat spot in front of the seat.";
            case FIXED -> "You fixed this line.";
        };
    }

    private String deep(LineCandidate candidate) {
        Spot deepest = plan.findings().deepest().spot();
        if (candidate.place().equals(deepest.place())) {
            return "The deepest place that can be fished.";
        }
        double less = deepest.depthMetres() - candidate.spot().depthMetres();
        return less <= LineCandidates.EQUAL_METRES
                ? "As deep as the deepest place to within " + small(LineCandidates.EQUAL_METRES)
                        + ", and easier to reach."
                : "Nearly as deep as the deepest place, which has " + quantities.depth(deepest.depthMetres()) + ".";
    }

    private String in(PlannedLine line) {
        return line.candidate().zone().map(this::in).orElse("there");
    }

    String in(Zone zone) {
        return switch (zone) {
            case TRACK -> "in the " + zone(zone);
            case ACROSS -> zone(zone);
            case LEFT_MARGIN, RIGHT_MARGIN -> "in the " + zone(zone);
            case SHORT -> "in front of the seat";
        };
    }

    private String givenUp(PlannedLine.GivenUp better) {
        String place = spot(better.candidate().spot());
        String reason = switch (better.reason()) {
            case SPACING -> "it is less than 2 m from line " + better.line();
            case PATH -> "it and line " + better.line() + " would be in each other's way";
            case RIG -> "it would need one more rig";
        };
        return "Given up for it: " + place + ", by itself better, because " + reason + ".";
    }

    /** A place with its depth: {@code 2 ft 9 in at section 8, 11:20}. */
    String spot(Spot spot) {
        Place place = spot.place();
        return quantities.depth(spot.depthMetres()) + " at " + quantities.distance(place.distanceMetres()) + ", "
                + quantities.clock(place.angleDegrees());
    }

    /** What to check there before trusting it, one sentence each; never empty. */
    public List<String> checks(PlannedLine line) {
        List<String> warnings = warnings(line);
        return warnings.isEmpty()
                ? List.of("Plumb it once: expect " + depth(line) + " within "
                        + small(2 * line.spot().sdMetres()) + ".")
                : warnings;
    }

    /** What is doubtful about a line, one sentence each; empty where nothing is. */
    public List<String> warnings(PlannedLine line) {
        List<String> checks = new ArrayList<>();
        LineCandidate candidate = line.candidate();
        if (candidate.confidence() == Confidence.NONE) {
            checks.add("The readings do not show that it is flat (odds "
                    + Quantities.percent(line.spot().pFlat()) + "): plumb all round it before you trust it.");
        } else if (candidate.confidence() == Confidence.WORTH_A_READING) {
            checks.add("Worth a reading first: the odds that it is flat are only "
                    + Quantities.percent(line.spot().pFlat()) + ".");
        }
        boolean said =
                candidate.confidence() == Confidence.NONE || candidate.confidence() == Confidence.WORTH_A_READING;
        if (!said && line.spot().sdMetres() > DOUBTFUL_METRES) {
            checks.add(
                    "Plumb it: its depth is known only to " + small(line.spot().sdMetres()) + ".");
        }
        if (line.felt() != Bottom.UNKNOWN) {
            checks.add(
                    line.felt() == Bottom.SILT
                            ? "Silt was felt near it: the plummet sinks in and reads deep."
                            : Sentences.capital(line.felt().word())
                                    + " was felt near it: the plummet may have ridden high.");
        }
        if (line.spot().slope() > FlatProbability.USUAL.slopeLimit()) {
            checks.add("It slopes " + slope(line) + ": hold the rig back and watch for it dragging.");
        }
        for (PlannedLine.Neighbour other : line.neighbours()) {
            if (other.inTheWay()) {
                checks.add("It and line " + other.number() + " are in each other's way to the seat; no set of these"
                        + " lines avoids that. Play fish round it.");
            }
        }
        for (Hazard hazard : plan.findings().map().peg().hazards()) {
            if (passes(line.place(), hazard)) {
                checks.add("Fish come past the " + hazard.kind().word() + " on the way in: steer them round it.");
            }
        }
        return checks;
    }

    private static boolean passes(Place place, Hazard hazard) {
        Geometry way =
                Shapes.FACTORY.createLineString(new Coordinate[] {new Coordinate(0, 0), Shapes.coordinate(place)});
        return hazard.kind() != Hazard.Kind.OTHER && PegWater.around(hazard).intersects(way);
    }

    /**
     * The reading that would settle most about a line, one sentence; empty for a line that is sure, and where no
     * reading would settle much.
     */
    public Optional<String> confirming(PlannedLine line) {
        LineCandidate candidate = line.candidate();
        if (candidate.confidence() == Confidence.SURE) {
            return Optional.empty();
        }
        double flatAt = isDeep(candidate) ? line.spot().depthMetres() : candidate.flatAtMetres();
        return ConfirmingReading.of(plan.findings().map(), line.place(), flatAt)
                .filter(reading -> reading.change() >= WORTH_PLUMBING)
                .map(reading -> "Best check: " + place(reading.place(), line.place()) + ".");
    }

    private String place(Place at, Place line) {
        return at.distanceTo(line) < SAME_METRES
                ? "plumb the line itself again"
                : "a reading at " + quantities.distance(at.distanceMetres()) + ", "
                        + quantities.direction(at.angleDegrees()) + ", " + quantities.clock(at.angleDegrees());
    }

    /** When to fish it. */
    public String order(PlannedLine line) {
        return switch (line.role()) {
            case START -> plan.startsAsWished() ? "Start here, as you wished." : "Start here.";
            case PRIME -> "Feed a little from the start; go to it when line 1 slows.";
            case REST -> "Keep it quiet until late; feed it before you go to it.";
        };
    }

    /** In which order to fish all lines, a sentence for each role; empty without lines. */
    public String order() {
        List<String> sentences = new ArrayList<>();
        lines(PlannedLine.Role.START)
                .ifPresent(lines ->
                        sentences.add("Start on " + lines + (plan.startsAsWished() ? ", as you wished." : ".")));
        lines(PlannedLine.Role.PRIME)
                .ifPresent(lines ->
                        sentences.add("Feed " + lines + " a little from the start; go there when line 1 slows."));
        lines(PlannedLine.Role.REST)
                .ifPresent(lines -> sentences.add("Keep " + lines + " quiet until late; feed before you go there."));
        return String.join(" ", sentences);
    }

    private Optional<String> lines(PlannedLine.Role role) {
        List<Integer> numbers = plan.lines().stream()
                .filter(line -> line.role() == role)
                .map(PlannedLine::number)
                .toList();
        return numbers.isEmpty() ? Optional.empty() : Optional.of(numbered(numbers));
    }

    /** {@code line 1}, {@code lines 2, 3 and 4}. */
    static String numbered(List<Integer> numbers) {
        List<String> words = numbers.stream().sorted().map(String::valueOf).toList();
        int last = words.size() - 1;
        return last == 0
                ? "line " + words.get(0)
                : "lines " + String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** What could not be had, one sentence or two each. */
    public List<String> shortfalls() {
        ShortfallWords words = new ShortfallWords(plan, this, quantities);
        return plan.shortfalls().stream().map(words::say).toList();
    }
}
