package pegbed.ui;

import java.util.Map;
import pegbed.model.InputException;

/** Opens the window. */
public final class Window {
    private static final String NO_DISPLAY =
            "There is no display to open the window on; use a command instead, such as pegbed lines PEG or pegbed map"
                    + " PEG --out map.png.";

    private Window() {}

    /**
     * Opens the window and returns when it is closed.
     *
     * @param pictureIsThere is run when the first picture is
     * @param args the peg file to open, or none
     * @throws InputException if there is no display
     */
    public static void open(Runnable pictureIsThere, String... args) throws InputException {
        if (!hasDisplay(System.getProperty("os.name", ""), System.getenv(), System.getProperty("glass.platform", ""))) {
            throw new InputException(NO_DISPLAY);
        }
        // The map's letters and shapes come from Java's own graphics, which must not open the display a second time.
        System.setProperty("java.awt.headless", "true");
        try {
            PegbedApplication.open(pictureIsThere, args);
        } catch (UnsupportedOperationException e) {
            throw new InputException(NO_DISPLAY, e);
        }
    }

    static boolean hasDisplay(String system, Map<String, String> environment, String glass) {
        boolean unix = !system.startsWith("Windows") && !system.startsWith("Mac");
        return !unix
                || !glass.isEmpty()
                || !environment.getOrDefault("DISPLAY", "").isBlank();
    }
}
