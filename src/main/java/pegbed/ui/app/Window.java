package pegbed.ui.app;

import java.util.Map;
import pegbed.model.InputException;
import pegbed.storage.disk.PegFile;

/** Opens the window. */
public final class Window {
    private static final String NO_DISPLAY =
            "There is no display to open the window on; use a command instead, such as pegbed lines PEG or pegbed map"
                    + " PEG --out map.png.";

    /** The toolkit's property for the pipelines that it tries, in order. */
    private static final String PIPELINES = "prism.order";

    private Window() {}

    /** Whether the window is meant: there is no command, or a peg file in its place, as file managers give it. */
    public static boolean isMeant(String... args) {
        return args.length == 0 || (args.length == 1 && args[0].endsWith(PegFile.ENDING));
    }

    /**
     * Opens the window and returns when it is closed.
     *
     * @param pictureIsThere is run when the first picture is
     * @param files the peg file to open, or none
     * @throws InputException if there is no display
     */
    public static void open(Runnable pictureIsThere, String... files) throws InputException {
        if (!hasDisplay(System.getProperty("os.name", ""), System.getenv(), System.getProperty("glass.platform", ""))) {
            throw new InputException(NO_DISPLAY);
        }
        // The map's letters and shapes come from Java's own graphics, which must not open the display a second time.
        System.setProperty("java.awt.headless", "true");
        paintWithoutGraphicsDriver();
        try {
            PegbedApplication.open(pictureIsThere, files);
        } catch (UnsupportedOperationException e) {
            throw new InputException(NO_DISPLAY, e);
        }
    }

    /**
     * The toolkit paints in memory: what it shows is a finished picture, and loading a driver for OpenGL first would
     * take longer than all the painting of a start. Who names another order of pipelines gets that.
     */
    private static void paintWithoutGraphicsDriver() {
        if (System.getProperty(PIPELINES) == null) {
            System.setProperty(PIPELINES, "sw");
        }
    }

    static boolean hasDisplay(String system, Map<String, String> environment, String glass) {
        boolean unix = !system.startsWith("Windows") && !system.startsWith("Mac");
        return !unix
                || !glass.isEmpty()
                || !environment.getOrDefault("DISPLAY", "").isBlank();
    }
}
