package pegbed.report.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CameraTest {
    private final Camera camera = new Camera();

    CameraTest() {
        camera.size(960, 480);
    }

    @Test
    void zoomingKeepsWhatIsUnderThePointer() {
        double x = camera.view().xMetres(700);
        double y = camera.view().yMetres(130);
        camera.zoom(2, 700, 130);
        assertEquals(x, camera.view().xMetres(700), 1e-9);
        assertEquals(y, camera.view().yMetres(130), 1e-9);
        assertFalse(camera.showsAll());
    }

    @Test
    void zoomingOutEndsAtAllOfThePeg() {
        View all = camera.view();
        camera.zoom(3, 100, 100);
        camera.zoom(0.01, 100, 100);
        assertTrue(camera.showsAll());
        assertEquals(all, camera.view());
    }

    @Test
    void panningMovesThePictureWithThePointer() {
        camera.zoom(3, 480, 240);
        double x = camera.view().xMetres(300);
        camera.pan(50, 0);
        assertEquals(x, camera.view().xMetres(350), 1e-9);
    }

    @Test
    void theWaterCanNotBeLostFromSight() {
        camera.zoom(3, 480, 240);
        for (int i = 0; i < 100; i++) {
            camera.pan(500, 500);
        }
        assertTrue(camera.view().xMetres(480) >= -16 - 1e-9);
        assertTrue(camera.view().yMetres(240) <= 17 + 1e-9);
    }

    @Test
    void anotherSizeShowsAllAgain() {
        camera.size(480, 480);
        View view = camera.view();
        assertTrue(view.x(-16) >= 0 && view.x(16) <= 480);
    }
}
