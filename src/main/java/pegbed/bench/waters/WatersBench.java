package pegbed.bench.waters;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import pegbed.bench.practice.Fan;
import pegbed.bench.practice.GuidedRun;
import pegbed.bench.practice.PracticePeg;
import pegbed.bench.practice.Tally;
import pegbed.bench.quality.ModelBottom;
import pegbed.bench.quality.Score;
import pegbed.findings.PegMap;
import pegbed.geometry.PegWater;
import pegbed.guidance.GuidanceWeights;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.surface.BottomModel;
import pegbed.surface.FittedBottom;
import pegbed.surface.NeighbouringPegs;
import pegbed.surface.survey.Survey;

/** What mapped pegs teach a new one, on invented waters: of the same water, and of one that differs. */
public final class WatersBench {
    /** How many other pegs are mapped. */
    private static final int MAPPED = 4;

    private static final int LEAST_READINGS = 20;
    private static final int MOST_READINGS = 30;

    private final long first;
    private final int waters;
    private final boolean guided;

    /** What is compared with the new peg by itself. */
    private enum Others {
        NONE("none"),
        ONE("1 of this water"),
        TWO("2 of this water"),
        ALL("4 of this water"),
        DIFFERENT("4 of a water that differs"),
        MIXED("2 of this water, 2 of one that differs");

        private final String words;

        Others(String words) {
            this.words = words;
        }
    }

    private WatersBench(long first, int waters, boolean guided) {
        this.first = first;
        this.waters = waters;
        this.guided = guided;
    }

    /**
     * The table in Markdown.
     *
     * @param first number of the first water
     * @param waters how many waters, each of them a sample
     * @param guided whether the new peg has ten readings where the program says, by itself, instead of fans
     */
    public static String table(long first, int waters, boolean guided) {
        return new WatersBench(first, waters, guided).table();
    }

    /** One new peg's figures, by the others that it starts from. */
    private record Figures(List<Score> scores, List<Double> alike) {}

    private String table() {
        StringBuilder out =
                new StringBuilder("| new peg | other pegs | RMSE mm | beside none | slope RMSE | 90 % coverage"
                        + " | deepest regret mm | odds that it is like them |\n|---|---|---|---|---|---|---|---|\n");
        for (int readings : guided ? new int[] {10} : new int[] {5, 10, 20}) {
            List<Figures> all = IntStream.range(0, waters)
                    .parallel()
                    .mapToObj(i -> figures(first + i, readings))
                    .toList();
            for (Others others : Others.values()) {
                int at = others.ordinal();
                out.append(String.format(
                        Locale.ROOT,
                        "| %d %s | %s | %s | %s | %.3f | %.0f %% | %.0f | %s |%n",
                        readings,
                        guided ? "guided" : "readings",
                        others.words,
                        millimetres(all, at),
                        at == 0 ? "" : change(all, at),
                        mean(all, figures -> figures.scores().get(at).slopeRmse()),
                        100 * mean(all, figures -> figures.scores().get(at).coverage90()),
                        1000 * mean(all, figures -> figures.scores().get(at).deepestRegretMetres()),
                        at == 0
                                ? ""
                                : String.format(
                                        Locale.ROOT,
                                        "%.2f",
                                        mean(all, f -> f.alike().get(at)))));
            }
        }
        return out.toString();
    }

    private static double mean(List<Figures> all, ToDoubleFunction<Figures> figure) {
        return all.stream().mapToDouble(figure).average().orElseThrow();
    }

    private static String millimetres(List<Figures> all, int others) {
        Tally tally = new Tally();
        for (Figures each : all) {
            tally.group();
            tally.add(1000 * each.scores().get(others).rmseMetres());
        }
        return String.format(Locale.ROOT, "%.0f ± %.0f", tally.mean(), tally.error());
    }

    /**
     * By how much the mean RMSE differs, a ratio of two sums over waters (Cochran 1977, Sampling Techniques, ch. 6).
     */
    private static String change(List<Figures> all, int others) {
        double with = 0;
        double without = 0;
        for (Figures each : all) {
            with += each.scores().get(others).rmseMetres();
            without += each.scores().get(0).rmseMetres();
        }
        double ratio = with / without;
        double squares = 0;
        for (Figures each : all) {
            double off = each.scores().get(others).rmseMetres()
                    - ratio * each.scores().get(0).rmseMetres();
            squares += off * off;
        }
        int n = all.size();
        double error = Math.sqrt(squares * n / (n - 1)) / without;
        return String.format(Locale.ROOT, "%+.1f ± %.1f %%", 100 * (ratio - 1), 100 * error);
    }

    private Figures figures(long number, int readings) {
        try {
            List<PracticePeg> pegs = new SimulatedWater(number).pegs(1 + MAPPED);
            List<FittedBottom> same = mapped(pegs, number);
            List<FittedBottom> different = mapped(new SimulatedWater(~number).pegs(1 + MAPPED), ~number);
            PracticePeg fresh = pegs.get(0);
            long errors = number * 31 + readings;
            Peg peg = guided
                    ? GuidedRun.of(fresh, errors, readings, GuidanceWeights.USUAL)
                            .pegs()
                            .get(readings)
                    : SimulatedWater.plumbed(fresh, fan(fresh, readings), errors);
            List<Score> scores = new ArrayList<>();
            List<Double> alike = new ArrayList<>();
            for (Others others : Others.values()) {
                NeighbouringPegs neighbours = NeighbouringPegs.of(
                        switch (others) {
                            case NONE -> List.of();
                            case ONE -> same.subList(0, 1);
                            case TWO -> same.subList(0, 2);
                            case ALL -> same;
                            case DIFFERENT -> different;
                            case MIXED -> List.of(same.get(0), same.get(1), different.get(0), different.get(1));
                        });
                PegMap map = PegMap.of(peg, neighbours, Monitor.NONE);
                scores.add(Score.of(new ModelBottom(map), fresh));
                alike.add(map.bottom().lesson().map(lesson -> lesson.alike()).orElse(0.0));
            }
            return new Figures(scores, alike);
        } catch (InputException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<FittedBottom> mapped(List<PracticePeg> pegs, long number) throws InputException {
        Random random = new Random(number);
        List<FittedBottom> mapped = new ArrayList<>();
        for (PracticePeg each : pegs.subList(1, pegs.size())) {
            int readings = LEAST_READINGS + random.nextInt(MOST_READINGS - LEAST_READINGS + 1);
            Peg peg = SimulatedWater.plumbed(each, fan(each, readings), random.nextLong());
            mapped.add(BottomModel.fit(Survey.of(peg), Monitor.NONE));
        }
        return mapped;
    }

    private static List<Place> fan(PracticePeg peg, int readings) throws InputException {
        return Fan.of(PegWater.of(peg.empty()), readings, true);
    }
}
