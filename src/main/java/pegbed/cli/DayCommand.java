package pegbed.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import pegbed.cli.output.DayJson;
import pegbed.cli.output.DayText;
import pegbed.cli.output.Output;
import pegbed.findings.Findings;
import pegbed.model.Conditions;
import pegbed.model.Day;
import pegbed.model.DayEvent;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Visit;
import pegbed.notation.DayNotation;
import pegbed.plan.Plan;
import pegbed.report.card.DayPage;
import pegbed.report.drawing.Theme;
import pegbed.session.DayAnswer;
import pegbed.session.DayEdits;
import pegbed.session.Edit;
import pegbed.session.FishingPage;
import pegbed.session.TypedDay;
import pegbed.session.VisitLessons;
import pegbed.storage.disk.AtomicFileWriter;
import pegbed.storage.disk.WholeFile;
import pegbed.storage.shelf.NeighbouringPegFiles;
import pegbed.storage.table.EventsTable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code pegbed day}: what happened while fishing, noted, mended and told. */
@Command(
        name = "day",
        mixinStandardHelpOptions = true,
        description = {
            "Keeps the log of a day's fishing and says what each line gives.",
            "Without an option that changes it, it tells the log of the latest visit."
        })
public final class DayCommand implements Callable<Integer> {
    @Parameters(paramLabel = "PEG", description = "The peg file.")
    private Path path;

    @Option(
            names = "--add",
            paramLabel = "EVENT",
            description = "What happened, such as \"14:20 line 2 fish F1 1lb8\"; may be given more than once.")
    private List<String> typed = List.of();

    @Option(
            names = "--visit",
            paramLabel = "N",
            description = "The visit meant, 1 for the first; the latest if not given.")
    private Integer visit;

    @Option(
            names = "--change",
            arity = "2",
            paramLabel = "N EVENT",
            description = "The event of that number in the log is another after all.")
    private List<String> change = List.of();

    @Option(names = "--delete", paramLabel = "N", description = "Takes the event of that number out of the log.")
    private Integer delete;

    @Option(names = "--air", paramLabel = "C", description = "Temperature of the air, degrees Celsius.")
    private Double air;

    @Option(names = "--water", paramLabel = "C", description = "Temperature of the water, degrees Celsius.")
    private Double water;

    @Option(names = "--wind", paramLabel = "WORDS", description = "The wind, in your words.")
    private String wind;

    @Option(names = "--colour", paramLabel = "WORDS", description = "Colour of the water, in your words.")
    private String colour;

