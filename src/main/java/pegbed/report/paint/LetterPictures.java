package pegbed.report.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import pegbed.report.drawing.Ink;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Pen;
import pegbed.report.drawing.Text;

/**
 * Letters with their halos as little pictures that are kept: a map writes the same words at the same places again and
 * again, and to draw their outlines is half of the work of painting it. Thread-safe.
 */
final class LetterPictures {
    /** Places are taken to this share of a pixel, so that equal words are equal pictures. */
    private static final double STEP = 1.0 / 16;

    /** Room about letters for smooth edges, pixels. */
    private static final int EDGE = 2;

    /** So many pixels are kept, 16 MB. */
    private static final long MAX_PIXELS = 4_000_000;

    private static final Map<Letters, Picture> PICTURES = new ConcurrentHashMap<>();
    private static final AtomicLong PIXELS = new AtomicLong();

    private LetterPictures() {}

    /** All that a picture depends on: words and how they lie in a pixel grid. */
    private record Letters(
            String words,
            Lettering lettering,
            Ink ink,
            double pixelsPerPoint,
            double m00,
            double m10,
            double m01,
            double m11,
            double x,
            double y) {}

    /** An image that begins so many pixels from the pixel of the text's origin. */
    private record Picture(BufferedImage image, int left, int top) {}

    /**
     * Puts a text on a picture.
     *
     * @param graphics of an image; scales and moves points to pixels, no more
     * @param at from the text's own line to points
     */
    static void put(Graphics2D graphics, Text text, Ink ink, LetterOutlines.Line line, AffineTransform at) {
        AffineTransform toPixels = graphics.getTransform();
        AffineTransform whole = new AffineTransform(toPixels);
        whole.concatenate(at);
        double x = Math.rint(whole.getTranslateX() / STEP) * STEP;
        double y = Math.rint(whole.getTranslateY() / STEP) * STEP;
        int column = (int) Math.floor(x);
        int row = (int) Math.floor(y);
        Letters letters = new Letters(
                text.words(),
                text.lettering(),
                ink,
                toPixels.getScaleX(),
                whole.getScaleX(),
                whole.getShearY(),
                whole.getShearX(),
                whole.getScaleY(),
                x - column,
                y - row);
        Picture picture = PICTURES.get(letters);
        if (picture == null) {
            picture = drawn(letters, line.outline());
            keep(letters, picture);
        }
        graphics.setTransform(new AffineTransform());
        graphics.drawImage(picture.image, column + picture.left, row + picture.top, null);
        graphics.setTransform(toPixels);
    }

    private static void keep(Letters letters, Picture picture) {
        long pixels = (long) picture.image.getWidth() * picture.image.getHeight();
        if (PIXELS.addAndGet(pixels) > MAX_PIXELS) {
            PICTURES.clear();
            PIXELS.set(pixels);
        }
        PICTURES.put(letters, picture);
    }

    private static Picture drawn(Letters letters, Shape outline) {
        // In points, as the halo's pen is.
        double scale = letters.pixelsPerPoint;
        Shape inPoints = new AffineTransform(
                        letters.m00 / scale,
                        letters.m10 / scale,
                        letters.m01 / scale,
                        letters.m11 / scale,
                        letters.x / scale,
                        letters.y / scale)
                .createTransformedShape(outline);
        double halo = letters.ink.halo().map(Pen::widthPoints).orElse(0.0);
        Rectangle2D box = inPoints.getBounds2D();
        int left = (int) Math.floor(scale * (box.getMinX() - halo)) - EDGE;
        int top = (int) Math.floor(scale * (box.getMinY() - halo)) - EDGE;
        int right = (int) Math.ceil(scale * (box.getMaxX() + halo)) + EDGE;
        int bottom = (int) Math.ceil(scale * (box.getMaxY() + halo)) + EDGE;
        BufferedImage image = new BufferedImage(right - left, bottom - top, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            graphics.translate(-left, -top);
            graphics.scale(scale, scale);
            letters.ink.halo().ifPresent(pen -> {
                graphics.setPaint(GraphicsPainter.colour(pen.colour()));
                graphics.setStroke(
                        new BasicStroke((float) pen.widthPoints(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL));
                graphics.draw(inPoints);
            });
            graphics.setPaint(GraphicsPainter.colour(letters.ink.colour()));
            graphics.fill(inPoints);
        } finally {
            graphics.dispose();
        }
        return new Picture(image, left, top);
    }
}
