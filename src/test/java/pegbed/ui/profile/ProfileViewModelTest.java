package pegbed.ui.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.findings.DepthProfile;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.session.Pegs;
import pegbed.ui.app.Desks;
import pegbed.ui.app.WindowViewModels;

class ProfileViewModelTest {
    @TempDir
    private Path folder;

    private WindowViewModels desk;
    private ProfileViewModel model;

    @BeforeEach
    void open() {
        desk = Desks.atOnce(folder, Pegs.plumbed(20));
        model = desk.profile();
    }

    private DepthProfile profile() {
        return model.profileProperty().get().orElseThrow();
    }

    @Test
    void itLooksWhereThePointerPoints() {
        desk.map().point(Place.polar(8, 30));
        assertEquals("Bottom 30° right (1:00)", model.titleProperty().get());
        assertEquals(30, profile().points().get(20).place().angleDegrees(), 1e-6);
        desk.map().point(new Place(0.1, 0.1));
        assertEquals(30, model.angleDegrees(), 1e-6);
    }

    @Test
    void aDrawnLineStaysUntilThePointerIsFollowedAgain() {
        model.along(new Place(-4, 6), new Place(4, 6));
        model.towards(45);
        assertTrue(model.drawn().isPresent());
        assertEquals(6, profile().points().get(10).place().yMetres(), 1e-9);
        model.followPointer();
        assertFalse(model.drawn().isPresent());
    }

    @Test
    void slopesAreSaidWithLipAndFoot() {
        model.towards(0.5);
        String words = model.slopesProperty().get();
        assertTrue(words.matches("1 in [0-9.]+ from .* at [0-9.]+ m down to .* at [0-9.]+ m.*\\."), words);
    }

    @Test
    void theTargetMovesWithoutAnotherProfile() {
        DepthProfile before = profile();
        desk.target().metresProperty().set(0.7);
        desk.target().metresProperty().set(0.9);
        assertSame(before, profile());
        desk.box().textProperty().set("s3 10R 5'1");
        assertTrue(desk.box().enter());
        assertNotSame(before, profile());
    }

    @Test
    void withoutAMapThereIsNoProfile() {
        desk.document().begin(Peg.EMPTY);
        assertTrue(model.profileProperty().get().isEmpty());
        assertEquals("", model.slopesProperty().get());
    }
}
