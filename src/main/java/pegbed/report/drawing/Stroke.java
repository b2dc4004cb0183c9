package pegbed.report.drawing;

import org.locationtech.jts.geom.Geometry;

/**
 * Lines drawn with a pen. Round caps and joins.
 *
 * @param role what it means
 * @param layer what it is switched with
 * @param frame what the coordinates are
 * @param lines linestrings, not empty; a closed one is drawn closed; not to be changed
 */
public record Stroke(Role role, Layer layer, Frame frame, Geometry lines) implements Item {
    public Stroke {
        if (lines.getDimension() != 1) {
            throw new IllegalArgumentException("A stroke needs lines, not " + lines.getGeometryType());
        }
    }
}
