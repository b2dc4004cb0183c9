package pegbed.wording;

import java.util.stream.Collectors;
import pegbed.findings.DepthProfile;
import pegbed.model.Decimals;
import pegbed.model.Peg;
import pegbed.model.Place;

/** A profile of the bottom in the person's words and units. */
public final class ProfileWords {
    private final Quantities quantities;

    private ProfileWords(Peg peg) {
        quantities = Quantities.of(peg);
    }

    /** The words at a peg. */
    public static ProfileWords of(Peg peg) {
        return new ProfileWords(peg);
    }

    /** What is shown: the bottom in a direction, degrees from straight out, positive to the right. */
    public String towards(double angleDegrees) {
        return "Bottom " + quantities.direction(angleDegrees) + " (" + quantities.clock(angleDegrees) + ")";
    }

    /** What is shown: the bottom between two places. */
    public String between(Place from, Place to) {
        return "Bottom along the line from " + quantities.direction(from.angleDegrees()) + " to "
                + quantities.direction(to.angleDegrees());
    }

    /** The slopes of a profile, one sentence. */
    public String slopes(DepthProfile profile) {
        if (profile.points().isEmpty()) {
            return "There is no water this way.";
        }
        if (profile.slopes().isEmpty()) {
            return "No slope steeper than 1 in 3 this way.";
        }
        return profile.slopes().stream()
                .map(slope -> Steepness.oneIn(slope.steepest()) + " from " + end(slope.lip()) + " down to "
                        + end(slope.foot()))
                .collect(Collectors.joining("; ", "", "."));
    }

    private String end(DepthProfile.Point point) {
        return quantities.depth(point.depthMetres()) + " at "
                + Decimals.text(point.place().distanceMetres(), 1) + " m";
    }
}
