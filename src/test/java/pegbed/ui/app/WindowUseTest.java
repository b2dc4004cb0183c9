package pegbed.ui.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The short form of {@link WindowUse}. */
@Tag("window")
class WindowUseTest extends InScenes {
    @Test
    void nothingGrowsWithUse() throws IOException {
        WindowUse.Result result = WindowUse.run(scenes, folder, 60, 1);
        assertEquals("", result.grown(), result::toString);
    }
}
