package pegbed.report.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
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
 * Readings as soundings: the middle of the figure is the place. Where a sign has that, or another figure comes too
 * near, a dot marks the place and the figure stands clear of it, farther off with a line to it; where there is no room
 * at all, the dot stands alone. Where two were read at one spot, the later figure has the place, and figures of earlier
 * visits stand at their place or not at all, so that they thin out about those of the latest. Depths of earlier visits
 * are brought to its level. They stand upright as all figures, lighter and smaller: sloping figures mean something else
 * on charts.
 */
final class ReadingPart {
    /** How far beside, in sizes of the figure; beyond 1 on a line to its place. */
    private static final double[] FURTHER = {1, 1.75, 2.5, 3.3};

    private final Composition to;
    private final PegMap map;
    private final Ground ground;
    private final Set<Integer> suspicious = new HashSet<>();
    private final List<LabelBox> figures = new ArrayList<>();
    private final List<Leader> leaders = new ArrayList<>();

    /** Size of an earlier visit's figure as a share of the size of today's. */
    static final double EARLIER_SHARE = 0.9;

    private ReadingPart(Composition to, PegMap map, Ground ground) {
        this.to = to;
        this.map = map;
        this.ground = ground;
        // That the others contradict a reading is what the model makes of them.
        List<ReadingCheck> contradicted = ground.joinedUp().isPresent() ? List.of() : map.suspicious();
        contradicted.forEach(check -> suspicious.add(check.sounding()));
    }

    /** One reading and its place in the survey. */
    private record Sounding(int index, Reading reading, int visit, boolean today) {}

    /** Asks for the places of all figures. */
    static ReadingPart addFigures(Composition to, PegMap map, Ground ground) {
        ReadingPart part = new ReadingPart(to, map, ground);
        if (to.shows(Layer.READINGS)) {
            part.run();
        }
        return part;
    }

    /** Draws the lines from places to figures, with gaps for texts and signs. */
    void addLeaders(Masked masked) {
        for (Leader leader : leaders) {
            to.stroke(
                    leader.doubted ? Role.SUSPICIOUS_FRAME : Role.READING_LEADER,
                    Layer.READINGS,
                    Frame.at(leader.xMetres, leader.yMetres),
                    masked.about(leader.xMetres, leader.yMetres, leader.line));
        }
    }

    private void run() {
        List<Sounding> soundings = new ArrayList<>();
        List<Visit> visits = map.peg().visits();
        for (int v = 0; v < visits.size(); v++) {
            for (Reading reading : visits.get(v).readings()) {
                soundings.add(new Sounding(soundings.size(), reading, v, v == visits.size() - 1));
            }
        }
        soundings.sort(Comparator.comparing((Sounding s) -> -s.visit));
        for (Sounding sounding : soundings) {
            Placer.Rank rank = suspicious.contains(sounding.index)
                    ? Placer.Rank.DOUBTED_READING
                    : sounding.today ? Placer.Rank.READING : Placer.Rank.EARLIER_READING;
            to.placer.ask(rank, () -> draw(sounding));
        }
    }

    private double depth(Sounding sounding) {
        if (sounding.today) {
            return sounding.reading.depthMetres();
        }
        if (ground.joinedUp().isPresent()) {
            return ground.joinedUp().get().atLatestLevel(sounding.visit, sounding.reading.depthMetres());
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
        if (to.space.isFreeForText(box)) {
            write(label, sounding, box, 0, 0);
            return;
        }
        boolean alone = figures.stream().noneMatch(other -> other.grown(1).overlaps(dotBox(x, y)));
        if (!doubted && !(sounding.today && alone)) {
            return;
        }
        boolean dotted = to.space.isFree(dotBox(x, y));
        if (dotted) {
            dot(sounding);
        }
        double right = box.width() / 2 + 2.5;
        double down = box.height() / 2 + 2.5;
        for (double further : FURTHER) {
            for (double[] side : Placer.AROUND) {
                double dx = side[0] * right * further;
                double dy = side[1] * down * further * (side[0] == 0 ? 1 : 1.6);
                LabelBox beside = new LabelBox(box.x() + dx, box.y() + dy, box.width(), box.height(), 0);
                if (to.space.isFreeForText(beside)) {
                    if (doubted || !dotted || further > 1) {
                        Geometry line = Symbols.line(0, 0, dx, dy);
                        leaders.add(new Leader(x, y, doubted, line));
                    }
                    write(label, sounding, beside, dx, dy);
                    return;
                }
            }
        }
    }

    private LabelBox dotBox(double xMetres, double yMetres) {
        return LabelBox.square(to.view.x(xMetres), to.view.y(yMetres), 4);
    }

    /** From a place to its figure. */
    private record Leader(double xMetres, double yMetres, boolean doubted, Geometry line) {}

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
        figures.add(box);
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
            to.fill(Role.READING_DOT, Layer.READINGS, frame, Symbols.disc(1.4));
        }
        to.space.takeForSign(Layer.READINGS, dotBox(x, y));
    }
}
