package pegbed.report.map;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.quadtree.Quadtree;

/** Where on the sheet labels and symbols lie already; who comes first has the place. */
final class LabelSpace {
    private final Envelope area;
    private final Quadtree taken = new Quadtree();
    private final List<LabelBox> written = new ArrayList<>();

    /** @param area the part of the sheet in which labels may lie, points */
    LabelSpace(Envelope area) {
        this.area = area;
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

    /** Takes the place of a box, free or not. */
    void take(LabelBox box) {
        taken.insert(box.envelope(), box);
    }

    /** Takes the place of a text: lines under it are left out there. */
    void takeForText(LabelBox box) {
        take(box);
        written.add(box);
    }

    /** The boxes of all texts so far. */
    List<LabelBox> texts() {
        return List.copyOf(written);
    }

    /** Whether a box lies inside the area. */
    boolean contains(LabelBox box) {
        return area.contains(box.envelope());
    }

    /** Whether a place of the sheet lies inside the area. */
    boolean holds(double x, double y) {
        return area.contains(x, y);
    }
}
