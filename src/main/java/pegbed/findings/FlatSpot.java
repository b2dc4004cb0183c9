package pegbed.findings;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The best flat spot of a zone at the target depth.
 *
 * @param zone where it was sought
 * @param targetMetres the depth sought, metres
 * @param spot the best there is, even where it is not good
 * @param confidence how sure it is
 * @param area the connected part with P of one half or more about it; empty where there is none
 * @param circle the largest circle in that area; empty where there is no area
 * @param nearestMetres where there is no such spot: the depth nearest to the target at which the zone has a likely one;
 *     empty if it has none at all
 */
public record FlatSpot(
        Zone zone,
        double targetMetres,
        Spot spot,
        Confidence confidence,
        Optional<Area> area,
        Optional<Circle> circle,
        OptionalDouble nearestMetres) {
    /**
     * A circle on the water.
     *
     * @param xMetres x of the centre
     * @param yMetres y of the centre
     * @param radiusMetres radius
     */
    public record Circle(double xMetres, double yMetres, double radiusMetres) {}
}
