package pegbed.ui.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pegbed.cli.Cli;
import pegbed.geometry.Shoreline;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.notation.Line;
import pegbed.notation.Notation;
import pegbed.session.Session;
import pegbed.storage.disk.PegFile;
import pegbed.ui.app.Desks;
import pegbed.ui.app.WindowViewModels;
import pegbed.ui.place.PlaceViewModel;

/** An edge finds the same bank, and the same place in it, whichever way it is given. The banks are invented. */
class EdgeEntryTest {
    @TempDir
    Path folder;

    /** A near bank with a bay to the left, and a headland that doubles back, a far bank, and an island. */
    private static final Banks HEADLAND_AND_ISLAND = new Banks(
            points(
                    -13, 0.6, -11, 0.5, -12, -3, -9, -4, -8, -2, -9, 0.5, -6, 0.5, -5, 3, -6, 5, -3, 5, -2, 3, -3, 0.5,
                    0, 0.5, 9, 0.7),
            points(-11, 13.2, 0, 13, 11, 13.3),
            List.of(points(3, 7, 5, 7, 5, 9, 3, 9)));

    private static final Banks NEAR_ALONE = new Banks(points(-9, 0.6, 0, 0.5, 9, 0.7), List.of(), List.of());

    private static List<BankPoint> points(double... xy) {
        return IntStream.range(0, xy.length / 2)
                .mapToObj(i -> BankPoint.at(xy[2 * i], xy[2 * i + 1]))
                .toList();
    }

    private static Banks banks(String name) {
        return switch (name) {
            case "none" -> Banks.NONE;
            case "near alone" -> NEAR_ALONE;
            default -> HEADLAND_AND_ISLAND;
        };
    }

    /** Edges that are given one after the other, the bank of each, and the last one's place in its bank. */
    @ParameterizedTest
    @CsvSource({
        "none, 3.5 0; 6.5 80L, NEAR NEAR, 0",
        "none, 6.5 80L; 3.5 0; 13 5L; 13.5 10R, NEAR NEAR FAR FAR, 1",
        "near alone, 3.5 0, NEAR, 2",
        "near alone, 20 10R; 24 0, FAR FAR, 0",
        "headland, 3.5 0, NEAR, 10",
        "headland, 6.8 41L, NEAR, 9",
        "headland, 11 110L, NEAR, 3",
        "headland, 8 32R, ISLAND, 1",
        "headland, 8.6 19R, ISLAND, 4",
        "headland, 16 20R, FAR, 2",
        "headland, 24 0, FAR, 2",
    })
    void anEdgeFindsTheSameBankHoweverItIsGiven(String banks, String edges, String kinds, int index)
            throws InputException {
        Peg peg = Peg.EMPTY.withBanks(banks(banks));
        List<String> typed = List.of(edges.split("; "));
        Banks added = added(peg, typed);
        WindowViewModels box = desk("box", peg);
        WindowViewModels click = desk("click", peg);
        WindowViewModels form = desk("form", peg);
        for (int i = 0; i < typed.size(); i++) {
            Shoreline.Kind kind = Shoreline.Kind.valueOf(kinds.split(" ")[i]);
            boolean far = kind == Shoreline.Kind.FAR;
            Place place = place(typed.get(i));
            Banks before = box.session().peg().banks();
            assertEquals(kind, Shoreline.nearest(before, place).kind(), typed.get(i));

            box.box().textProperty().set("edge " + typed.get(i));
            assertTrue(box.box().enter(), box.box().errorProperty().get());
            assertTrue(box.box().echoProperty().get().endsWith(", added to the " + kind.words()));
            click.map().toolProperty().set(far ? Tool.FAR_BANK : Tool.NEAR_BANK);
            click.map().add(place);
            assertTrue(form.place()
                    .add(far ? PlaceViewModel.Kind.FAR_BANK : PlaceViewModel.Kind.NEAR_BANK, "", typed.get(i)));
        }
        assertSame(added, box.session().peg().banks());
        assertSame(added, click.session().peg().banks());
        assertSame(added, form.session().peg().banks());
        Place last = place(typed.get(typed.size() - 1));
        assertEquals(index, at(Shoreline.nearest(added, last).of(added), last), "place in the bank");
    }

    private static Place place(String edge) throws InputException {
        return ((Line.EdgeLine) Notation.of(Peg.EMPTY).parse("edge " + edge))
                .point()
                .place();
    }

    /** A desk that answers nothing. */
    private WindowViewModels desk(String name, Peg peg) {
        WindowViewModels desk = WindowViewModels.of(
                folder.resolve(name),
                new Session.Executors(Runnable::run, work -> {}, Runnable::run),
                Runnable::run,
                Runnable::run,
                Runnable::run,
                Desks.CLOCK);
        desk.document().begin(peg);
        return desk;
    }

    /** What the command makes of them. */
    private Banks added(Peg peg, List<String> edges) throws InputException {
        Path file = folder.resolve("p.peg.json");
        PegFile.save(file, peg, Optional.empty());
        List<String> words = new ArrayList<>(List.of("add", file.toString()));
        edges.forEach(edge -> words.add("edge " + edge));
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
        assertEquals(0, Cli.run(words.toArray(new String[0]), nowhere, nowhere, folder.resolve("own")));
        return PegFile.read(file).peg().banks();
    }

    private static int at(List<BankPoint> points, Place place) {
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i).place().distanceTo(place) < 1e-6) {
                return i;
            }
        }
        return -1;
    }

    /** The same points in the same order; files keep places as distance and direction. */
    private static void assertSame(Banks expected, Banks banks) {
        assertSame(expected.near(), banks.near());
        assertSame(expected.far(), banks.far());
        assertEquals(expected.islands().size(), banks.islands().size());
        for (int i = 0; i < banks.islands().size(); i++) {
            assertSame(expected.islands().get(i), banks.islands().get(i));
        }
    }

    private static void assertSame(List<BankPoint> expected, List<BankPoint> points) {
        assertEquals(expected.size(), points.size());
        for (int i = 0; i < points.size(); i++) {
            assertEquals(0, points.get(i).place().distanceTo(expected.get(i).place()), 1e-6);
        }
    }
}
