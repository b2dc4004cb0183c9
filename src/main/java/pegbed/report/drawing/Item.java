package pegbed.report.drawing;

/** One thing to paint. */
public sealed interface Item permits Fill, Stroke, Text {
    /** What it means; the theme gives it a colour or a pen by that. */
    Role role();

    /** What it is switched on and off with. */
    Layer layer();

    /** What its coordinates are. */
    Frame frame();
}
