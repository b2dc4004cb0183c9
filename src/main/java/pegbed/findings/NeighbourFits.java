package pegbed.findings;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Parallel;
import pegbed.model.Peg;
import pegbed.surface.BottomModel;
import pegbed.surface.FittedBottom;
import pegbed.surface.NeighbouringPegs;
import pegbed.surface.survey.Survey;

/** Other pegs of the same water, each fitted by itself. */
public final class NeighbourFits {
    /** So many readings of a visit to another peg count; of more, as many at even steps. */
    private static final int MAX_READINGS = 60;

    private NeighbourFits() {}

    /** What other pegs teach, each fitted by itself; one whose banks can't be used teaches nothing. */
    public static NeighbouringPegs of(List<Peg> pegs, Monitor monitor) {
        Monitor quiet = new Quiet(monitor);
        return NeighbouringPegs.of(Parallel.map(pegs, peg -> fitted(peg, quiet)).stream()
                .flatMap(Optional::stream)
                .toList());
    }

    /** Stops with another, and reports no progress: several pegs at once would report each their own. */
    private record Quiet(Monitor whole) implements Monitor {
        @Override
        public void progress(double share) {}

        @Override
        public boolean cancelled() {
            return whole.cancelled();
        }
    }

    private static Optional<FittedBottom> fitted(Peg peg, Monitor monitor) {
        if (peg.readings().size() < NeighbouringPegs.TEACHES_FROM) {
            return Optional.empty();
        }
        try {
            return Optional.of(BottomModel.fit(Survey.of(thinned(peg)), monitor));
        } catch (InputException noBanks) {
            return Optional.empty();
        }
    }

    private static Peg thinned(Peg peg) {
        return peg.withVisits(peg.visits().stream()
                .map(visit -> {
                    int count = visit.readings().size();
                    int kept = Math.min(count, MAX_READINGS);
                    return visit.withReadings(IntStream.range(0, kept)
                            .mapToObj(i -> visit.readings().get((int) ((long) i * count / kept)))
                            .toList());
                })
                .toList());
    }
}
