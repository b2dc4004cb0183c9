package pegbed.ui.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.model.RigTemplate;
import pegbed.model.Units;
import pegbed.session.PlaceEdits;
import pegbed.storage.shelf.OwnRigs;
import pegbed.ui.app.Desks;
import pegbed.ui.app.SamplePegFiles;
import pegbed.ui.app.WindowViewModels;
import pegbed.ui.plan.RigRow.Cell;

class RigsViewModelTest {
    private static final double INCH = 0.0254;

    @TempDir
    private Path folder;

    private WindowViewModels desk;
    private RigsViewModel rigs;

    @BeforeEach
    void open() throws InputException {
        desk = Desks.atOnce(folder, SamplePegFiles.first());
        rigs = desk.rigs();
        rigs.open();
    }

    private void type(int row, Cell cell, String typed) {
        rigs.rows().get(row).text(cell).set(typed);
    }

    private String text(int row, Cell cell) {
        return rigs.rows().get(row).text(cell).get();
    }

    private List<RigTemplate> ofThePeg() {
        return desk.session().peg().wishes().rigs().templates();
    }

    @Test
    void aPegWithoutItsOwnShowsTheUsualOnesInThePersonsUnit() throws InputException {
        assertEquals(RigTemplate.USUAL.size(), rigs.rows().size());
        assertEquals("ledge", text(1, Cell.NAME));
        assertEquals("3'5.5", text(1, Cell.UP_TO));
        assertEquals("4×12", text(1, Cell.FLOAT));
        assertEquals("0.20", text(1, Cell.CARRIES));
        assertEquals("2.5in", text(1, Cell.TIP_TO_BODY));
        assertEquals("4in", text(1, Cell.HOOK_LENGTH));
        assertEquals("5 No.10 4in to 1'5.5", text(1, Cell.SHOTS));
        assertEquals("0.20 g", rigs.rows().get(1).weightProperty().get());
        assertEquals("any", text(4, Cell.UP_TO));
        desk.session().edit(PlaceEdits.units(new Units(Units.Depth.CENTIMETRES, Units.Distance.METRES)));
        rigs.open();
        assertEquals("10cm", text(1, Cell.HOOK_LENGTH));
        assertEquals("5 No.10 10cm to 45cm", text(1, Cell.SHOTS));
    }

    @Test
    void whatIsChangedIsOneEditAndWhatIsNotKeepsItsExactFigures() {
        type(1, Cell.HOOK_LENGTH, "6 in");
        type(1, Cell.SHOTS, "5 No.10 4in to 1'5.5, 1x8 at 3in");
        assertTrue(rigs.useForPeg());
        assertEquals("6in", text(1, Cell.HOOK_LENGTH));
        RigTemplate usual = RigTemplate.USUAL.get(1);
        RigTemplate ledge = ofThePeg().get(1);
        assertEquals(6 * INCH, ledge.hookLengthMetres(), 1e-12);
        assertEquals(usual.shots().get(0), ledge.shots().get(0));
        assertEquals(3 * INCH, ledge.shots().get(1).lowestMetres(), 1e-12);
        assertEquals(usual.upToMetres(), ledge.upToMetres());
        assertEquals(usual.tipToBodyMetres(), ledge.tipToBodyMetres());
        assertEquals(RigTemplate.USUAL.get(0), ofThePeg().get(0));
        assertEquals("Change rigs", desk.document().undoProperty().get());
        assertTrue(
                desk.plan().rigs().stream().anyMatch(rig -> rig.what().contains("Hook length 6 in.")),
                desk.plan().rigs().toString());
        desk.document().undo();
        assertEquals(List.of(), ofThePeg());
        rigs.open();
        assertEquals("4in", text(1, Cell.HOOK_LENGTH));
    }

    @Test
    void whatIsWrongStaysWithItsSentenceAndNothingIsUsed() {
        type(0, Cell.NAME, " ");
        type(1, Cell.HOOK_LENGTH, "short");
        type(2, Cell.CARRIES, "heavy");
        type(3, Cell.SHOTS, "a few");
        type(4, Cell.UP_TO, "40m");
        type(5, Cell.TIP_TO_BODY, "2");
        assertFalse(rigs.useForPeg());
        assertEquals("Put right what is marked first.", rigs.messageProperty().get());
        List<String> errors =
                rigs.rows().stream().map(row -> row.errorProperty().get()).toList();
        assertEquals(
                List.of(
                        "A rig needs a name, such as ledge.",
                        "The hook length is a length like 4in; \"short\" is none.",
                        "What the float carries is grams of shot, from 0.01 to 50, such as 0.4; \"heavy\" is not.",
                        "\"a few\" does not begin with how many shot; type shot like " + rigs.example() + ".",
                        "The depth up to which a rig is used is a length like 3'5.5, from 4in to 98'5; \"40m\" is too long.",
                        "\"2\" could be feet or inches; type 2in for inches, or 1'5 for feet and inches.",
                        ""),
                errors);
        assertEquals("short", text(1, Cell.HOOK_LENGTH));
        assertEquals(List.of(), ofThePeg());
        type(1, Cell.HOOK_LENGTH, "5in");
        assertTrue(rigs.rows().get(1).take(Cell.HOOK_LENGTH));
        assertEquals("", rigs.rows().get(1).errorProperty().get());
    }

