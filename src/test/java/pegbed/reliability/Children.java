package pegbed.reliability;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Programs in processes of their own, quick to start. */
final class Children {
    private Children() {}

    static Process start(Class<?> program, String... arguments) throws IOException {
        return start(program, List.of(), arguments);
    }

    /** @param options of the Java machine */
    static Process start(Class<?> program, List<String> options, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xshare:auto",
                "-Xmx256m"));
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), program.getName()));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }
}
