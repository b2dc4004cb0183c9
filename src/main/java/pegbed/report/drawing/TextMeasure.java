package pegbed.report.drawing;

/** How wide texts come out, so that labels can be kept apart. */
@FunctionalInterface
public interface TextMeasure {
    /** Width in points. */
    double widthPoints(String words, Lettering lettering);
}
