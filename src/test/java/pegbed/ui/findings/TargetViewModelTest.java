package pegbed.ui.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.InputException;
import pegbed.model.Reading;
import pegbed.notation.Line;
import pegbed.notation.Notation;
import pegbed.session.Answer;
import pegbed.session.Pegs;
import pegbed.session.ReadingEdits;
import pegbed.storage.disk.PegFile;
import pegbed.ui.app.Desks;
import pegbed.ui.app.WindowViewModels;
import pegbed.wording.FindingWords;
import pegbed.wording.Quantities;

class TargetViewModelTest {
    @TempDir
    private Path folder;

    private WindowViewModels desk;
    private TargetViewModel target;

    @BeforeEach
    void open() {
        desk = Desks.atOnce(folder, Pegs.plumbed(12));
        target = desk.target();
    }

    private double deepest() {
        return desk.session()
                .answer()
                .shown()
                .orElseThrow()
                .map()
                .deepest()
                .spot()
                .depthMetres();
    }

    @Test
    void whatEarlierVisitsSpeakForIsOfferedAndTakenByOneTap() throws InputException {
        desk = Desks.atOnce(
                folder,
                PegFile.read(Path.of("sample-pegs/sallow-cut-5.peg.json")).peg());
        target = desk.target();
        assertTrue(
                target.lessonProperty()
                        .get()
                        .matches("2 ft 6 in did best in \\d+ of 1[12] visits \\(half the deepest is .*"),
                target.lessonProperty().get());
        assertEquals("Take 2 ft 6 in", target.offerProperty().get());
        assertTrue(target.followsProperty().get(), "never taken by itself");
        target.takeOffer();
        assertEquals(0.762, desk.session().peg().wishes().targetMetres().orElseThrow(), 1e-9);
        assertEquals("", target.offerProperty().get());
        desk.document().undo();
        assertEquals("Take 2 ft 6 in", target.offerProperty().get());
    }

    @Test
    void withoutVisitsNothingIsOffered() {
        assertEquals("", target.lessonProperty().get());
        assertEquals("", target.offerProperty().get());
    }

    @Test
    void itFollowsHalfTheDeepestUntilTouched() {
        assertTrue(target.followsProperty().get());
        assertEquals(deepest() / 2, target.metresProperty().get(), 1e-9);
        assertEquals(OptionalDouble.empty(), desk.session().peg().wishes().targetMetres());
    }

    @Test
    void theEndOfTheSliderIsNoWishOfThePersons() throws InputException {
        // A slider never stands beyond its end: what stood there goes to the end when the end comes nearer.
        target.deepestProperty().addListener((property, before, now) -> {
            if (target.metresProperty().get() > now.doubleValue()) {
                target.metresProperty().set(now.doubleValue());
            }
        });
        desk.document().begin(Pegs.plumbed(3));
        double half = target.metresProperty().get();
        desk.session().edit(ReadingEdits.add(Reading.of(11, 5, 22 * 0.3048)));
        assertTrue(target.metresProperty().get() > 1.3 * half);
        desk.document().undo();
        assertTrue(target.followsProperty().get());
        assertEquals(half, target.metresProperty().get(), 1e-9);
        assertEquals("Add reading", desk.document().redoProperty().get());
        assertEquals("", desk.document().undoProperty().get());
    }

    @Test
    void aDragChangesTheFlatsAndIsUndoneAsOne() {
        for (int i = 0; i < 10; i++) {
            target.metresProperty().set(0.50 + i * 0.01);
        }
        target.settled();
        assertFalse(target.followsProperty().get());
        Answer.Ready ready = (Answer.Ready) desk.session().answer();
        assertEquals(0.59, ready.findings().targetMetres(), 1e-9);
        desk.document().undo();
        assertTrue(target.followsProperty().get());
        assertEquals(deepest() / 2, target.metresProperty().get(), 1e-9);
    }

    @Test
    void aTypedDepthIsReadInThePersonsUnit() {
        target.enter("2'6");
        assertEquals(2.5 * 0.3048, target.metresProperty().get(), 1e-9);
        assertEquals("2 ft 6 in", target.wordsProperty().get());
        target.enter("80cm");
        assertEquals(0.8, target.metresProperty().get(), 1e-9);
    }

    @Test
    void nonsenseIsSaidAndTheTargetStays() {
        double before = target.metresProperty().get();
        target.enter("knee deep");
        assertTrue(
                target.errorProperty().get().contains("is not a depth"),
                target.errorProperty().get());
        assertEquals(before, target.metresProperty().get());
    }

    @Test
    void emptyGoesBackToHalfTheDeepest() {
        target.enter("2'6");
        target.enter(" ");
        assertTrue(target.followsProperty().get());
        assertEquals("", target.errorProperty().get());
    }

    /** Field, words and what the findings say are one figure, whatever the target. */
    @Test
    void theTargetIsRoundedInOneWayEverywhere() throws InputException {
        for (double metres = 0.5; metres < 1.2; metres += 0.0137) {
            desk.session().edit(ReadingEdits.target(OptionalDouble.of(metres)));
            double typed = ((Line.ReadingLine) Notation.of(desk.session().peg())
                            .parse("2m 0 " + target.typedProperty().get()))
                    .reading()
                    .depthMetres();
            String said = Quantities.of(desk.session().peg()).depthToHalfInch(typed);
            assertEquals(said, target.wordsProperty().get());
            assertTrue(
                    FindingWords.of(desk.session().peg())
                            .target(desk.session()
                                    .answer()
                                    .shown()
                                    .orElseThrow()
                                    .findings())
                            .contains(said),
                    said);
        }
    }
}
