package pegbed.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import pegbed.model.InputException;

/** What a second visit knows: level, map and changes, on practice pegs with simulated second visits. */
public final class VisitsBench {
    /** Tables of the first visit's readings. */
    static final List<String> TABLES = List.of("fan15.csv", "stagger20.csv", "fan30.csv");

    /** How much higher the water stands at the second visit, metres. */
    static final double HIGHER_METRES = 0.08;

    private VisitsBench() {}

    /** The tables in Markdown. */
    public static String table(Path practice) throws IOException, InputException {
        List<PracticePeg> pegs = PracticePeg.all(practice);
        StringBuilder out = new StringBuilder();
        out.append(LevelBench.table(practice, pegs)).append('\n');
        out.append(ChangeBench.table(practice, pegs));
        return out.toString();
    }

    /** A figure in millimetres with its standard error. */
    static String millimetres(Tally tally) {
        return String.format(Locale.ROOT, "%.0f ± %.0f", 1000 * tally.root(), 1000 * tally.rootError());
    }
}
