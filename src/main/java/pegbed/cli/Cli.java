package pegbed.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import pegbed.model.InputException;
import pegbed.storage.Folders;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/**
 * The command line. Exit status: 0 done, 1 the answer is no, 2 bad input with one sentence on standard error.
 */
@Command(
        name = "pegbed",
        mixinStandardHelpOptions = true,
        version = "pegbed 0.1.0",
        description = "Maps the bottom of a fishing peg from plumbed readings.",
        footer = {"", "A peg map is for choosing where to fish. It is not for navigation, swimming, wading or building."
        },
        subcommands = {
            NewCommand.class,
            AddCommand.class,
            LinesCommand.class,
            DepthsCommand.class,
            NextCommand.class,
            LevelCommand.class,
            CompareCommand.class,
            ShelfCommand.class,
            CheckCommand.class,
            MapCommand.class,
            CardCommand.class,
            BenchCommand.class
        })
public final class Cli {
    /** Bad input. */
    public static final int BAD_INPUT = 2;

    /** The answer is no. */
    public static final int NO = 1;

    private final Path ownFolder;

    private Cli(Path ownFolder) {
        this.ownFolder = ownFolder;
    }

    /** The program's own folder. */
    Path ownFolder() {
        return ownFolder;
    }

    /** Runs one command and returns its exit status. */
    public static int run(String[] args, PrintStream out, PrintStream err) {
        return run(args, out, err, Folders.own());
    }

    /**
     * Runs one command with another program's folder, such as a test's.
     *
     * @param ownFolder the program's own folder, see {@link Folders}
     */
    public static int run(String[] args, PrintStream out, PrintStream err, Path ownFolder) {
        CommandLine line = new CommandLine(new Cli(ownFolder));
        line.setOut(new PrintWriter(out, true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(err, true, StandardCharsets.UTF_8));
        line.setParameterExceptionHandler((e, words) -> {
            e.getCommandLine()
                    .getErr()
                    .println(Sentences.whole(e.getMessage()) + " See "
                            + e.getCommandLine().getCommandSpec().qualifiedName() + " --help.");
            return BAD_INPUT;
        });
        line.setExecutionExceptionHandler((e, command, result) -> {
            if (e instanceof InputException) {
                command.getErr().println(e.getMessage());
                return BAD_INPUT;
            }
            throw e;
        });
        int status = line.execute(args);
        line.getOut().flush();
        return status;
    }
}
