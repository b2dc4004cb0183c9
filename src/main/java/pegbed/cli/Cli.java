package pegbed.cli;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import pegbed.cli.output.EscapingWriter;
import pegbed.cli.output.StandardOutput;
import pegbed.model.InputException;
import pegbed.storage.disk.Folders;
import pegbed.storage.disk.ProgramLog;
import pegbed.wording.Caution;
import pegbed.wording.Sentences;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;

/**
 * The command line. Exit status: 0 done, 1 the answer is no, 2 bad input, or an error of the program's own, with a
 * sentence on standard error.
 */
@Command(
        name = "pegbed",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Maps the bottom of a fishing peg from plumbed readings.",
        footer = {"", Caution.PURPOSE_SHORT})
public final class Cli {
    /** Bad input. */
    public static final int BAD_INPUT = 2;

    private static final String FAILURE = "This command stopped at an error of the program's own";

    private static final String LOST_OUTPUT =
            "Not all of the answer could be written to standard output: its disk is full,"
                    + " or it is closed. What the command was to do to files is done.";

    /** What reads standard output has ended, as head does; so end the common tools, by SIGPIPE (128 + 13). */
    private static final int READER_GONE = 141;

    /** The answer is no. */
    public static final int NO = 1;

    /** By the names that their annotations give them too. */
    private static final Map<String, Supplier<Object>> COMMANDS = new LinkedHashMap<>();

    static {
        COMMANDS.put("new", NewCommand::new);
        COMMANDS.put("add", AddCommand::new);
        COMMANDS.put("lines", LinesCommand::new);
        COMMANDS.put("depths", DepthsCommand::new);
        COMMANDS.put("next", NextCommand::new);
        COMMANDS.put("level", LevelCommand::new);
        COMMANDS.put("compare", CompareCommand::new);
        COMMANDS.put("shelf", ShelfCommand::new);
        COMMANDS.put("check", CheckCommand::new);
        COMMANDS.put("day", DayCommand::new);
        COMMANDS.put("map", MapCommand::new);
        COMMANDS.put("card", CardCommand::new);
        COMMANDS.put("phone", PhoneCommand::new);
        COMMANDS.put("export", ExportCommand::new);
        COMMANDS.put("import", ImportCommand::new);
        COMMANDS.put("position", PositionCommand::new);
        COMMANDS.put("bench", BenchCommand::new);
    }

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
        return run(lineFor(args, ownFolder), args, out, err, ownFolder);
    }

    /** Runs one command of a command line; an error that nobody expected is in the log, which a sentence names. */
    static int run(CommandLine line, String[] args, PrintStream out, PrintStream err, Path ownFolder) {
        line.setOut(escaping(out));
        line.setErr(escaping(err));
        // A word that begins with @ is a mark or a name, never a file of further arguments.
        line.setExpandAtFiles(false);
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
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
            return unexpected(e, command.getErr(), ownFolder);
        });
        int status;
        try {
            status = line.execute(args);
        } catch (Throwable e) {
            status = unexpected(e, line.getErr(), ownFolder);
        }
        line.getOut().flush();
        if (out.checkError()) {
            if (out instanceof StandardOutput standard && standard.readerHasGone()) {
                return READER_GONE;
            }
            line.getErr().println(LOST_OUTPUT);
            return BAD_INPUT;
        }
        return status;
    }

    private static PrintWriter escaping(PrintStream stream) {
        return new PrintWriter(new EscapingWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8)), true);
    }

    private static int unexpected(Throwable e, PrintWriter err, Path ownFolder) {
        err.println(new ProgramLog(ownFolder).report(FAILURE, e));
        err.flush();
        return BAD_INPUT;
    }

    /** All commands, for what describes them. */
    static CommandLine everything(Path ownFolder) {
        return line(ownFolder, COMMANDS.keySet(), Set.of());
    }

    /**
     * Knows the options of the command that is asked for alone, which is much quicker than those of all; of the others
     * no more than a list of commands or a refusal tells, and nothing at all where the first word is a command.
     */
    private static CommandLine lineFor(String[] args, Path ownFolder) {
        if (args.length > 0 && COMMANDS.containsKey(args[0])) {
            return line(ownFolder, Set.of(args[0]), Set.of());
        }
        Set<String> asked = new HashSet<>(COMMANDS.keySet());
        asked.retainAll(Arrays.asList(args));
        return line(ownFolder, asked, COMMANDS.keySet());
    }

    /**
     * @param whole the commands with all their options
     * @param named the commands of which the name and the description are enough
     */
    private static CommandLine line(Path ownFolder, Set<String> whole, Set<String> named) {
        CommandLine line = new CommandLine(new Cli(ownFolder));
        COMMANDS.forEach((name, made) -> {
            if (whole.contains(name)) {
                line.addSubcommand(name, made.get());
            } else if (named.contains(name)) {
                line.addSubcommand(name, description(made.get()));
            }
        });
        line.registerConverter(WholeNumber.class, WholeNumber::new);
        return line;
    }

    private static CommandSpec description(Object command) {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage()
                .description(command.getClass().getAnnotation(Command.class).description());
        return spec;
    }
}
