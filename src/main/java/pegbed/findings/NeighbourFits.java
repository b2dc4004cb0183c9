package pegbed.findings;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.surface.BottomModel;
import pegbed.surface.FittedBottom;
import pegbed.surface.NeighbouringPegs;
import pegbed.surface.prior.NeighbourInfluence;
import pegbed.surface.survey.Survey;

/** Other pegs of the same water: fitted to teach, and what is said of them. */
public final class NeighbourFits {
    /** So many readings of a visit to another peg count; of more, as many at even steps. */
    private static final int MOST_READINGS = 60;

    private NeighbourFits() {}

    /** What other pegs teach, each fitted by itself; one whose banks can't be used teaches nothing. */
    public static NeighbouringPegs of(List<Peg> pegs, Monitor monitor) {
        Monitor quiet = new Quiet(monitor);
        return NeighbouringPegs.of(pegs.parallelStream()
                .map(peg -> fitted(peg, quiet))
                .flatMap(Optional::stream)
                .toList());
    }

    /** Stops with another, and tells no progress: several pegs at once would tell each their own. */
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
                    int kept = Math.min(count, MOST_READINGS);
                    return visit.withReadings(IntStream.range(0, kept)
                            .mapToObj(i -> visit.readings().get((int) ((long) i * count / kept)))
                            .toList());
                })
                .toList());
    }

    /** What a map has from other pegs, one sentence; empty where it stands by itself. */
    public static Optional<String> sentence(PegMap map) {
        return sentence(map.bottom(), map.peg());
    }

    /** What the bottom of a peg has from other pegs, one sentence; empty where it stands by itself. */
    public static Optional<String> sentence(FittedBottom bottom, Peg peg) {
        return bottom.lesson().map(lesson -> sentence(lesson, peg));
    }

    private static String sentence(NeighbourInfluence lesson, Peg peg) {
        String others = lesson.pegs() + " other " + (lesson.pegs() == 1 ? "peg" : "pegs") + " of "
                + peg.name().water();
        return lesson.heeded()
                ? "Started from " + others + "."
                : "By its readings this peg is unlike the " + others + ", which count for little.";
    }
}
