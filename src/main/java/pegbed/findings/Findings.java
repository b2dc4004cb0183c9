package pegbed.findings;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The answers at one target depth.
 *
 * @param map what they were found on
 * @param targetMetres the depth sought across and in the margins, metres
 * @param targetFollows whether the target is half the deepest, not one that the person set
 * @param flats the best flat spot of each zone that has any fishable water, in the order of the zones
 */
public record Findings(PegMap map, double targetMetres, boolean targetFollows, List<FlatSpot> flats) {
    /** The answers at the target that the person set, in the peg or here, else at half the deepest. */
    public static Findings of(PegMap map, OptionalDouble targetMetres) {
        OptionalDouble wished =
                targetMetres.isPresent() ? targetMetres : map.peg().wishes().targetMetres();
        double target = wished.orElse(map.deepest().spot().depthMetres() / 2);
        return new Findings(map, target, wished.isEmpty(), FlatSearch.of(map, target));
    }

    public List<SteepestSlope> slopes() {
        return map.slopes();
    }

    public Deepest deepest() {
        return map.deepest();
    }
}
