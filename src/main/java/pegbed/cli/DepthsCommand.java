package pegbed.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import pegbed.cli.output.Output;
import pegbed.cli.output.Progress;
import pegbed.geometry.PegWater;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.storage.table.PointsTable;
import pegbed.surface.BottomModel;
import pegbed.surface.FittedBottom;
import pegbed.surface.posterior.Disc;
import pegbed.surface.posterior.Prediction;
import pegbed.surface.survey.Survey;
import pegbed.wording.MapWords;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pegbed depths}: the depth at places of a table. */
@Command(
        name = "depths",
        mixinStandardHelpOptions = true,
        description =
                "Answers the depth, its doubt and the slope at places; empty where there is no water within reach. Without a "
                        + "peg, from the log of a whole water.")
final class DepthsCommand implements Callable<Integer> {
    @Parameters(paramLabel = "PEG", arity = "0..1", description = "The peg file.")
    private Path path;

    @ArgGroup(exclusive = false, heading = "From the log of a whole water, instead of a peg:%n")
    private LogDepths log;

    @Option(names = "--points", paramLabel = "P.csv", description = "Columns x_m,y_m.")
    private Path points;

    @Mixin
    private NeighbouringPegsOption others;

    @Mixin
    private Output output;

    /** What is known at a place. */
    private record Depth(Prediction prediction, Disc disc) {}

    @Override
    public Integer call() throws InputException, IOException {
        if (path != null && log != null) {
            throw new InputException(
                    "Give a peg file or --soundings, not both: a peg has its readings in its own file.");
        }
        if (log != null) {
            return log.answer(points, output);
        }
        if (path == null) {
            throw new InputException("Say of what: pegbed depths PEG --points P.csv, or for the log of a whole water "
                    + "pegbed depths --soundings LOG.csv --grid 5 --out FILE.");
        }
        if (points == null) {
            throw new InputException("--points: there is no table of places; give one with the columns x_m,y_m.");
        }
        return peg();
    }

    private int peg() throws InputException {
        PointsTable table = PointsTable.read(points);
        Peg peg = PegArgument.look(path, output.err()).peg();
        PegWater water = PegWater.of(peg);
        Progress progress = new Progress(output.err());
        FittedBottom bottom = BottomModel.fit(
                Survey.of(peg, water), others.of(path, peg, output.err()), progress.of("Fitting the bottom"));
        progress.end();
        if (!output.json()) {
            // The table is for machines too, so that this is said beside it.
            MapWords.neighbours(bottom, peg).ifPresent(output.err()::println);
            output.out().print("x_m,y_m,depth_m,sd_m,disc_depth_m,slope\r\n");
        }
        ArrayNode answers = output.array();
        for (Place place : table.places()) {
            double x = place.xMetres();
            double y = place.yMetres();
            Optional<Depth> depth =
                    water.isWater(x, y) ? Optional.of(new Depth(bottom.at(x, y), bottom.disc(x, y))) : Optional.empty();
            if (output.json()) {
                answers.add(json(place, depth));
            } else {
                output.out().print(csv(place, depth));
            }
        }
        if (output.json()) {
            output.print(answers);
        }
        return 0;
    }

    private static String csv(Place place, Optional<Depth> depth) {
        String start = plain(place.xMetres()) + "," + plain(place.yMetres());
        return start
                + depth.map(d -> "," + Output.rounded(d.prediction().depthMetres(), 4)
                                + "," + Output.rounded(d.prediction().sdMetres(), 4)
                                + "," + Output.rounded(d.disc().depthMetres(), 4)
                                + "," + Output.rounded(d.disc().slope(), 4))
                        .orElse(",,,,")
                + "\r\n";
    }

    static String plain(double value) {
        return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private ObjectNode json(Place place, Optional<Depth> depth) {
        ObjectNode node = output.object();
        node.put("x_m", place.xMetres());
        node.put("y_m", place.yMetres());
        depth.ifPresent(d -> {
            node.put("depth_m", Output.rounded(d.prediction().depthMetres(), 4));
            node.put("sd_m", Output.rounded(d.prediction().sdMetres(), 4));
            node.put("disc_depth_m", Output.rounded(d.disc().depthMetres(), 4));
            node.put("slope", Output.rounded(d.disc().slope(), 4));
        });
        return node;
    }
}
