package pegbed.report.paint;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Theme;

/** Writes a drawing as a PNG picture; the same drawing gives the same bytes with the same fonts. */
public final class PngWriter {
    private PngWriter() {}

    /** The picture in memory, {@code pixelsPerPoint} pixels for each point of the drawing's view. */
    public static BufferedImage image(Drawing drawing, Theme theme, double pixelsPerPoint) {
        int width = (int) Math.round(drawing.view().widthPoints() * pixelsPerPoint);
        int height = (int) Math.round(drawing.view().heightPoints() * pixelsPerPoint);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.scale(pixelsPerPoint, pixelsPerPoint);
            GraphicsPainter.paint(drawing, theme, graphics);
        } finally {
            graphics.dispose();
        }
        return image;
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
