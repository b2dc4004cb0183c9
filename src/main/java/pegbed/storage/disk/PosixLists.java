package pegbed.storage.disk;

import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/**
 * POSIX access control lists, such as {@code setfacl} makes (the withdrawn POSIX.1e, draft 17, which Linux follows).
 * The Java runtime has no call for them, so that GNU {@code cp} copies them. Where {@code setfacl} is not installed
 * nobody has made such a list, as a rule, and no process is started.
 */
final class PosixLists {
    private static final Path MAKER = Path.of("/usr/bin/setfacl");
    private static final Path COPIER = Path.of("/bin/cp");
    private static final long PATIENCE_SECONDS = 5;

    private PosixLists() {}

    /** Whether lists can be copied here. */
    static boolean known() {
        return Files.isExecutable(MAKER) && Files.isExecutable(COPIER);
    }

    /** Gives a file the list and the permissions of another, or leaves it as it is where that fails. */
    static void copy(Path from, Path to) {
        if (!known()) {
            return;
        }
        Process copying = null;
        try {
            copying = new ProcessBuilder(
                            COPIER.toString(),
                            "--attributes-only",
                            "--preserve=mode",
                            "--",
                            from.toAbsolutePath().toString(),
                            to.toAbsolutePath().toString())
                    .redirectOutput(Redirect.DISCARD)
                    .redirectError(Redirect.DISCARD)
                    .start();
            copying.getOutputStream().close();
            copying.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (IOException noSuchCommand) {
            // The permissions are set; a list is more than this system can keep.
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } finally {
            if (copying != null) {
                copying.destroy();
            }
        }
    }
}
