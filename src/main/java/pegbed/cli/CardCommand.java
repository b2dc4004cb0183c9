package pegbed.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import pegbed.cli.output.NeighbouringPegsJson;
import pegbed.cli.output.Output;
import pegbed.findings.Findings;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.plan.Plan;
import pegbed.report.card.Card;
import pegbed.report.card.DayPage;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.Themes;
import pegbed.session.FishingPage;
import pegbed.session.VisitLessons;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.storage.disk.WholeFile;
import pegbed.wording.MapWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pegbed card}: what is taken to the peg. */
@Command(
        name = "card",
        mixinStandardHelpOptions = true,
        description = "Writes the card: map, lines and rigs on A5 (PDF, PNG, SVG), or as one page for a phone (HTML).")
final class CardCommand implements Callable<Integer> {
    @Parameters(paramLabel = "PEG", description = "The peg file.")
    private Path path;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FILE",
            description = "A name that ends in .pdf, .png, .svg or .html.")
    private Path file;

    @Option(names = "--grey", description = "For a printer without colour; the phone's page takes no notice.")
    private boolean grey;

    @Mixin
    private WishOptions wishes;

    @Mixin
    private NeighbouringPegsOption others;

    @Mixin
    private Output output;

    @Override
    public Integer call() throws InputException {
        if (file != null && file.toString().isBlank()) {
            throw new InputException("--out is empty; give the name of a file that ends in .pdf, .png, .svg or .html.");
        }
        String name = AtomicFileWriter.name(file);
        Peg peg = PegArgument.look(path, output.err()).peg();
        Findings findings = Findings.of(others.map(path, peg, output.err()), wishes.target());
        Plan plan = Plan.of(findings, wishes.over(peg.wishes()));
        Theme theme = grey ? Themes.BLACK_AND_WHITE : Themes.LIGHT;
        OffsetDateTime now = OffsetDateTime.now(ZoneId.systemDefault());
        Optional<DayPage> fishing =
                FishingPage.latest(peg, plan.places(), Optional.of(VisitLessons.of(findings.map(), peg, now)), now);
        WholeFile.write(file, Card.file(name, plan, fishing, theme));
        if (output.json()) {
            ObjectNode node = output.object().put("card", file.toString());
            NeighbouringPegsJson.put(node, findings.map().bottom().lesson());
            output.print(node);
        } else {
            output.out().println("Wrote " + file + ".");
            if (Card.isOnePage(name) && fishing.isPresent()) {
                output.out()
                        .println(
                                "A picture holds one page: the fishing is not on it. A card in .pdf has both, and pegbed"
                                        + " day with --out draws the fishing alone.");
            }
            MapWords.neighbours(findings.map()).ifPresent(output.out()::println);
        }
        return 0;
    }
}
