package pegbed.wording;

import java.util.List;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.notation.ShortForm;

/** What is about to be taken in from a file, so that a person can tell whether it was understood. */
public final class ImportWords {
    /** So many readings are shown; the rest is counted. */
    private static final int SHOWN = 3;

    private ImportWords() {}

    /** A line each: how many, how the columns were understood, and the first readings as they would be typed. */
    public static List<String> lines(
            Peg peg, List<Reading> readings, List<String> recognised, List<String> ignored, int passedOver) {
        List<String> lines = new java.util.ArrayList<>();
        lines.add(readings.size() + (readings.size() == 1 ? " reading, " : " readings, ") + "understood so:");
        recognised.forEach(words -> lines.add("  " + words));
        if (!ignored.isEmpty()) {
            lines.add("Not used: " + String.join(", ", ignored) + ".");
        }
        if (passedOver > 0) {
            lines.add(passedOver + (passedOver == 1 ? " thing is" : " things are") + " no point with a depth.");
        }
        ShortForm form = new ShortForm(peg.units(), peg.pole(), '.');
        lines.add("The first as you would type " + (readings.size() == 1 ? "it:" : "them:"));
        readings.stream()
                .limit(SHOWN)
                .forEach(reading ->
                        lines.add("  " + form.printDistance(reading.place().distanceMetres()) + " "
                                + form.printDirection(reading.place().angleDegrees()) + " "
                                + form.printDepth(reading.depthMetres())));
        return lines;
    }
}
