package pegbed.launcher;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** Draws the program's icon: contours of a peg, and a plummet on its line. */
public final class Icon {
    /** Width and height of the drawing. */
    public static final int SIZE = 256;

    private static final Color[] DEPTHS = {
        new Color(0xCFE3EE), new Color(0x94BFD6), new Color(0x5795B8), new Color(0x2C6590), new Color(0x173F63)
    };

    private Icon() {}

    /**
     * Writes the icon.
     *
     * @param args the PNG file to write
     */
    public static void main(String[] args) throws IOException {
        ImageIO.write(draw(), "png", Path.of(args[0]).toFile());
    }

    static BufferedImage draw() {
        BufferedImage image = new BufferedImage(SIZE, SIZE, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        draw(g);
        g.dispose();
        return image;
    }

    /** Draws the icon, {@link #SIZE} wide and high. */
    public static void draw(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Area plate = new Area(new RoundRectangle2D.Double(8, 8, SIZE - 16, SIZE - 16, 56, 56));
        g.setColor(new Color(0x6B7F4A));
        g.fill(plate);
        for (int i = 0; i < DEPTHS.length; i++) {
            double rx = 116 - 22 * i;
            double ry = 84 - 15 * i;
            Area band = new Area(new Ellipse2D.Double(128 - rx + 5 * i, 142 - ry + 4 * i, 2 * rx, 2 * ry));
            band.intersect(plate);
            g.setColor(DEPTHS[i]);
            g.fill(band);
        }
        g.setColor(Color.WHITE);
        g.setStroke(new BasicStroke(6, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(new Line2D.Double(148, 20, 148, 134));
        g.setColor(new Color(0xE0522F));
        g.fill(new Ellipse2D.Double(132, 128, 32, 44));
        g.setColor(Color.WHITE);
        g.setStroke(new BasicStroke(4));
        g.draw(new Ellipse2D.Double(132, 128, 32, 44));
    }
}
