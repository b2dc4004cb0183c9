package pegbed.report.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pegbed.findings.PegMap;
import pegbed.model.Reading;
import pegbed.model.Visit;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.surface.posterior.ReadingCheck;
import pegbed.wording.DepthFigures;

/**
 * Readings as soundings: the middle of the figure is the place. Where that is taken, a dot marks the place and the
 * figure stands beside it; where there is no room at all, the dot stands alone. Depths of earlier visits are brought to
 * the level of the latest: the fitted bottom there, and what the reading differed from it. They stand upright as all
 * figures, lighter and smaller: sloping figures mean something else on charts.
 */
final class ReadingPart {
    private static final double[][] BESIDE = {
        {0, -1}, {0, 1}, {1, 0}, {-1, 0}, {0.9, -0.8}, {-0.9, -0.8}, {0.9, 0.8}, {-0.9, 0.8}
    };

    /** How far beside, in sizes of the figure; a doubted one may go further, on a line to its place. */
    private static final double[] NEAR = {1, 1.75};

    private static final double[] FAR = {1, 1.75, 2.5, 3.3};

    private final Composition to;
    private final PegMap map;
    private final Set<Integer> suspicious = new HashSet<>();

    /** Size of an earlier visit's figure as a share of the size of today's. */
    static final double EARLIER_SHARE = 0.9;

    private ReadingPart(Composition to, PegMap map) {
        this.to = to;
        this.map = map;
        map.suspicious().forEach(check -> suspicious.add(check.sounding()));
    }

    /** One reading and its place in the survey. */
    private record Sounding(int index, Reading reading, boolean today) {}

    static void add(Composition to, PegMap map) {
        if (to.shows(Layer.READINGS)) {
            new ReadingPart(to, map).run();
        }
    }

    private void run() {
        List<Sounding> soundings = new ArrayList<>();
        List<Visit> visits = map.peg().visits();
        for (int v = 0; v < visits.size(); v++) {
            for (Reading reading : visits.get(v).readings()) {
                soundings.add(new Sounding(soundings.size(), reading, v == visits.size() - 1));
            }
        }
        soundings.sort(Comparator.comparing((Sounding s) -> !suspicious.contains(s.index))
                .thenComparing(s -> !s.today));
        soundings.forEach(this::draw);
    }

    private double depth(Sounding sounding) {
        if (sounding.today) {
            return sounding.reading.depthMetres();
        }
        ReadingCheck check = map.checks().get(sounding.index);
        var place = sounding.reading.place();
        return map.bottom().at(place.xMetres(), place.yMetres()).depthMetres() + check.residualMetres();
    }

    private void draw(Sounding sounding) {
        double x = sounding.reading.place().xMetres();
        double y = sounding.reading.place().yMetres();
        boolean doubted = suspicious.contains(sounding.index);
        String figure = DepthFigures.depth(depth(sounding), map.peg().units().depth());
        double size = Math.max(8.5, Math.min(11.5, to.view.pointsPerMetre() * 0.33));
        Composition.Label label = doubted
                ? new Composition.Label(Role.SUSPICIOUS_FIGURE, Layer.READINGS, Lettering.bold(size), figure + "?")
                : sounding.today
                        ? new Composition.Label(Role.READING_FIGURE, Layer.READINGS, Lettering.bold(size), figure)
                        : new Composition.Label(
                                Role.EARLIER_READING_FIGURE,
                                Layer.READINGS,
                                Lettering.plain(EARLIER_SHARE * size),
                                figure);
        LabelBox box = to.box(label, x, y, 0, 0, 0);
        if (doubted) {
            box = new LabelBox(box.x(), box.y(), box.width() + box.height() + 3, box.height() + 4, 0);
        }
        if (to.space.isFree(box)) {
            write(label, sounding, box, 0, 0);
            return;
        }
        dot(sounding);
        double right = box.width() / 2 + 2.5;
        double down = box.height() / 2 + 2.5;
        for (double further : doubted ? FAR : NEAR) {
            for (double[] side : BESIDE) {
                double dx = side[0] * right * further;
                double dy = side[1] * down * further;
                LabelBox beside = new LabelBox(box.x() + dx, box.y() + dy, box.width(), box.height(), 0);
                if (to.space.isFree(beside)) {
                    if (doubted) {
                        Frame frame = Frame.at(x, y);
                        to.stroke(Role.SUSPICIOUS_FRAME, Layer.READINGS, frame, Symbols.line(0, 0, dx, dy));
                    }
                    write(label, sounding, beside, dx, dy);
                    return;
                }
            }
        }
    }

    private void write(Composition.Label label, Sounding sounding, LabelBox box, double right, double down) {
        double x = sounding.reading.place().xMetres();
        double y = sounding.reading.place().yMetres();
        if (suspicious.contains(sounding.index)) {
            var frame = Frame.at(x, y);
            var shape = org.locationtech.jts.geom.util.AffineTransformation.translationInstance(right, down)
                    .transform(Symbols.lozenge(box.width() - box.height() + 1, box.height()));
            to.fill(Role.SUSPICIOUS_FRAME, Layer.READINGS, frame, shape);
            to.stroke(Role.SUSPICIOUS_FRAME, Layer.READINGS, frame, shape.getBoundary());
        }
        to.space.takeForText(box);
        to.write(label, x, y, right, down, 0);
    }

    private void dot(Sounding sounding) {
        double x = sounding.reading.place().xMetres();
        double y = sounding.reading.place().yMetres();
        Frame frame = Frame.at(x, y);
        if (suspicious.contains(sounding.index)) {
            to.add(new Fill(Role.SUSPICIOUS_FRAME, Layer.READINGS, frame, Symbols.polygon(0, -4, 4, 0, 0, 4, -4, 0)));
            to.stroke(
                    Role.SUSPICIOUS_FRAME,
                    Layer.READINGS,
                    frame,
                    Symbols.polygon(0, -4, 4, 0, 0, 4, -4, 0).getExteriorRing());
        } else {
            to.fill(
                    sounding.today ? Role.READING_DOT : Role.EARLIER_READING_DOT,
                    Layer.READINGS,
                    frame,
                    Symbols.disc(1.4));
        }
        to.takeAbout(x, y, 2.5);
    }
}
