package pegbed.wording;

import java.util.List;
import java.util.Optional;
import pegbed.findings.Area;
import pegbed.findings.Confidence;
import pegbed.findings.Deepest;
import pegbed.findings.DeepestSearch;
import pegbed.findings.Findings;
import pegbed.findings.FlatSpot;
import pegbed.findings.Spot;
import pegbed.findings.SteepestSlope;
import pegbed.model.Decimals;
import pegbed.model.Peg;
import pegbed.surface.BottomModel;
import pegbed.surface.FittedBottom;
import pegbed.surface.prior.Structure;

/** The deepest place, the flat spots and the slopes of a peg in the person's words and units. */
public final class FindingWords {
    /** A depth that is known no better than this is worth another reading, metres. */
    private static final double DOUBTFUL_METRES = 0.05;

    private final Quantities quantities;

    private FindingWords(Peg peg) {
        quantities = Quantities.of(peg);
    }

    /** The words at a peg. */
    public static FindingWords of(Peg peg) {
        return new FindingWords(peg);
    }

    /** How sure it is that a spot is flat: {@code likely}. */
    public static String confidence(Confidence confidence) {
        return switch (confidence) {
            case SURE -> "sure";
            case LIKELY -> "likely";
            case WORTH_A_READING -> "worth a reading";
            case NONE -> "none";
        };
    }

    /** How far findings from so many readings can be relied on, one sentence; empty where they are enough. */
    public static Optional<String> fewReadings(int readings) {
        if (readings == 0) {
            return Optional.of("Nothing is plumbed yet: what follows is a guess from the banks alone.");
        }
        return readings < BottomModel.LEARNS_FROM
                ? Optional.of("Few readings yet: take what follows as a first guess, and mind the doubt.")
                : Optional.empty();
    }

    /** What kind of bottom the readings show, with the weights; empty where no readings decide between kinds. */
    public static Optional<String> structure(FittedBottom bottom) {
        List<String> kinds = bottom.structures().stream()
                .filter(each -> each.weight() > 0 && each.structure() != Structure.BASIN)
                .map(each -> kind(each.structure()) + " (" + Quantities.percent(each.weight()) + ")")
                .toList();
        if (kinds.isEmpty() || bottom.soundings() == 0) {
            return Optional.empty();
        }
        String others = kinds.size() == 1 ? "" : ", then " + String.join(" and ", kinds.subList(1, kinds.size()));
        return Optional.of("Most like " + kinds.get(0) + others + ".");
    }

    private static String kind(Structure structure) {
        return switch (structure) {
            case TUB -> "a cut with ledges";
            case FALL -> "a fall away from the bank";
            case OPEN -> "open ground";
            case BASIN -> "a whole water";
        };
    }

    /** A spot: depth, doubt, place and slope. */
    public String spot(Spot spot) {
        return quantities.depth(spot.depthMetres()) + " ± " + quantities.doubt(spot.sdMetres()) + " at "
                + quantities.place(spot.place()) + ", " + Steepness.oneIn(spot.slope());
    }

    /** How large the deepest water is, and what one more reading there would settle. */
    public String deepestArea(Deepest deepest) {
        return Decimals.text(deepest.area().areaMetres2(), 1) + " m² within "
                + quantities.depth(DeepestSearch.AREA_METRES) + " of it, "
                + quantities.depth(deepest.area().shallowestMetres()) + " to "
                + quantities.depth(deepest.area().deepestMetres()) + ". " + settles(deepest);
    }

    /** What one more reading at the deepest place, or beside it, would settle, one sentence. */
    public String settles(Deepest deepest) {
        Spot spot = deepest.spot();
        if (deepest.steepDepthMetres() - spot.depthMetres() > DeepestSearch.AREA_METRES) {
            return "A reading on the steep water beside it would settle whether anything deeper is level enough.";
        }
        return spot.sdMetres() > DOUBTFUL_METRES
                ? "A reading here would settle its depth, which is known to about "
                        + quantities.depthToHalfInch(spot.sdMetres()) + "."
                : "Its depth is well known; another reading here would change little.";
    }

