package pegbed.ui.app;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A test in real scenes, with a folder of its own; the window is closed when the test is over. */
public abstract class InScenes {
    @TempDir
    public Path folder;

    public Scenes scenes;

    @BeforeAll
    static void toolkit() {
        Scenes.startToolkit();
    }

    @BeforeEach
    void scenes() {
        scenes = new Scenes(folder.resolve("own"));
    }

    @AfterEach
    void close() {
        scenes.close();
    }
}
