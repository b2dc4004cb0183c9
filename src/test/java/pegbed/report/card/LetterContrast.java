package pegbed.report.card;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.View;
import pegbed.report.paint.LetterOutlines;

/**
 * How well letters stand out on a painted map, from its pixels: relative luminance and contrast as WCAG 2.2 defines
 * them.
 *
 * <p>The colour of the letters is the median of the pixels wholly inside them. The ground is every pixel from
 * {@value #NEAR_POINTS} to {@value #FAR_POINTS} point outside their outlines, so that a halo counts as far as it is
 * painted and as much as it covers, and lines and tints beside a thin halo count too. The contrast of a label is what
 * nine tenths of its ground reach.
 */
final class LetterContrast {
    private static final double NEAR_POINTS = 0.3;
    private static final double FAR_POINTS = 1.0;
    private static final double SHARE_BELOW = 0.1;

    private LetterContrast() {}

    /** The contrast of a text on a picture of its drawing, 1 to 21; NaN where it is not on the picture. */
    static double of(Text text, View view, BufferedImage picture, double pixelsPerPoint) {
        Shape letters = outline(text, view, pixelsPerPoint);
        Rectangle2D bounds = letters.getBounds2D();
        int left = (int) Math.floor(bounds.getMinX() - 2 * pixelsPerPoint);
        int top = (int) Math.floor(bounds.getMinY() - 2 * pixelsPerPoint);
        int width = (int) Math.ceil(bounds.getMaxX() + 2 * pixelsPerPoint) - left;
        int height = (int) Math.ceil(bounds.getMaxY() + 2 * pixelsPerPoint) - top;
        int[] inside = coverage(letters, 0, left, top, width, height);
        int[] near = coverage(letters, 2 * NEAR_POINTS * pixelsPerPoint, left, top, width, height);
        int[] far = coverage(letters, 2 * FAR_POINTS * pixelsPerPoint, left, top, width, height);
        List<Double> letter = new ArrayList<>();
        List<Double> ground = new ArrayList<>();
        for (int i = 0; i < inside.length; i++) {
            int x = left + i % width;
            int y = top + i / width;
            if (x < 0 || y < 0 || x >= picture.getWidth() || y >= picture.getHeight()) {
                return Double.NaN;
            }
            if (inside[i] > 250) {
                letter.add(luminance(picture.getRGB(x, y)));
            } else if (near[i] == 0 && far[i] > 250) {
                ground.add(luminance(picture.getRGB(x, y)));
            }
        }
        if (letter.isEmpty() || ground.isEmpty()) {
            return Double.NaN;
        }
        Collections.sort(letter);
        double ink = letter.get(letter.size() / 2);
        List<Double> contrasts = new ArrayList<>();
        for (double luminance : ground) {
            contrasts.add((Math.max(ink, luminance) + 0.05) / (Math.min(ink, luminance) + 0.05));
        }
        Collections.sort(contrasts);
        return contrasts.get((int) (SHARE_BELOW * contrasts.size()));
    }

    /** The letters in pixels. */
    private static Shape outline(Text text, View view, double pixelsPerPoint) {
        LetterOutlines.Line line = LetterOutlines.line(text.words(), text.lettering());
        double back = switch (text.align()) {
                    case START -> 0;
                    case MIDDLE -> 0.5;
                    case END -> 1;
                }
                * line.advancePoints();
        AffineTransform at = AffineTransform.getScaleInstance(pixelsPerPoint, pixelsPerPoint);
        if (text.frame() instanceof Frame.At place) {
            at.translate(view.x(place.xMetres()), view.y(place.yMetres()));
        }
        at.translate(text.x(), text.y());
        at.rotate(Math.toRadians(text.turnDegrees()));
        at.translate(-back, 0);
        return at.createTransformedShape(line.outline());
    }

    /** How much of each pixel letters cover that are thickened by a pen, 0 to 255. */
    private static int[] coverage(Shape letters, double penPixels, int left, int top, int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.translate(-left, -top);
        graphics.setPaint(Color.WHITE);
        graphics.fill(letters);
        if (penPixels > 0) {
            graphics.setStroke(new BasicStroke((float) penPixels, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            graphics.draw(letters);
        }
        graphics.dispose();
        int[] pixels = new int[width * height];
        image.getRaster().getSamples(0, 0, width, height, 0, pixels);
        return pixels;
    }

    /** WCAG 2.2, definition of relative luminance. */
    static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 255) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double value = channel / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
