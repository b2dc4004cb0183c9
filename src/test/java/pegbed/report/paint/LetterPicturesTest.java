package pegbed.report.paint;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Ink;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.Themes;

class LetterPicturesTest {
    private static final String WORDS = "4'6 post";
    private static final Lettering LETTERING = Lettering.bold(11);
    private static final Theme THEME = Themes.LIGHT;

    /** Places at whole sixteenths of a pixel, where nothing is rounded. */
    @ParameterizedTest
    @CsvSource({"1, 20.25, 30.5, 0", "1.5, 20, 30.25, 35", "2, 30.03125, 40, -60"})
    void lettersLookAsIfTheirOutlinesWereDrawn(double scale, double x, double y, double turn) {
        Ink ink = THEME.ink(Role.READING_FIGURE);
        LetterOutlines.Line line = LetterOutlines.line(WORDS, LETTERING);
        AffineTransform at = AffineTransform.getTranslateInstance(x, y);
        at.rotate(Math.toRadians(turn));
        Text text = new Text(
                Role.READING_FIGURE, Layer.READINGS, Frame.at(0, 0), 0, 0, Text.Align.START, turn, LETTERING, WORDS);

        int[] drawn = painted(scale, graphics -> {
            Shape letters = at.createTransformedShape(line.outline());
            ink.halo().ifPresent(halo -> {
                graphics.setPaint(GraphicsPainter.colour(halo.colour()));
                graphics.setStroke(
                        new BasicStroke((float) halo.widthPoints(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL));
                graphics.draw(letters);
            });
            graphics.setPaint(GraphicsPainter.colour(ink.colour()));
            graphics.fill(letters);
        });
        int[] kept = painted(scale, graphics -> LetterPictures.put(graphics, text, ink, line, at));
        int[] again = painted(scale, graphics -> LetterPictures.put(graphics, text, ink, line, at));

        assertArrayEquals(kept, again);
        int inked = 0;
        for (int i = 0; i < drawn.length; i++) {
            inked += drawn[i] != Color.GRAY.getRGB() ? 1 : 0;
            for (int shift = 0; shift <= 16; shift += 8) {
                int off = Math.abs((drawn[i] >> shift & 0xff) - (kept[i] >> shift & 0xff));
                assertTrue(off <= 3, "pixel " + i + " is off by " + off);
            }
        }
        assertTrue(inked > 200, inked + " pixels");
    }

    private static int[] painted(double scale, Consumer<Graphics2D> work) {
        BufferedImage image = new BufferedImage(220, 200, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setPaint(Color.GRAY);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.scale(scale, scale);
        work.accept(graphics);
        graphics.dispose();
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }
}
