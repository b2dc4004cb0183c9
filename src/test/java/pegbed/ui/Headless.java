package pegbed.ui;

/** The toolkit without a display. */
final class Headless {
    private Headless() {}

    /** To be called before anything of the toolkit is. */
    static void set() {
        System.setProperty("glass.platform", "Monocle");
        System.setProperty("monocle.platform", "Headless");
        System.setProperty("headless.geometry", "1920x1200-32");
        System.setProperty("prism.order", "sw");
        System.setProperty("java.awt.headless", "true");
    }
}
