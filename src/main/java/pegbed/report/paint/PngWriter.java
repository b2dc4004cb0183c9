package pegbed.report.paint;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import pegbed.model.Parallel;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Theme;

/** Writes a drawing as a PNG picture; the same drawing gives the same bytes with the same fonts. */
public final class PngWriter {
    private PngWriter() {}

    /**
     * The picture in memory, {@code pixelsPerPoint} pixels for each point of the drawing's view. Strips of it are
     * painted side by side; the pixels do not depend on how many.
     */
    public static BufferedImage image(Drawing drawing, Theme theme, double pixelsPerPoint) {
        int width = (int) Math.round(drawing.view().widthPoints() * pixelsPerPoint);
        int height = (int) Math.round(drawing.view().heightPoints() * pixelsPerPoint);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        int strips = Math.min(height, Runtime.getRuntime().availableProcessors());
        Parallel.each(strips, strip -> {
            int top = height * strip / strips;
            int bottom = height * (strip + 1) / strips;
            paint(drawing, theme, pixelsPerPoint, image.getSubimage(0, top, width, bottom - top), top);
        });
        return image;
    }

    /** Paints a strip of a picture that begins so many pixels from its top. */
    private static void paint(Drawing drawing, Theme theme, double pixelsPerPoint, BufferedImage strip, int top) {
        Graphics2D graphics = strip.createGraphics();
        try {
            graphics.clipRect(0, 0, strip.getWidth(), strip.getHeight());
            graphics.translate(0, -top);
            graphics.scale(pixelsPerPoint, pixelsPerPoint);
            GraphicsPainter.paint(drawing, theme, graphics);
        } finally {
            graphics.dispose();
        }
    }

    /** The PNG file's bytes. */
    public static byte[] write(Drawing drawing, Theme theme, double pixelsPerPoint) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            if (!ImageIO.write(image(drawing, theme, pixelsPerPoint), "png", bytes)) {
                throw new IllegalStateException("This Java can't write PNG.");
            }
        } catch (IOException e) {
            throw new UncheckedIOException("Writing to memory can't fail.", e);
        }
        return bytes.toByteArray();
    }
}
