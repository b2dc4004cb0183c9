package pegbed.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import pegbed.cli.output.Output;
import pegbed.exchange.ReadingsImport;
import pegbed.geometry.Doubts;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Reading;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.wording.ImportWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pegbed import}: readings of a file of another program. */
@Command(
        name = "import",
        mixinStandardHelpOptions = true,
        description = "Shows how the readings of a spreadsheet's CSV file, or of the points of a GeoJSON or GeoPackage"
                + " file, are understood; with --take adds them to the latest visit.")
final class ImportCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "PEG", description = "The peg file.")
    private Path path;

    @Parameters(
            index = "1",
            paramLabel = "FILE",
            description =
                    "A .csv file with columns such as \"Distance (m)\", \"Direction\" and \"Depth (ft)\", or x and y,"
                            + " or latitude and longitude; or a .geojson or .gpkg file of points with a depth.")
    private Path file;

    @Option(names = "--layer", paramLabel = "NAME", description = "Which layer of a GeoPackage.")
    private String layer;

    @Option(names = "--take", description = "Takes the readings; without it they are only shown.")
    private boolean take;

    @Mixin
    private Output output;

    @Override
    public Integer call() throws InputException {
        if (!take) {
            Peg peg = PegArgument.look(path, output.err()).peg();
            say(peg, read(peg));
            return 0;
        }
        PegArgument.Changed<ReadingsImport> changed = PegArgument.change(path, output.err(), peg -> {
            ReadingsImport read = read(peg);
            List<Reading> all = new ArrayList<>(peg.today().readings());
            all.addAll(read.readings());
            return new PegArgument.Changed<>(peg.withToday(visit -> visit.withReadings(all)), read);
        });
        say(changed.peg(), changed.answer());
        return 0;
    }

    private ReadingsImport read(Peg peg) throws InputException {
        ReadingsImport read = ReadingsImport.of(file, peg, Optional.ofNullable(layer));
        Doubts.refuseBeyondPole(
                peg, read.readings(), AtomicFileWriter.name(file), "the peg a longer pole, in the window under Place");
        return read;
    }

    private void say(Peg peg, ReadingsImport read) {
        if (output.json()) {
            ObjectNode node = output.object()
                    .put("readings", read.readings().size())
                    .put("taken", take)
                    .put("passed_over", read.passedOver());
            ArrayNode recognised = node.putArray("recognised");
            read.recognised().forEach(recognised::add);
            ArrayNode ignored = node.putArray("ignored");
            read.ignored().forEach(ignored::add);
            output.print(node);
            return;
        }
        ImportWords.lines(peg, read.readings(), read.recognised(), read.ignored(), read.passedOver())
                .forEach(output.out()::println);
        output.out().println(take ? "Taken into the latest visit." : "Nothing was taken; say --take if this is right.");
    }
}
