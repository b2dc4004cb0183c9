package pegbed.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * What one command did.
 *
 * @param status exit status
 * @param out standard output
 * @param err standard error
 */
record Ran(int status, String out, String err) {
    /** The program's own folder of somebody who has kept nothing there. */
    private static final Path NOTHING_KEPT = Path.of("target", "nothing-kept");

    static Ran pegbed(Object... words) {
        return by(NOTHING_KEPT, words);
    }

    /** @param ownFolder the program's own folder */
    static Ran by(Path ownFolder, Object... words) {
        return running((args, out, err) -> Cli.run(args, out, err, ownFolder), words);
    }

    /** By a command line that knows all options of all commands. */
    static Ran knowingEverything(Object... words) {
        return running((args, out, err) -> Cli.run(Cli.everything(NOTHING_KEPT), args, out, err, NOTHING_KEPT), words);
    }

    private interface Run {
        int run(String[] args, PrintStream out, PrintStream err);
    }

    private static Ran running(Run run, Object... words) {
        String[] args = new String[words.length];
        for (int i = 0; i < args.length; i++) {
            args[i] = words[i].toString();
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = run.run(
                args,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Ran(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