    /** The depth at which flat spots are sought. */
    public String target(Findings findings) {
        return "Target " + quantities.target(findings.targetMetres())
                + (findings.targetFollows() ? " (half the deepest)" : "");
    }

    /** A flat spot that was found: how sure it is, then the spot. */
    public String flat(FlatSpot flat) {
        return confidence(flat.confidence()) + " ("
                + Quantities.percent(flat.spot().pFlat()) + "): " + spot(flat.spot());
    }

    /** That a zone has no flat spot at the target, and the nearest depth with a likely one. */
    public String noFlat(FlatSpot flat) {
        return noFlat(quantities.target(flat.targetMetres())) + "; " + nearest(flat) + ".";
    }

    /** The same words wherever a zone has no flat at the target. */
    static String noFlat(String target) {
        return "no flat at " + target + " is known";
    }

    /** The nearest depth at which there is a flat. */
    static String nearest(String depth) {
        return "nearest " + depth;
    }

    private String nearest(FlatSpot flat) {
        return flat.nearestMetres().isPresent()
                ? nearest(quantities.depth(flat.nearestMetres().getAsDouble()))
                : "none at another depth either";
    }

    /** The likeliest spot of a zone in which none was found. */
    public String bestGuess(FlatSpot flat) {
        return "the best guess, " + Quantities.percent(flat.spot().pFlat()) + ": " + spot(flat.spot());
    }

    /** Size and depths of a flat area. */
    public String area(Area area) {
        return Decimals.text(area.areaMetres2(), 1) + " m², " + quantities.depth(area.shallowestMetres()) + " to "
                + quantities.depth(area.deepestMetres());
    }

    /** The steepest place of a zone; empty where it is level. */
    public Optional<String> slope(SteepestSlope slope) {
        return slope.slope() < Steepness.LEVEL
                ? Optional.empty()
                : Optional.of(Steepness.oneIn(slope.slope()) + " (" + Steepness.drops(slope.slope()) + ") at "
                        + quantities.distance(slope.place().distanceMetres()) + ", "
                        + quantities.direction(slope.place().angleDegrees()));
    }

    /** A found place on a card of the window. */
    public record Card(String title, String where, String what) {}

    /** The deepest place on a card. */
    public Card deepestCard(Deepest deepest) {
        Spot spot = deepest.spot();
        return new Card(
                "Deepest, " + quantities.depth(spot.depthMetres()),
                where(spot),
                ground(spot) + ", about " + size(deepest.area()) + " of it. " + settles(deepest));
    }

    /** A flat spot, or that there is none, on a card. */
    public Card flatCard(FlatSpot flat) {
        Spot spot = flat.spot();
        String zone = Sentences.capital(flat.zone().words());
        if (flat.confidence() == Confidence.NONE) {
            return new Card(
                    zone + ": " + noFlat(quantities.target(flat.targetMetres())),
                    "",
                    Sentences.capital(nearest(flat)) + ".");
        }
        String size = flat.area().map(area -> ", " + size(area) + " of it").orElse("");
        return new Card(
                zone + ", " + flatness(flat.confidence()) + " at " + quantities.depth(spot.depthMetres()),
                where(spot),
                ground(spot) + size + ".");
    }

    private static String flatness(Confidence confidence) {
        return switch (confidence) {
            case SURE -> "flat for sure";
            case LIKELY -> "likely flat";
            case WORTH_A_READING, NONE -> "worth a reading";
        };
    }

    private String where(Spot spot) {
        return quantities.distance(spot.place().distanceMetres()) + ", "
                + quantities.direction(spot.place().angleDegrees()) + ", " + quantities.aim(spot.place());
    }

    private String ground(Spot spot) {
        return Sentences.capital(Steepness.oneIn(spot.slope())) + ", give or take " + quantities.depth(spot.sdMetres());
    }

    private static String size(Area area) {
        return Decimals.text(area.areaMetres2(), area.areaMetres2() < 9.5 ? 1 : 0) + " m²";
    }
}
