package pegbed.ui.app;

/** The toolkit without a display. */
final class Headless {
    private Headless() {}

    /** To be called before anything of the toolkit is. With {@code -Dpegbed.real=true} the real display is used. */
    static void set() {
        System.setProperty("java.awt.headless", "true");
        if (Boolean.getBoolean("pegbed.real")) {
            return;
        }
        System.setProperty("glass.platform", "Monocle");
        System.setProperty("monocle.platform", "Headless");
        System.setProperty("headless.geometry", "2560x1440-32");
        System.setProperty("prism.order", "sw");
    }
}
