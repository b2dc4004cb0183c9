package pegbed.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pegbed.cli.output.Output;
import pegbed.cli.output.Progress;
import pegbed.exchange.LakeTiff;
import pegbed.geodesy.LocalFrame;
import pegbed.lake.LakeBottom;
import pegbed.lake.LakeDepths;
import pegbed.lake.LakeGrid;
import pegbed.lake.LakeModel;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.model.Position;
import pegbed.model.SoundingLog;
import pegbed.notation.LatitudeLongitude;
import pegbed.storage.disk.WholeFile;
import pegbed.storage.table.LogTable;
import pegbed.storage.table.PointsTable;
import picocli.CommandLine.Option;

/** The depths of a whole water from its log, at places or on a grid. */
final class LogDepths {
    /** How many soundings that stand out are named. */
    private static final int NAMED = 3;

    private static final String HEADER = "x_m,y_m,depth_m,sd_m\r\n";

    @Option(
            names = "--soundings",
            required = true,
            paramLabel = "LOG.csv",
            description = "Columns x_m,y_m,depth_m, or distance_m,angle_deg,depth_m; up to four million rows.")
    private Path soundings;

    @Option(
            names = "--grid",
            paramLabel = "M",
            description = "Answer on a grid of so many metres over all that was sounded.")
    private Double grid;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description =
                    "The file for the grid, a table, or a GeoTIFF where its name ends in .tif; standard output if not"
                            + " given.")
    private Path out;

    @Option(
            names = "--place-sd",
            paramLabel = "M",
            description =
                    "How well x and y are known each way, one standard deviation in metres; 2.5 if not given, as a "
                            + "boat's satellite fix.")
    private Double placeSd;

    @Option(
            names = "--at",
            paramLabel = "LAT,LON",
            description = "For a .tif file: where on the earth the log's x and y are 0, such as 52.1234,-1.2345.")
    private String at;

    @Option(
            names = "--bearing",
            paramLabel = "DEG",
            description = "For a .tif file: the true bearing in which the log's y grows; 0 if not given.")
    private Double bearing;

    int answer(Path points, Output output) throws InputException, IOException {
        look(points, output);
        PointsTable places = points == null ? null : PointsTable.read(points);
        Progress reading = new Progress(output.err());
        reading.of("Reading the soundings");
        LogTable table = LogTable.read(soundings, placeSd == null ? SoundingLog.BOAT_SD_METRES : placeSd);
        reading.end();
        if (!table.ignoredColumns().isEmpty()) {
            output.err()
                    .println("Warning: " + soundings.getFileName() + " has columns that are not used: "
                            + String.join(", ", table.ignoredColumns()) + ".");
        }
        Progress progress = new Progress(output.err());
        LakeBottom bottom = LakeModel.fit(table.log(), progress.of("Fitting the bottom"));
        if (places != null) {
            points(bottom, places.places(), progress, output);
        } else {
            grid(bottom, progress, output);
        }
        return 0;
    }

    private void look(Path points, Output output) throws InputException, IOException {
        if ((points == null) == (grid == null)) {
            throw new InputException(
                    "Give --points P.csv for the depths at places, or --grid 5 for those on a grid of 5 m; "
                            + (grid == null ? "one of them is needed." : "not both at once."));
        }
        if (grid == null && out != null) {
            throw new InputException("--out is the file for a grid; give --grid with it, or leave it out.");
        }
        if (grid != null && out == null && output.json()) {
            throw new InputException("--json tells of a grid that is written to a file; give --out with it.");
        }
        if (grid != null && !(grid >= LakeGrid.LEAST_STEP && grid <= LakeGrid.MOST_STEP)) {
            throw new InputException("--grid is a distance in metres between " + LakeGrid.LEAST_STEP + " and "
                    + LakeGrid.MOST_STEP + ", such as 5; not " + grid + ".");
        }
        if (out != null && Files.exists(out) && Files.exists(soundings) && Files.isSameFile(out, soundings)) {
            throw new InputException("--out is the log itself, which it would write over; give another file.");
        }
        if ((at != null || bearing != null) && !isTiff()) {
            throw new InputException(
                    "--at and --bearing say where a GeoTIFF lies; give them with --grid and --out FILE.tif.");
        }
        if (bearing != null && (at == null || !(bearing >= 0 && bearing <= 360))) {
            throw new InputException("--bearing is a true bearing between 0 and 360 degrees, beside a position such as"
                    + " --at 52.1234,-1.2345.");
        }
        position();
        if (placeSd != null && !(placeSd >= 0 && placeSd <= 100)) {
            throw new InputException(
                    "--place-sd is how well places are known in metres, between 0 and 100, such as 2.5; not " + placeSd
                            + ".");
        }
    }

    private static void points(LakeBottom bottom, List<Place> places, Progress progress, Output output) {
        double[] x = places.stream().mapToDouble(Place::xMetres).toArray();
        double[] y = places.stream().mapToDouble(Place::yMetres).toArray();
        LakeDepths depths = bottom.depths(x, y, progress.of("Answering places"));
        progress.end();
        ArrayNode answers = output.array();
        if (!output.json()) {
            output.out().print(HEADER);
        }
        for (int i = 0; i < x.length; i++) {
            boolean known = bottom.tells(depths, i);
            if (!output.json()) {
                output.out().print(row(x[i], y[i], depths, i, known));
                continue;
            }
            ObjectNode node = output.object().put("x_m", x[i]).put("y_m", y[i]);
            if (known) {
                node.put("depth_m", Output.rounded(depths.depthMetres()[i], 4));
                node.put("sd_m", Output.rounded(depths.sdMetres()[i], 4));
            }
            answers.add(node);
        }
        if (output.json()) {
            output.print(answers);
        }
        standsOut(bottom, output);
    }

    private void grid(LakeBottom bottom, Progress progress, Output output) throws InputException, IOException {
        LakeGrid nodes = LakeGrid.over(bottom, grid);
        Counts counts = new Counts();
        WholeFile.Text text = to -> {
            to.append(HEADER);
            nodes.forEach(bottom, progress.of("Filling the grid"), (x, y, depths) -> {
                for (int i = 0; i < x.length; i++) {
                    boolean known = bottom.tells(depths, i);
                    counts.known += known ? 1 : 0;
                    counts.unknown += known ? 0 : 1;
                    if (known) {
                        to.append(row(x[i], y[i], depths, i, true));
                    }
                }
            });
        };
        if (isTiff()) {
            LakeTiff tiff = LakeTiff.of(bottom, nodes, position(), progress.of("Filling the grid"));
            WholeFile.write(out, tiff.file());
            counts.known = tiff.known();
            counts.unknown = tiff.unknown();
        } else if (out == null) {
            text.to(output.out());
        } else {
            WholeFile.write(out, text);
        }
        progress.end();
        if (output.json()) {
            output.print(output.object()
                    .put("grid", out.toString())
                    .put("nodes", counts.known)
                    .put("left_out", counts.unknown)
                    .put("soundings", bottom.soundings())
                    .put("fitted_to", bottom.fittedSoundings())
                    .put("stand_out", bottom.standsOut().size()));
        } else if (out != null) {
            output.out()
                    .println("Wrote " + counts.known + " nodes from " + bottom.soundings() + " soundings to " + out
                            + ".");
        }
        if (counts.unknown > 0) {
            output.err()
                    .println(counts.unknown
                            + " nodes between the soundings are too unsure or above the water and were left" + " out.");
        }
        standsOut(bottom, output);
    }

    private boolean isTiff() {
        String name = out == null ? "" : out.toString().toLowerCase(Locale.ROOT);
        return name.endsWith(".tif") || name.endsWith(".tiff");
    }

    /** Where the log lies on the earth, if that was said. */
    private Optional<Position> position() throws InputException {
        if (at == null) {
            return Optional.empty();
        }
        LatitudeLongitude origin = LatitudeLongitude.parse(at);
        LocalFrame.refuseNearPole(origin.latitudeDegrees());
        return Optional.of(
                new Position(origin.latitudeDegrees(), origin.longitudeDegrees(), bearing == null ? 0 : bearing));
    }

    private static final class Counts {
        private int known;
        private int unknown;
    }

    private static void standsOut(LakeBottom bottom, Output output) {
        List<LakeBottom.StandsOut> all = bottom.standsOut();
        if (all.isEmpty()) {
            return;
        }
        output.err()
                .println(all.size() + (all.size() == 1 ? " sounding stands" : " soundings stand")
                        + " out from those around and " + (all.size() == 1 ? "is" : "are")
                        + " kept as a hole or hump; look whether it is a false echo:");
        for (LakeBottom.StandsOut each : all.subList(0, Math.min(NAMED, all.size()))) {
            output.err()
                    .println(String.format(
                            Locale.ROOT,
                            "  %.2f m at x %.1f, y %.1f, where %.2f m was expected",
                            each.depthMetres(),
                            each.xMetres(),
                            each.yMetres(),
                            each.depthMetres() - each.differenceMetres()));
        }
    }

    private static String row(double x, double y, LakeDepths depths, int i, boolean known) {
        return DepthsCommand.plain(x) + "," + DepthsCommand.plain(y) + ","
                + (known
                        ? Output.rounded(depths.depthMetres()[i], 4) + "," + Output.rounded(depths.sdMetres()[i], 4)
                        : ",")
                + "\r\n";
    }
}
