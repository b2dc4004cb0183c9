package pegbed.report.map;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.MultiLineString;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.index.strtree.STRtree;
import pegbed.geometry.Overlay;
import pegbed.geometry.Shapes;
import pegbed.report.drawing.View;

/** Lines of the map with gaps where texts lie, so that nothing is written through. */
final class Masked {
    private final STRtree boxes = new STRtree();
    private final int count;

    /** @param texts the boxes of all texts on the map, points */
    Masked(View view, List<LabelBox> texts) {
        AffineTransformation toWater = new AffineTransformation(
                1 / view.pointsPerMetre(), 0, view.leftMetres(), 0, -1 / view.pointsPerMetre(), view.topMetres());
        for (LabelBox text : texts) {
            Geometry box = toWater.transform(text.outline());
            boxes.insert(box.getEnvelopeInternal(), box);
        }
        boxes.build();
        count = texts.size();
    }

    /** What is left of lines in metres. */
    MultiLineString of(Geometry lines) {
        List<LineString> left = new ArrayList<>();
        for (int i = 0; i < lines.getNumGeometries(); i++) {
            Geometry line = lines.getGeometryN(i);
            if (count > 0) {
                for (Object box : boxes.query(line.getEnvelopeInternal())) {
                    if (((Geometry) box).intersects(line)) {
                        line = Overlay.difference(line, (Geometry) box);
                    }
                }
            }
            MultiLineString merged = Lines.of(line);
            for (int k = 0; k < merged.getNumGeometries(); k++) {
                left.add((LineString) merged.getGeometryN(k));
            }
        }
        return Shapes.FACTORY.createMultiLineString(left.toArray(LineString[]::new));
    }
}
