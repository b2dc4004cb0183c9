package pegbed.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * What a program that was started did.
 *
 * @param status exit status
 * @param out standard output
 * @param err standard error
 */
record Ended(int status, String out, String err) {
    /**
     * Starts a program and waits for its end, two minutes at most.
     *
     * @param folder where it is started
     * @param environment variables set for it
     */
    static Ended of(Path folder, Map<String, String> environment, List<String> command)
            throws IOException, InterruptedException {
        Path out = Files.createTempFile("pegbed", ".out");
        Path err = Files.createTempFile("pegbed", ".err");
        try {
            ProcessBuilder builder = new ProcessBuilder(command)
                    .directory(folder.toFile())
                    .redirectOutput(out.toFile())
                    .redirectError(err.toFile());
            builder.environment().putAll(environment);
            Process process = builder.start();
            if (!process.waitFor(2, TimeUnit.MINUTES)) {
                process.destroyForcibly();
                throw new IOException(command + " did not end.");
            }
            return new Ended(process.exitValue(), Files.readString(out), Files.readString(err));
        } finally {
            Files.delete(out);
            Files.delete(err);
        }
    }
}
