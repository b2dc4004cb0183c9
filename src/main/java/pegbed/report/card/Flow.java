package pegbed.report.card;

import java.util.ArrayList;
import java.util.List;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Item;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.TextMeasure;
import pegbed.report.map.SingleLine;

/** Text running down a sheet, broken where a line is full. Positions in points, y down. */
final class Flow {
    private static final int LONGEST_SIGNS = 600;
    private static final double LEADING = 1.24;

    /** Letters smaller than this can't be read at arm's length (our choice). */
    private static final double MIN_LETTERS_POINTS = 5.5;

    /** The largest share of a line that the words at its right edge may take (our choice). */
    private static final double WIDEST_AT_RIGHT = 0.6;

    private final TextMeasure measure;
    private final double scale;
    private final List<Item> items = new ArrayList<>();
    private double y;

    /** @param scale by which all sizes are multiplied */
    Flow(TextMeasure measure, double scale, double top) {
        this.measure = measure;
        this.scale = scale;
        this.y = top;
    }

    List<Item> items() {
        return items;
    }

    /** Where the next line begins. */
    double y() {
        return y;
    }

    void skip(double points) {
        y += points * scale;
    }

    void add(Item item) {
        items.add(item);
    }

    /** Writes words between two edges, in as many lines as they need. */
    void paragraph(Role role, Lettering wanted, double left, double right, String words) {
        Lettering lettering = scaled(wanted);
        for (String line : lines(SingleLine.of(words, LONGEST_SIGNS), lettering, right - left)) {
            y += lettering.sizePoints() * LEADING;
            text(role, lettering, left, baseline(lettering), Text.Align.START, line);
        }
    }

    /** Writes a heading with something short at the right edge of its first line, or below it where it is long. */
    void headed(Role role, Lettering wanted, double left, double right, String words, String atRight) {
        Lettering lettering = scaled(wanted);
        double rightWidth = measure.widthPoints(atRight, lettering);
        if (rightWidth > WIDEST_AT_RIGHT * (right - left)) {
            paragraph(role, wanted, left, right, words);
            paragraph(role, wanted, left, right, atRight);
            return;
        }
        List<String> lines = lines(SingleLine.of(words, LONGEST_SIGNS), lettering, right - left - rightWidth - 8);
        for (int i = 0; i < lines.size(); i++) {
            y += lettering.sizePoints() * LEADING;
            text(role, lettering, left, baseline(lettering), Text.Align.START, lines.get(i));
            if (i == 0) {
                text(role, lettering, right, baseline(lettering), Text.Align.END, atRight);
            }
        }
    }

    private double baseline(Lettering lettering) {
        return y - lettering.sizePoints() * (LEADING - 1);
    }

    /** A black square with a number, as on the map, beside the next line of this size. */
    void badge(double left, double sizePoints, String number) {
        double side = 17 * scale;
        double top = y + (sizePoints * LEADING * scale - side) / 2 + 1;
        var square = new org.locationtech.jts.geom.Envelope(left, left + side, top, top + side);
        items.add(new Fill(
                Role.LINE_BADGE, Layer.FURNITURE, Frame.SHEET, pegbed.geometry.Shapes.FACTORY.toGeometry(square)));
        Lettering bold = Lettering.bold(13 * scale);
        double base = top + side / 2 + bold.sizePoints() * Lettering.CAP_HEIGHT / 2;
        text(Role.LINE_NUMBER, bold, left + side / 2, base, Text.Align.MIDDLE, number);
    }

    private Lettering scaled(Lettering lettering) {
        double points = Math.max(MIN_LETTERS_POINTS, lettering.sizePoints() * scale);
        return new Lettering(points, lettering.bold(), lettering.italic());
    }

    private void text(Role role, Lettering lettering, double x, double base, Text.Align align, String words) {
        Layer layer = role == Role.CAUTION ? Layer.CAUTION : Layer.FURNITURE;
        items.add(new Text(role, layer, Frame.SHEET, x, base, align, 0, lettering, words));
    }

    /** Breaks at blanks; a word that is too long for a line by itself is broken anywhere. */
    private List<String> lines(String words, Lettering lettering, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (measure.widthPoints(longer, lettering) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (measure.widthPoints(line, lettering) > width && line.codePointCount(0, line.length()) > 1) {
                int fits = fitting(line, lettering, width);
                lines.add(line.substring(0, fits));
                line = line.substring(fits);
            }
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    private int fitting(String word, Lettering lettering, double width) {
        int end = word.offsetByCodePoints(0, 1);
        while (end < word.length()
                && measure.widthPoints(word.substring(0, word.offsetByCodePoints(end, 1)), lettering) <= width) {
            end = word.offsetByCodePoints(end, 1);
        }
        return end;
    }
}
