package pegbed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The picture of the bottom, as options ask for it. */
class MapCommandTest {
    private static final Path PEG = Path.of("sample-pegs/hobbrel-pond-3.peg.json");
    private static final String JOINED_UP = "Joined up: straight between readings, no model";

    @TempDir
    private Path folder;

    private String svg(Object... options) throws IOException {
        Path file = folder.resolve("map.svg");
        Object[] words = new Object[options.length + 4];
        words[0] = "map";
        words[1] = PEG;
        words[2] = "--out";
        words[3] = file;
        System.arraycopy(options, 0, words, 4, options.length);
        Ran ran = Ran.pegbed(words);
        assertEquals(0, ran.status(), ran.err());
        return Files.readString(file);
    }

    @Test
    void whatIsJoinedUpSaysSoAndNothingElseDoes() throws IOException {
        String joined = svg("--joined-up");
        assertTrue(joined.contains(JOINED_UP));
        assertFalse(joined.contains(">deepest "));
        String model = svg();
        assertFalse(model.contains("Joined up"));
        assertTrue(model.contains(">deepest "));
    }

    @Test
    void withoutASizeThePictureIsAsHighAsTheWaterNeeds() throws IOException {
        Path file = folder.resolve("map.png");
        assertEquals(0, Ran.pegbed("map", PEG, "--out", file).status());
        BufferedImage picture = ImageIO.read(file.toFile());
        assertEquals(1200, picture.getWidth());
        assertTrue(picture.getHeight() > 700 && picture.getHeight() < 1000, "" + picture.getHeight());
    }

    @Test
    void lettersGrowWithThePictureUnlessAScaleIsGiven() throws IOException {
        Path file = folder.resolve("map.png");
        assertEquals(
                0, Ran.pegbed("map", PEG, "--out", file, "--size", "2400x1800").status());
        BufferedImage grown = ImageIO.read(file.toFile());
        assertEquals(
                0,
                Ran.pegbed("map", PEG, "--out", file, "--size", "2400x1800", "--scale", "1")
                        .status());
        BufferedImage small = ImageIO.read(file.toFile());
        assertTrue(titleHeight(grown) > 1.8 * titleHeight(small), titleHeight(grown) + ", " + titleHeight(small));
    }

    /** Rows of pixels from the first dark one to the last above the frame's place in the larger picture. */
    private static int titleHeight(BufferedImage picture) {
        int first = -1;
        for (int y = 0; y < 200; y++) {
            boolean dark = false;
            for (int x = 0; x < 600; x++) {
                dark |= (picture.getRGB(x, y) & 0xff) < 100;
            }
            if (dark && first < 0) {
                first = y;
            } else if (!dark && first >= 0) {
                return y - first;
            }
        }
        return 0;
    }

    @Test
    void anUnknownLookIsRefusedWithTheLooksThereAre() {
        Ran ran = Ran.pegbed("map", PEG, "--out", folder.resolve("m.png"), "--look", "sepia");
        assertEquals(2, ran.status());
        assertTrue(ran.err().contains("'sepia' is not one of light, dark, contrast or grey."), ran.err());
    }
}