    @Test
    void rigsAreAddedAndDeletedAndTheUsualOnesComeBack() {
        RigRow more = rigs.add();
        assertEquals("rig 8", more.text(Cell.NAME).get());
        more.text(Cell.NAME).set("winter");
        more.text(Cell.UP_TO).set("any");
        more.setGround(RigTemplate.Ground.SLOPE);
        rigs.delete(rigs.rows().get(0));
        assertTrue(rigs.useForPeg());
        assertEquals(7, ofThePeg().size());
        assertEquals("winter", ofThePeg().get(6).name());
        assertEquals(RigTemplate.Ground.SLOPE, ofThePeg().get(6).ground());
        rigs.showUsual();
        assertEquals(7, ofThePeg().size());
        assertTrue(rigs.useForPeg());
        assertEquals(List.of(), ofThePeg());
        List.copyOf(rigs.rows()).forEach(rigs::delete);
        assertFalse(rigs.useForPeg());
        assertEquals(
                "Add a rig, or take the usual ones.", rigs.messageProperty().get());
    }

    @Test
    void shotThatIsTooHeavyForItsFloatIsSaidButTaken() {
        type(1, Cell.SHOTS, "10 No.10 at 6in");
        assertTrue(rigs.rows().get(1).take(Cell.SHOTS));
        assertEquals(
                "The shot weighs 0.40 g, more than the 0.20 g that the float carries.",
                rigs.rows().get(1).noteProperty().get());
        assertTrue(rigs.useForPeg());
        for (RigTemplate usual : RigTemplate.USUAL) {
            assertEquals("", new RigRow(usual, Units.Depth.FEET).noteProperty().get(), usual.name());
        }
    }

    @Test
    void whatWasTypedAndNotUsedIsThereWhenTheSheetIsOpenedAgain() {
        type(1, Cell.HOOK_LENGTH, "short");
        rigs.open();
        assertEquals("short", text(1, Cell.HOOK_LENGTH));
        assertTrue(rigs.messageProperty().get().startsWith("These are your changes from before"));
        type(1, Cell.HOOK_LENGTH, "6in");
        rigs.useForPeg();
        rigs.open();
        assertEquals("", rigs.messageProperty().get());
        assertEquals("6in", text(1, Cell.HOOK_LENGTH));
    }

    @Test
    void newPegsBeginWithThePersonsOwn() throws InputException {
        type(0, Cell.HOOK_LENGTH, "7in");
        rigs.useForNewPegs();
        assertEquals(
                "This peg uses them now, and new pegs begin with them.",
                rigs.messageProperty().get());
        assertEquals(new OwnRigs(folder).read(), ofThePeg());
        List<RigTemplate> mine = ofThePeg();
        rigs.begin(Peg.EMPTY, desk.document());
        assertEquals(mine, ofThePeg());
        assertEquals("", desk.document().newsProperty().get());
    }

    @Test
    void damagedOnesAreSaidAndNeitherUsedNorWrittenOver() throws IOException {
        Path file = folder.resolve(OwnRigs.FILE);
        Files.writeString(file, "{ \"format\": \"pegbed-peg\", \"version\": 1, \"wi");
        type(0, Cell.HOOK_LENGTH, "7in");
        rigs.useForNewPegs();
        assertTrue(
                rigs.messageProperty().get().startsWith("This peg uses them now. New pegs don't: Your own rigs in "));
        assertEquals(7 * INCH, ofThePeg().get(0).hookLengthMetres(), 1e-12);
        rigs.begin(Peg.EMPTY, desk.document());
        assertEquals(List.of(), ofThePeg());
        assertTrue(desk.document().newsProperty().get().endsWith("This peg begins with the usual rigs."));
        assertEquals("{ \"format\": \"pegbed-peg\", \"version\": 1, \"wi", Files.readString(file));
    }
}
