package pegbed.report.map;

import java.util.ArrayList;
import java.util.List;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Visit;
import pegbed.wording.Quantities;

/** What stands over a picture of a peg. */
public final class Heading {
    private Heading() {}

    /** The peg's name, fit for one line. */
    public static String title(Peg peg) {
        return SingleLine.of(peg.name().title());
    }

    /** Venue, date, level and number of readings, such as {@code Mallowfield Pools · 2 May 2026 · …}. */
    public static String subtitle(Peg peg) {
        PegName name = peg.name();
        Visit today = peg.today();
        List<String> parts = new ArrayList<>();
        if (!name.venue().isBlank() && !name.water().isBlank()) {
            parts.add(SingleLine.of(name.venue()));
        }
        parts.add(today.start().map(Quantities::longDay).orElse("no date"));
        parts.add(
                today.boardToWaterMetres().isPresent()
                        ? "board to water "
                                + Quantities.of(peg)
                                        .depth(today.boardToWaterMetres().getAsDouble())
                        : "level not measured");
        int readings = peg.readings().size();
        String count = readings == 0 ? "no readings yet" : readings == 1 ? "1 reading" : readings + " readings";
        long visits = peg.visits().stream()
                .filter(visit -> !visit.readings().isEmpty())
                .count();
        parts.add(visits > 1 ? count + " of " + visits + " visits" : count);
        return String.join(" · ", parts);
    }
}
