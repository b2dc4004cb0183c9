package pegbed.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import pegbed.geometry.PegWater;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.storage.PointsTable;
import pegbed.surface.BottomModel;
import pegbed.surface.Disc;
import pegbed.surface.FittedBottom;
import pegbed.surface.Prediction;
import pegbed.surface.Survey;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pegbed depths}: the depth at places of a table. */
@Command(
        name = "depths",
        mixinStandardHelpOptions = true,
        description =
                "Answers the depth, its doubt and the slope at places; empty where there is no water within reach.")
final class DepthsCommand implements Callable<Integer> {
    @Parameters(paramLabel = "PEG", description = "The peg file.")
    private Path path;

    @Option(names = "--points", required = true, paramLabel = "P.csv", description = "Columns x_m,y_m.")
    private Path points;

    @Mixin
    private Output output;

    /** What is known at a place. */
    private record Depth(Prediction prediction, Disc disc) {}

    @Override
    public Integer call() throws InputException {
        PointsTable table = PointsTable.read(points);
        Peg peg = PegOnDisk.look(path, output.err()).peg();
        PegWater water = PegWater.of(peg);
        FittedBottom bottom = BottomModel.fit(Survey.of(peg, water), Monitor.NONE);
        if (!output.json()) {
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

    private static String plain(double value) {
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
