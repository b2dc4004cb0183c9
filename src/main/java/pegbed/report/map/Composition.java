package pegbed.report.map;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
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
import pegbed.report.drawing.View;

/** A drawing in the making: items by layer, and the places that labels have taken. Parts are added by one thread. */
final class Composition {
    final View view;
    final TextMeasure measure;
    final Envelope area;
    final LabelSpace space;
    final Placer placer = new Placer(this);
    private final MapOptions options;
    private final Map<Layer, List<Item>> items = new EnumMap<>(Layer.class);

    /** @param area the part of the sheet that the map has, points */
    Composition(View view, Envelope area, TextMeasure measure, MapOptions options) {
        this.view = view;
        this.measure = measure;
        this.options = options;
        this.area = area;
        this.space = new LabelSpace(area);
    }

    boolean shows(Layer layer) {
        return options.layers().contains(layer);
    }

    void add(Item item) {
        if (shows(item.layer())) {
            items.computeIfAbsent(item.layer(), key -> new ArrayList<>()).add(item);
        }
    }

    /** Lines, if there are any, under all that their layer has so far. */
    void strokeUnder(Role role, Layer layer, Frame frame, Geometry lines) {
        if (!lines.isEmpty() && shows(layer)) {
            items.computeIfAbsent(layer, key -> new ArrayList<>()).add(0, new Stroke(role, layer, frame, lines));
        }
    }

    /** Lines in metres as points of the sheet. */
    Geometry toSheet(Geometry water) {
        return new AffineTransformation(view.pointsPerMetre(), 0, view.x(0), 0, -view.pointsPerMetre(), view.y(0))
                .transform(water);
    }

    /** An area, if there is any of it. */
    void fill(Role role, Layer layer, Frame frame, Geometry shape) {
        if (!shape.isEmpty()) {
            add(new Fill(role, layer, frame, shape));
        }
    }

    /** Lines, if there are any. */
    void stroke(Role role, Layer layer, Frame frame, Geometry lines) {
        if (!lines.isEmpty()) {
            add(new Stroke(role, layer, frame, lines));
        }
    }

    /** The box of a text with its middle so many points from a place on the water. */
    LabelBox box(Label label, double xMetres, double yMetres, double right, double down, double turnDegrees) {
        return new LabelBox(
                view.x(xMetres) + right,
                view.y(yMetres) + down,
                measure.widthPoints(label.words(), label.lettering()) + 3,
                label.lettering().sizePoints() * Lettering.CAP_HEIGHT + 3,
                turnDegrees);
    }

    /**
     * Writes a label with its middle so many points from a place on the water, if there is room.
     *
     * @return whether there was
     */
    boolean place(Label label, double xMetres, double yMetres, double right, double down, double turnDegrees) {
        LabelBox box = box(label, xMetres, yMetres, right, down, turnDegrees);
        if (!shows(label.layer()) || !space.isFreeForText(box)) {
            return false;
        }
        space.takeForText(box);
        write(label, xMetres, yMetres, right, down, turnDegrees);
        return true;
    }

    /** Writes a label at the first of some offsets, right and down in points, where there is room. */
    boolean placeFirst(Label label, double xMetres, double yMetres, double[][] offsets) {
        for (double[] offset : offsets) {
            if (place(label, xMetres, yMetres, offset[0], offset[1], 0)) {
                return true;
            }
        }
        return false;
    }

    /** Writes a label whether there is room or not, and takes no place. */
    void write(Label label, double xMetres, double yMetres, double right, double down, double turnDegrees) {
        double half = label.lettering().sizePoints() * Lettering.CAP_HEIGHT / 2;
        double turn = Math.toRadians(turnDegrees);
        add(new Text(
                label.role(),
                label.layer(),
                Frame.at(xMetres, yMetres),
                right - half * Math.sin(turn),
                down + half * Math.cos(turn),
                Text.Align.MIDDLE,
                turnDegrees,
                label.lettering(),
                label.words()));
    }

    /** All items, layer by layer. */
    Drawing drawing() {
        return new Drawing(items.values().stream().flatMap(List::stream).toList(), view);
    }

    /** A text to be placed. */
    record Label(Role role, Layer layer, Lettering lettering, String words) {}
}
