package pegbed.report.card;

import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import pegbed.geometry.Shapes;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Item;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Stroke;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.TextMeasure;
import pegbed.report.drawing.Themes;
import pegbed.report.paint.SheetTransform;

/**
 * What covers what on a drawing of a map, from its items and not from what the placer believes: signs on signs, letters
 * on signs, letters on letters, letters on a bank's line or over the frame. A sign is all that is drawn about one place
 * in one layer; lines that lead to a place are none.
 */
final class MapOverlaps {
    private static final Set<Role> LINES =
            EnumSet.of(Role.LEADER, Role.READING_LEADER, Role.CLOCK_TICK, Role.CHANGED, Role.CHANGED_BADGE);
    private static final Set<Role> IN_A_SIGN = EnumSet.of(Role.FLAT_NUMBER, Role.LINE_NUMBER, Role.SUSPICIOUS_FIGURE);

    /** Less than this is rounding, square points. */
    private static final double ROUNDING = 0.3;

    private final Drawing drawing;
    private final TextMeasure measure;
    private final Map<Object, Geometry> signs = new LinkedHashMap<>();
    private final Map<Text, Geometry> texts = new LinkedHashMap<>();
    final List<String> found = new ArrayList<>();

    private record Sign(Layer layer, Frame frame) {}

    /** @param area the part of the sheet that the map has */
    MapOverlaps(Drawing drawing, Envelope area, TextMeasure measure) {
        this.drawing = drawing;
        this.measure = measure;
        for (Item item : drawing.items()) {
            if (item instanceof Text text && item.frame() instanceof Frame.At) {
                texts.put(text, box(text));
            } else if (item.frame() instanceof Frame.At && !LINES.contains(item.role())) {
                sign(item);
            }
        }
        signsOnSigns();
        letters(Shapes.FACTORY.toGeometry(area));
    }

    private void sign(Item item) {
        double pen = Themes.LIGHT.pen(item.role()).widthPoints();
        Geometry shape;
        if (item instanceof Fill fill) {
            shape = onSheet(fill.shape(), item.frame());
        } else {
            Stroke stroke = (Stroke) item;
            if (stroke.lines().getNumPoints() == 2) {
                return;
            }
            shape = onSheet(stroke.lines(), item.frame()).buffer(pen / 2);
        }
        signs.merge(new Sign(item.layer(), item.frame()), shape, Geometry::union);
    }

    private Geometry onSheet(Geometry shape, Frame frame) {
        AffineTransform to = SheetTransform.of(drawing.view(), frame);
        return new AffineTransformation(
                        to.getScaleX(),
                        to.getShearX(),
                        to.getTranslateX(),
                        to.getShearY(),
                        to.getScaleY(),
                        to.getTranslateY())
                .transform(shape);
    }

    private Geometry box(Text text) {
        double width = measure.widthPoints(text.words(), text.lettering());
        double height = text.lettering().sizePoints() * Lettering.CAP_HEIGHT;
        double left = switch (text.align()) {
            case START -> 0;
            case MIDDLE -> -width / 2;
            case END -> -width;
        };
        Geometry flat = Shapes.FACTORY.toGeometry(new Envelope(left, left + width, -height, 0));
        Geometry turned = AffineTransformation.rotationInstance(Math.toRadians(text.turnDegrees()))
                .translate(text.x(), text.y())
                .transform(flat);
        return onSheet(turned, text.frame());
    }

    private void signsOnSigns() {
        List<Map.Entry<Object, Geometry>> all = new ArrayList<>(signs.entrySet());
        for (int i = 0; i < all.size(); i++) {
            for (int k = 0; k < i; k++) {
                if (overlap(all.get(i).getValue(), all.get(k).getValue())) {
                    found.add(
                            "sign " + all.get(i).getKey() + " on " + all.get(k).getKey());
                }
            }
        }
    }

    private void letters(Geometry area) {
        List<Text> all = new ArrayList<>(texts.keySet());
        List<Geometry> banks = drawing.of(Role.BANK).stream()
                .map(item -> onSheet(((Stroke) item).lines(), item.frame()))
                .toList();
        for (int i = 0; i < all.size(); i++) {
            Text text = all.get(i);
            Geometry box = texts.get(text);
            for (int k = 0; k < i; k++) {
                if (overlap(box, texts.get(all.get(k)))) {
                    found.add("'" + text.words() + "' on '" + all.get(k).words() + "'");
                }
            }
            signs.forEach((key, sign) -> {
                boolean own = IN_A_SIGN.contains(text.role()) && key.equals(new Sign(text.layer(), text.frame()));
                if (!own && overlap(box, sign)) {
                    found.add("'" + text.words() + "' on sign " + key);
                }
            });
            if (banks.stream().anyMatch(box::intersects)) {
                found.add("'" + text.words() + "' on a bank's line");
            }
            if (!area.covers(box)) {
                found.add("'" + text.words() + "' over the frame");
            }
        }
    }

    private static boolean overlap(Geometry one, Geometry other) {
        return one.getEnvelopeInternal().intersects(other.getEnvelopeInternal())
                && one.intersects(other)
                && one.intersection(other).getArea() > ROUNDING;
    }

    /** All texts about places on the map. */
    List<Text> texts() {
        return List.copyOf(texts.keySet());
    }

    int signs() {
        return signs.size();
    }
}
