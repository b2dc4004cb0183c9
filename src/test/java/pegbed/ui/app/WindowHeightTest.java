package pegbed.ui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import javafx.geometry.Rectangle2D;
import org.junit.jupiter.api.Test;

class WindowHeightTest {
    @Test
    void theWindowStandsUprightWhereTheScreenDoes() {
        assertEquals(1280, PegbedApplication.height(new Rectangle2D(0, 0, 800, 1280)));
        assertEquals(600, PegbedApplication.height(new Rectangle2D(0, 0, 1024, 600)));
        assertEquals(740, PegbedApplication.height(new Rectangle2D(0, 0, 2560, 1440)));
    }
}
