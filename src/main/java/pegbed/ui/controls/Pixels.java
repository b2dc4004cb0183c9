package pegbed.ui.controls;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.nio.IntBuffer;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;

/** Pictures made by Java's own painter, for the toolkit. */
public final class Pixels {
    private Pixels() {}

    /**
     * The same pixels for the toolkit, not copied: the picture belongs to the toolkit from then on.
     *
     * @param picture without transparency, one {@code int} a pixel
     */
    public static Image of(BufferedImage picture) {
        int[] pixels = ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] |= 0xff000000;
        }
        return new WritableImage(new PixelBuffer<>(
                picture.getWidth(), picture.getHeight(), IntBuffer.wrap(pixels), PixelFormat.getIntArgbPreInstance()));
    }
}
