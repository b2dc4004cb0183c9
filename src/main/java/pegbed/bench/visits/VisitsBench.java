package pegbed.bench.visits;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import pegbed.bench.practice.PracticePeg;
import pegbed.bench.practice.Tally;
import pegbed.model.InputException;

/** What a second visit knows: level, map and changes, on practice pegs with simulated second visits; and why. */
public final class VisitsBench {
    /** How much higher the water stands at the second visit, metres. */
    static final double HIGHER_METRES = 0.08;

    private VisitsBench() {}

    /** The tables in Markdown. */
    public static String table(Path practice) throws IOException, InputException {
        List<PracticePeg> pegs = PracticePeg.all(practice);
        StringBuilder out = new StringBuilder();
        FirstVisits visits = FirstVisits.of(practice, pegs);
        out.append(LevelBench.table(visits, pegs)).append('\n');
        out.append(ChangeBench.table(visits, pegs)).append('\n');
        out.append(DoubtBench.table(visits, pegs));
        return out.toString();
    }

    /** A figure in millimetres with its standard error. */
    static String millimetres(Tally tally) {
        return String.format(Locale.ROOT, "%.0f ± %.0f", 1000 * tally.root(), 1000 * tally.rootError());
    }

    /** A share in per cent with its standard error. */
    static String share(Tally tally) {
        return String.format(Locale.ROOT, "%.1f ± %.1f %%", 100 * tally.mean(), 100 * tally.error());
    }
}
