package pegbed.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.concurrent.Callable;
import pegbed.cli.output.Output;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.storage.shelf.Shelf;
import pegbed.storage.shelf.ShelfFiles;
import pegbed.storage.shelf.ShelfPeg;
import pegbed.wording.Quantities;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pegbed shelf}: the pegs in a folder. */
@Command(
        name = "shelf",
        mixinStandardHelpOptions = true,
        description = "Lists the pegs in a folder by venue, water and number; exit 1 if there are none.")
final class ShelfCommand implements Callable<Integer> {
    /** So many files of the same peg are named; more are counted only. */
    private static final int MAX_TWINS = 6;

    @Parameters(paramLabel = "FOLDER", description = "The folder; folders in it are listed too.")
    private Path folder;

    @Option(
            names = "--find",
            paramLabel = "TEXT",
            description = "Only the pegs with these words in venue, water, number or file name.")
    private String find = "";

    @ArgGroup
    private Deed deed;

    @Mixin
    private Output output;

    /** What to do with the one peg that was found. */
    private static final class Deed {
        @Option(names = "--duplicate", description = "Copy the one peg that is found.")
        private boolean duplicate;

        @Option(
                names = "--rename",
                paramLabel = "VENUE/WATER/NUMBER",
                description = "Give the one peg that is found another name.")
        private String rename;

        @Option(names = "--move", paramLabel = "TO", description = "Move the one peg that is found to another folder.")
        private Path move;

        @Option(names = "--delete", description = "Put the one peg that is found into the folder 'deleted' beside it.")
        @SuppressWarnings("UnusedVariable") // The one that is left when the others are not asked for.
        private boolean delete;
    }

    @Override
    public Integer call() throws InputException {
        Shelf shelf = Shelf.of(folder);
        List<ShelfPeg> found = shelf.find(find);
        if (deed != null) {
            return act(found);
        }
        List<ShelfPeg> twins = shelf.twins();
        if (output.json()) {
            ArrayNode all = output.array();
            found.forEach(peg -> all.add(json(peg)));
            output.print(all);
        } else {
            found.forEach(peg -> output.out().println(line(peg)));
            output.out()
                    .println(found.size() + (found.size() == 1 ? " peg" : " pegs")
                            + ". Depths are the deepest reading of the latest visit.");
            if (!twins.isEmpty()) {
                output.out()
                        .println("! " + twins.size() + " files share their peg's name with another, as copies do: "
                                + String.join(
                                        ", ",
                                        twins.stream()
                                                .limit(MAX_TWINS)
                                                .map(peg -> folder.relativize(peg.file())
                                                        .toString())
                                                .toList()));
            }
        }
        return found.isEmpty() ? Cli.NO : 0;
    }

    private int act(List<ShelfPeg> found) throws InputException {
        if (found.size() != 1) {
            throw new InputException(found.size() + " pegs match '" + find
                    + "'; say enough with --find that only one does, such as its water and number or its file name.");
        }
        ShelfPeg peg = found.get(0);
        String what = peg.name().title();
        if (deed.rename != null) {
            String[] parts = deed.rename.split("/", -1);
            if (parts.length != 3) {
                throw new InputException("--rename: give venue, water and number with a stroke between, such as"
                        + " \"Mallowfield Pools/Tansy Cut/9\".");
            }
            PegName name = new PegName(parts[0].strip(), parts[1].strip(), parts[2].strip());
            ShelfFiles.rename(peg, name);
            return done(what + " is now " + name.title() + ".", peg.file());
        }
        if (deed.move != null) {
            Path now = ShelfFiles.move(peg, deed.move);
            return done(what + " is now in " + now + ".", now);
        }
        if (deed.duplicate) {
            Path copy = ShelfFiles.duplicate(peg);
            return done(what + " has a copy in " + copy + ".", copy);
        }
        Path now = ShelfFiles.delete(peg);
        return done(what + " is deleted; it lies in " + now + ".", now);
    }

    private int done(String sentence, Path file) {
        if (output.json()) {
            output.print(output.object().put("file", file.toString()));
        } else {
            output.out().println(sentence);
        }
        return 0;
    }

    private String line(ShelfPeg peg) {
        String file = folder.relativize(peg.file()).toString();
        if (peg.visits() == 0) {
            return "! " + file + ": " + peg.trouble().orElse("");
        }
        Quantities quantities = Quantities.of(Peg.EMPTY.withUnits(peg.units()));
        StringBuilder line = new StringBuilder();
        if (!peg.name().venue().isBlank() && !peg.name().water().isBlank()) {
            line.append(peg.name().venue()).append(": ");
        }
        line.append(peg.name().title())
                .append("  ")
                .append(peg.lastVisit().map(Quantities::day).orElse("no date"))
                .append("  ")
                .append(peg.readings())
                .append(peg.readings() == 1 ? " reading" : " readings");
        peg.deepestReadingMetres().ifPresent(d -> line.append("  ").append(quantities.depth(d)));
        peg.boardToWaterMetres().ifPresent(b -> line.append("  board to water ").append(quantities.depth(b)));
        line.append("  ").append(file);
        peg.trouble().ifPresent(trouble -> line.append("  ! ").append(trouble));
        return line.toString();
    }

    private ObjectNode json(ShelfPeg peg) {
        ObjectNode node = output.object();
        node.put("file", folder.relativize(peg.file()).toString());
        node.put("venue", peg.name().venue());
        node.put("water", peg.name().water());
        node.put("number", peg.name().number());
        node.put("visits", peg.visits());
        peg.lastVisit().ifPresent(day -> node.put("last_visit", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(day)));
        node.put("readings", peg.readings());
        peg.deepestReadingMetres().ifPresent(d -> node.put("deepest_reading_m", Output.rounded(d, 3)));
        peg.boardToWaterMetres().ifPresent(b -> node.put("board_to_water_m", Output.rounded(b, 3)));
        peg.trouble().ifPresent(trouble -> node.put("trouble", trouble));
        return node;
    }
}
