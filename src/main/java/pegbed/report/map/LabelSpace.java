package pegbed.report.map;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.index.quadtree.Quadtree;
import pegbed.report.drawing.Layer;

/** Where on the sheet labels and symbols lie already; who comes first has the place. */
final class LabelSpace {
    /** Letters and signs keep so far from the frame, points. */
    private static final double EDGE_POINTS = 3;

    private final Envelope area;
    private final Quadtree taken = new Quadtree();
    private final Quadtree barred = new Quadtree();
    private final List<LabelBox> written = new ArrayList<>();
    private final Map<Layer, List<LabelBox>> signs = new EnumMap<>(Layer.class);

    /** @param area the part of the sheet that the map has, points */
    LabelSpace(Envelope area) {
        this.area = new Envelope(area);
        this.area.expandBy(-EDGE_POINTS);
    }

    /** Whether a box lies inside the area and on nothing that was put there before. */
    boolean isFree(LabelBox box) {
        if (!contains(box)) {
            return false;
        }
        @SuppressWarnings("unchecked")
        List<LabelBox> near = taken.query(box.envelope());
        return near.stream().noneMatch(box::overlaps);
    }

    /** Whether a text may stand in a box: it is free, and no line runs there that nothing may be written over. */
    boolean isFreeForText(LabelBox box) {
        if (!isFree(box)) {
            return false;
        }
        @SuppressWarnings("unchecked")
        List<LineSegment> near = barred.query(box.envelope());
        return near.stream()
                .noneMatch(line ->
                        box.inside(line.p0.x, line.p0.y, line.p1.x, line.p1.y).isPresent());
    }

    /** Takes the place of a box, free or not. */
    void take(LabelBox box) {
        taken.insert(box.envelope(), box);
    }

    /** Takes the place of a sign, free or not. */
    void takeForSign(Layer layer, LabelBox box) {
        take(box);
        signs.computeIfAbsent(layer, key -> new ArrayList<>()).add(box);
    }

    /** Takes the place of a text: lines under it are left out there. */
    void takeForText(LabelBox box) {
        take(box);
        written.add(box);
    }

    /** Lets no text stand over lines, in points of the sheet. */
    void bar(Geometry lines) {
        for (int i = 0; i < lines.getNumGeometries(); i++) {
            Coordinate[] places = lines.getGeometryN(i).getCoordinates();
            for (int k = 1; k < places.length; k++) {
                LineSegment segment = new LineSegment(places[k - 1], places[k]);
                Envelope box = new Envelope(segment.p0, segment.p1);
                if (box.intersects(area)) {
                    barred.insert(box, segment);
                }
            }
        }
    }

    /** The boxes of all texts so far. */
    List<LabelBox> texts() {
        return List.copyOf(written);
    }

    /** The boxes of all signs so far but those of one layer. */
    List<LabelBox> signsBut(Layer layer) {
        return signs.entrySet().stream()
                .filter(entry -> entry.getKey() != layer)
                .flatMap(entry -> entry.getValue().stream())
                .toList();
    }

    /** Whether a box lies inside the area. */
    boolean contains(LabelBox box) {
        return area.contains(box.envelope());
    }

    /** Whether a place of the sheet lies inside the area. */
    boolean holds(double x, double y) {
        return area.contains(x, y);
    }

    /**
     * Where the straight line from one place of the sheet to another leaves the area; the area's nearest place else.
     */
    Coordinate exit(Coordinate from, Coordinate to) {
        LabelBox box = new LabelBox(area.centre().x, area.centre().y, area.getWidth(), area.getHeight(), 0);
        double share =
                box.inside(from.x, from.y, to.x, to.y).map(part -> part[1]).orElse(1.0);
        double x = from.x + share * (to.x - from.x);
        double y = from.y + share * (to.y - from.y);
        return new Coordinate(
                Math.max(area.getMinX(), Math.min(area.getMaxX(), x)),
                Math.max(area.getMinY(), Math.min(area.getMaxY(), y)));
    }
}
