package pegbed.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import pegbed.cli.output.NeighbouringPegsJson;
import pegbed.cli.output.Output;
import pegbed.cli.output.Progress;
import pegbed.exchange.Export;
import pegbed.exchange.ShelfExport;
import pegbed.findings.Findings;
import pegbed.model.InputException;
import pegbed.model.Monitor;
import pegbed.model.Peg;
import pegbed.plan.Plan;
import pegbed.storage.disk.WholeFile;
import pegbed.storage.shelf.Shelf;
import pegbed.storage.shelf.ShelfPeg;
import pegbed.wording.MapWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pegbed export}: a peg, or all pegs of a folder, for other programs. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description =
                "Writes readings, contours, flats, lines, banks and hazards (.geojson, .gpkg), depth, doubt and slope"
                        + " (.tif), or a table (.csv) for other programs; of a folder, all its pegs in one .gpkg.")
final class ExportCommand implements Callable<Integer> {
    private static final String LOCAL =
            "The peg has no position, so that the file has the coordinates of its own plane,"
                    + " in metres from the seat; pegbed position gives it one.";

    /** The tables that a CSV file may have. */
    enum Table {
        READINGS,
        GRID
    }

    @Parameters(paramLabel = "PEG", description = "The peg file, or a folder of them.")
    private Path path;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FILE",
            description = "A name that ends in .geojson, .gpkg, .tif or .csv; for a folder .gpkg.")
    private Path file;

    @Option(
            names = "--table",
            paramLabel = "NAME",
            description = "What a .csv file has: readings, or the grid of 25 cm; readings if not given.")
    private String table;

    @Option(
            names = "--find",
            paramLabel = "TEXT",
            description = "Of a folder only the pegs with these words in venue, water, number or file name.")
    private String find;

    @Mixin
    private WishOptions wishes;

    @Mixin
    private NeighbouringPegsOption others;

    @Mixin
    private Output output;

    @Override
    public Integer call() throws InputException, IOException {
        if (file.toString().isBlank()) {
            throw new InputException(
                    "--out is empty; give the name of a file that ends in .geojson, .gpkg, .tif or .csv.");
        }
        Export.Kind kind = Export.Kind.of(file);
        if (table != null && kind != Export.Kind.CSV) {
            throw new InputException(
                    "--table says what a .csv file has; give it with --out FILE.csv, or leave it out.");
        }
        return Files.isDirectory(path) ? folder(kind) : peg(kind);
    }

    private int peg(Export.Kind kind) throws InputException, IOException {
        if (find != null) {
            throw new InputException("--find chooses among the pegs of a folder; " + path + " is one file.");
        }
        boolean grid = table() == Table.GRID;
        Peg peg = PegArgument.look(path, output.err()).peg();
        Export export = Export.of(peg, kind, grid);
        boolean local = export.isLocal();
        Findings findings = Findings.of(others.map(path, peg, output.err()), wishes.target());
        Plan plan = Plan.of(findings, wishes.over(peg.wishes()));
        WholeFile.write(file, export.bytes(plan, Monitor.NONE));
        if (local) {
            output.err().println(LOCAL);
        }
        if (output.json()) {
            ObjectNode node = output.object().put("export", file.toString()).put("local", local);
            export.epsgCode().ifPresent(code -> node.put("epsg", code));
            NeighbouringPegsJson.put(node, findings.map().bottom().lesson());
            output.print(node);
        } else {
            output.out().println("Wrote " + file + ".");
            MapWords.neighbours(findings.map()).ifPresent(output.out()::println);
        }
        return 0;
    }

    private Table table() throws InputException {
        try {
            return table == null ? Table.READINGS : Table.valueOf(table.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new InputException("--table: '" + table + "' is neither readings nor grid.", e);
        }
    }

    private int folder(Export.Kind kind) throws InputException, IOException {
        if (kind != Export.Kind.GEOPACKAGE) {
            throw new InputException(
                    "All pegs of a folder go into a GeoPackage; give --out a name that ends in .gpkg.");
        }
        List<ShelfPeg> found = Shelf.of(path).find(find == null ? "" : find);
        if (found.isEmpty()) {
            throw new InputException("There is no peg in " + path
                    + (find == null ? "; give a folder of peg files." : " with '" + find + "' in its name."));
        }
        Progress progress = new Progress(output.err());
        ShelfExport all;
        try {
            all = ShelfExport.of(
                    found.stream().map(ShelfPeg::file).toList(), progress.of("Exporting " + found.size() + " pegs"));
        } finally {
            progress.end();
        }
        WholeFile.write(file, all.file());
        all.leftOut().forEach(sentence -> output.err().println("Warning: left out: " + sentence));
        if (all.local() > 0) {
            output.err()
                    .println(all.local() + (all.local() == 1 ? " peg has" : " pegs have")
                            + " no position and lie in the layers whose names end in _local.");
        }
        if (output.json()) {
            output.print(output.object()
                    .put("export", file.toString())
                    .put("pegs", all.pegs())
                    .put("local", all.local())
                    .put("left_out", all.leftOut().size()));
        } else {
            output.out().println("Wrote " + all.pegs() + (all.pegs() == 1 ? " peg" : " pegs") + " to " + file + ".");
        }
        return 0;
    }
}
