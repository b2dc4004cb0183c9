package pegbed.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import pegbed.cli.output.Output;
import pegbed.geometry.Doubts;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.model.Pole;
import pegbed.model.Visit;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.storage.shelf.OwnRigs;
import pegbed.storage.table.BanksTable;
import pegbed.storage.table.ReadingsTable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code pegbed new}: a peg file from a table of readings and a table of bank points. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        description = "Makes a peg file from a table of readings and a table of bank points.")
final class NewCommand implements Callable<Integer> {
    @Parameters(paramLabel = "PEG", description = "The peg file to make, such as peg9.peg.json.")
    private Path path;

    @Option(
            names = "--readings",
            required = true,
            paramLabel = "R.csv",
            description = "Columns distance_m,angle_deg,depth_m[,bottom][,note].")
    private Path readings;

    @Option(
            names = "--banks",
            required = true,
            paramLabel = "B.csv",
            description = "Columns bank,x_m,y_m; bank is near, far or island, points in order along each.")
    private Path banks;

    @Option(names = "--reach", paramLabel = "M", description = "The longest pole, metres; 16 if not given.")
    private Double reach;

    @Option(names = "--venue", defaultValue = "", description = "The fishery.")
    private String venue;

    @Option(names = "--water", defaultValue = "", description = "The water.")
    private String water;

    @Option(names = "--number", defaultValue = "", description = "The peg's number or name.")
    private String number;

    @Option(names = "--replace", description = "Write over a peg file that is there; it is kept as an earlier version.")
    private boolean replace;

    @Option(
            names = "--usual-rigs",
            description = "Leaves your own rigs out, which a new peg otherwise begins with; the usual ones are tied.")
    private boolean usualRigs;

    @ParentCommand
    private Cli cli;

    @Mixin
    private Output output;

    @Override
    public Integer call() throws InputException {
        refuseAsName();
        refuseAsInput("--readings", readings);
        refuseAsInput("--banks", banks);
        if (!replace && hasContent(path)) {
            throw exists();
        }
        ReadingsTable table = ReadingsTable.read(readings);
        BanksTable lines = BanksTable.read(banks);
        Peg peg = Peg.EMPTY
                .withName(new PegName(venue, water, number))
                .withPole(pole())
                .withBanks(lines.banks())
                .withToday(visit -> Visit.EMPTY.withReadings(table.readings()));
        Doubts.refuseBeyondPole(
                peg, table.readings(), AtomicFileWriter.name(readings), "the length of your longest pole with --reach");
        warnIgnored(readings, table.ignoredColumns());
        warnIgnored(banks, lines.ignoredColumns());
        if (!usualRigs) {
            peg = withOwnRigs(peg);
        }
        try {
            PegArgument.make(path, peg, replace, output.err());
        } catch (InputException e) {
            // Somebody else made it while this command read its tables.
            throw !replace && hasContent(path) ? exists() : e;
        }
        if (output.json()) {
            output.print(output.object()
                    .put("peg", path.toString())
                    .put("readings", table.readings().size()));
        } else {
            int count = table.readings().size();
            output.out().println("Made " + path + " with " + count + (count == 1 ? " reading." : " readings."));
        }
        return 0;
    }

    /** Refuses what can't be the name of a file. */
    private void refuseAsName() throws InputException {
        if (path.toString().isBlank()) {
            throw new InputException("The name of the peg file is empty; give one, such as peg9.peg.json.");
        }
        if (Files.isDirectory(path)) {
            throw new InputException(AtomicFileWriter.name(path)
                    + " is a folder; give the name of a file in it, such as peg9.peg.json.");
        }
    }

    /** Refuses to write the peg over a table that it is made from, by whatever name or link. */
    private void refuseAsInput(String option, Path table) throws InputException {
        try {
            if (Files.exists(path) && Files.exists(table) && Files.isSameFile(path, table)) {
                throw new InputException(path + " is the table of " + option
                        + " itself, which the peg would be written over; give the peg file another name.");
            }
        } catch (IOException e) {
            throw unreadable(path, e);
        }
    }

    private static InputException unreadable(Path path, IOException e) {
        return new InputException(path + " could not be looked at: " + AtomicFileWriter.reason(e) + ".", e);
    }

    private InputException exists() {
        return new InputException(
                path + " exists; give another name, or --replace to write over it (it is kept as an earlier version).");
    }

    /** With the person's own rigs; where these can't be read that is said, and the usual ones are tied. */
    private Peg withOwnRigs(Peg peg) {
        try {
            return new OwnRigs(cli.ownFolder()).into(peg);
        } catch (InputException e) {
            output.err().println("Warning: " + e.getMessage() + " This peg begins with the usual rigs.");
            return peg;
        }
    }

    private Pole pole() throws InputException {
        if (reach == null) {
            return Pole.USUAL;
        }
        if (!(reach >= 1 && reach <= 30)) {
            throw new InputException(
                    "--reach is the longest pole in metres, between 1 and 30, such as 16; not " + reach + ".");
        }
        return Pole.USUAL.withReach(reach);
    }

    private void warnIgnored(Path table, java.util.List<String> columns) {
        if (!columns.isEmpty()) {
            output.err()
                    .println("Warning: " + table.getFileName() + " has columns that are not used: "
                            + String.join(", ", columns) + ".");
        }
    }

    private static boolean hasContent(Path path) throws InputException {
        try {
            return Files.exists(path) && Files.size(path) > 0;
        } catch (IOException e) {
            throw unreadable(path, e);
        }
    }
}