    @Option(names = "--events", paramLabel = "FILE", description = "Brings in the events of a CSV table.")
    private Path events;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Writes the log as a table as well (.csv), or draws the day and what visits gave"
                    + " (.pdf, .png, .svg).")
    private Path out;

    @Option(names = "--look", paramLabel = "LOOK", description = "Of a picture: light, dark, contrast or grey.")
    private String look = "light";

    @Mixin
    private NeighbouringPegsOption others;

    @Mixin
    private Output output;

    private final OffsetDateTime now = OffsetDateTime.now(ZoneId.systemDefault());

    @Override
    public Integer call() throws InputException {
        PrintWriter err = output.err();
        Theme theme = Look.theme(look);
        Peg peg = PegArgument.look(path, err).peg();
        refuseVisit(peg);
        Optional<Findings> findings = findings(peg);
        List<Place> planned = planned(peg, findings);
        if (changes()) {
            peg = PegArgument.change(path, err, before -> new PegArgument.Changed<>(changed(before, planned), ""))
                    .peg();
        }
        int shown = index(peg);
        List<Peg> beside = NeighbouringPegFiles.beside(path, peg).pegs();
        DayAnswer answer = DayAnswer.of(peg, shown, planned, beside, now);
        Peg latest = peg;
        Optional<VisitLessons> lessons = findings.map(found -> VisitLessons.of(found.map(), latest, now));
        if (output.json()) {
            output.print(DayJson.of(peg, shown, answer, lessons));
        } else {
            DayText.print(peg, shown, answer, lessons, output.out());
        }
        if (out != null) {
            WholeFile.write(out, written(FishingPage.of(peg, shown, answer, lessons), answer.day(), theme));
        }
        return 0;
    }

    /** What {@code --out} asks for; a name without a known ending is a table's. */
    private byte[] written(DayPage page, Day day, Theme theme) throws InputException {
        String name = AtomicFileWriter.name(out);
        if (!name.toLowerCase(Locale.ROOT).matches(".*\\.(pdf|png|svg)")) {
            return EventsTable.write(day.events()).getBytes(StandardCharsets.UTF_8);
        }
        if (page.isEmpty()) {
            throw new InputException(name + " was not drawn: nothing was fished yet.");
        }
        return page.file(name, theme);
    }

    private boolean changes() {
        return !typed.isEmpty()
                || !change.isEmpty()
                || delete != null
                || events != null
                || air != null
                || water != null
                || wind != null
                || colour != null;
    }

    private void refuseVisit(Peg peg) throws InputException {
        if (visit != null && (visit < 1 || visit > peg.visits().size())) {
            throw new InputException("There is no visit " + visit + "; the peg has "
                    + (peg.visits().size() == 1
                            ? "visit 1 alone."
                            : "visits 1 to " + peg.visits().size() + "."));
        }
    }

    private int index(Peg peg) {
        return visit == null ? peg.visits().size() - 1 : visit - 1;
    }

    /** What is found on the bottom; empty where too little is known of it. */
    private Optional<Findings> findings(Peg peg) {
        try {
            return Optional.of(Findings.of(others.map(path, peg, output.err()), OptionalDouble.empty()));
        } catch (InputException e) {
            output.err().println("Warning: " + e.getMessage() + " Lines are told by their places.");
            return Optional.empty();
        }
    }

    /** Places of the planned lines; none where there is nothing to plan with. */
    private static List<Place> planned(Peg peg, Optional<Findings> findings) {
        return findings.map(found -> Plan.of(found, peg.wishes()).places()).orElse(List.of());
    }

    private Peg changed(Peg before, List<Place> planned) throws InputException {
        Peg peg = before;
        if (!change.isEmpty()) {
            int number = numbered(peg, "--change", change.get(0));
            DayEvent old = peg.visits().get(index(peg)).day().events().get(number);
            DayEvent event = at(peg, planned).instead(DayNotation.of(peg).parse(change.get(1)), old);
            peg = apply(peg, DayEdits.change(index(peg), number, event));
        }
        if (delete != null) {
            peg = apply(peg, DayEdits.delete(index(peg), numbered(peg, "--delete", Integer.toString(delete))));
        }
        if (events != null) {
            EventsTable table = EventsTable.read(events);
            if (!table.ignoredColumns().isEmpty()) {
                output.err()
                        .println("Warning: these columns were passed over: " + String.join(", ", table.ignoredColumns())
                                + ".");
            }
            peg = apply(peg, DayEdits.bringIn(index(peg), table.events()));
        }
        for (String line : typed) {
            DayEvent event = at(peg, planned).event(DayNotation.of(peg).parse(line));
            peg = apply(peg, visit == null ? DayEdits.add(event) : DayEdits.bringIn(visit - 1, List.of(event)));
        }
        return apply(peg, DayEdits.conditions(index(peg), conditions(peg)));
    }

    private TypedDay at(Peg peg, List<Place> planned) {
        return new TypedDay(peg, Optional.ofNullable(visit).map(number -> number - 1), planned, now);
    }

    /** The index of the event that an option names. */
    private int numbered(Peg peg, String option, String number) throws InputException {
        List<DayEvent> log = peg.visits().get(index(peg)).day().events();
        int index = number.matches("\\d{1,6}") ? Integer.parseInt(number) : 0;
        if (index < 1 || index > log.size()) {
            throw new InputException(option + " takes the number of an event in the log, "
                    + (log.isEmpty() ? "which has none" : "1 to " + log.size()) + ", not '" + number + "'.");
        }
        return index - 1;
    }

    private Conditions conditions(Peg peg) throws InputException {
        Visit of = peg.visits().get(index(peg));
        Conditions old = of.day().conditions();
        try {
            return new Conditions(
                    air == null ? old.airCelsius() : OptionalDouble.of(air),
                    water == null ? old.waterCelsius() : OptionalDouble.of(water),
                    wind == null ? old.wind() : wind.strip(),
                    colour == null ? old.colour() : colour.strip(),
                    old.extras());
        } catch (IllegalArgumentException e) {
            throw new InputException(e.getMessage(), e);
        }
    }

    private static Peg apply(Peg peg, Edit edit) throws InputException {
        try {
            return edit.change().apply(peg);
        } catch (IllegalArgumentException e) {
            throw new InputException(e.getMessage(), e);
        }
    }
}
