package pegbed.wording;

import pegbed.findings.Confidence;
import pegbed.findings.Zone;
import pegbed.plan.Plan;
import pegbed.plan.Shortfall;

/** Says what could not be had. */
final class ShortfallWords {
    /** Odds below this are no reason to plumb a place. */
    private static final double MIN_PROBABILITY = 0.05;

    private final Plan plan;
    private final PlanWords words;
    private final Quantities quantities;

    ShortfallWords(Plan plan, PlanWords words, Quantities quantities) {
        this.plan = plan;
        this.words = words;
        this.quantities = quantities;
    }

    String say(Shortfall shortfall) {
        return shortfall.zone().isPresent() ? ofZone(shortfall, shortfall.zone().get()) : ofWishes(shortfall);
    }

    private String ofZone(Shortfall shortfall, Zone zone) {
        String in = words.in(zone);
        return switch (shortfall.kind()) {
            case NO_WATER -> "No water " + in + " that a rig could be fished in.";
            case OTHER_DEPTH -> otherDepth(shortfall, zone);
            case NO_FLAT -> zone == Zone.SHORT ? "Nothing flat is known " + in + "." : noFlat(in) + rest(shortfall);
            case KEPT_AWAY -> "No line " + in + ": what there is, you forbade or it lies under something.";
            case CROWDED -> no(zone) + "every good place there is less than 2 m from another line.";
            case ENOUGH_LINES -> no(zone) + "the lines you wanted are elsewhere.";
            case ENOUGH_RIGS -> no(zone) + "it would need one more rig than you want.";
            case NOT_WORTH_IT ->
                no(zone) + "the best that is left, "
                        + shortfall.spot().map(words::spot).orElseThrow()
                        + ", is not worth the rig it needs or the line it would disturb.";
            default -> throw new IllegalStateException("Not of a zone: " + shortfall.kind());
        };
    }

    private String no(Zone zone) {
        boolean some = plan.lines().stream()
                .anyMatch(line -> line.candidate().zone().stream().anyMatch(zone::equals));
        return (some ? "No further line " : "No line ") + words.in(zone) + ": ";
    }

    private String otherDepth(Shortfall shortfall, Zone zone) {
        String nearest = quantities.depth(shortfall.nearestMetres().orElseThrow());
        int line = shortfall.line().orElseThrow();
        return plan.findings().flats().stream()
                .filter(flat -> flat.zone() == zone && flat.confidence() != Confidence.NONE)
                .findFirst()
                .map(flat -> "A flat at " + target() + " " + words.in(zone) + " is only "
                        + FindingWords.confidence(flat.confidence()) + " ("
                        + Quantities.percent(flat.spot().pFlat())
                        + "); line " + line + " takes one at " + nearest + ".")
                .orElseGet(() -> noFlat(words.in(zone)) + "; " + FindingWords.nearest(nearest) + ", which is line "
                        + line + ".");
    }

    private String target() {
        return quantities.target(plan.findings().targetMetres());
    }

    private String noFlat(String in) {
        return Sentences.capital(FindingWords.noFlat(target())) + " " + in;
    }

    private String rest(Shortfall shortfall) {
        double target = plan.findings().targetMetres();
        double deepest = plan.findings().deepest().spot().depthMetres();
        // A depth that is more like the deepest water's is no stand-in for the target.
        String nearest = shortfall.nearestMetres().stream()
                .filter(depth -> Math.abs(depth - target) < Math.abs(depth - deepest))
                .mapToObj(depth -> "; " + FindingWords.nearest(quantities.depth(depth)))
                .findFirst()
                .orElse("");
        String guess = shortfall
                .spot()
                .filter(spot -> spot.pFlat() >= MIN_PROBABILITY)
                .map(spot -> " The likeliest place to plumb is " + words.spot(spot) + " (odds "
                        + Quantities.percent(spot.pFlat()) + ").")
                .orElse("");
        return nearest + "." + guess;
    }

    private String ofWishes(Shortfall shortfall) {
        return switch (shortfall.kind()) {
            case FIXED_OUTSIDE ->
                "The line you fixed at " + place(shortfall)
                        + " is left out: it is not in the water that you can fish, or in a hazard.";
            case FIXED_UNDER_SOMETHING ->
                "The line you fixed at " + place(shortfall)
                        + " is left out: the pole would pass under an overhead line or a low branch.";
            case FIXED_CROWDED ->
                "The line you fixed at " + place(shortfall)
                        + " is left out: it is less than 2 m from another that you fixed.";
            case FIXED_TOO_MANY -> "You fixed more lines than you want; all of them are kept.";
            case FIXED_NEED_RIGS -> "The lines you fixed need more rigs than you want.";
            case NO_START ->
                "You wished to start " + words.start()
                        + ", but no line is planned there; the first is the one it would be without that wish.";
            default -> throw new IllegalStateException("Of a zone: " + shortfall.kind());
        };
    }

    private String place(Shortfall shortfall) {
        var place = shortfall.spot().orElseThrow().place();
        return quantities.distance(place.distanceMetres()) + ", " + quantities.clock(place.angleDegrees());
    }
}
