package pegbed.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * Writes what a system keeps beside a command: its manual page (man(7), from picocli's model of the commands) and its
 * completion for bash (by picocli).
 */
public final class CommandFiles {
    private CommandFiles() {}

    /**
     * Writes {@code pegbed.1} and {@code pegbed.bash}.
     *
     * @param args the folder to write into, the version, the day as yyyy-mm-dd
     */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        CommandLine all = Cli.everything(folder);
        Files.writeString(folder.resolve("pegbed.1"), manual(all, args[1], args[2]));
        Files.writeString(folder.resolve("pegbed.bash"), AutoComplete.bash("pegbed", all));
    }

    static String manual(CommandLine all, String version, String day) {
        StringBuilder page = new StringBuilder();
        page.append(".TH PEGBED 1 \"")
                .append(day)
                .append("\" \"pegbed ")
                .append(version)
                .append("\" \"User commands\"\n");
        page.append(".SH NAME\npegbed \\- maps the bottom of a fishing peg from plumbed readings\n");
        page.append(
                ".SH SYNOPSIS\n.B pegbed\n[\\fIPEG.peg.json\\fR]\n.br\n.B pegbed\n\\fICOMMAND\\fR [\\fIOPTION\\fR]...\n");
        page.append(".SH DESCRIPTION\nWithout a command, or with a peg file alone, it opens the window.\n");
        page.append(".SH COMMANDS\n");
        all.getSubcommands().forEach((name, command) -> {
            page.append(".SS ").append(roff(name)).append('\n');
            page.append(roff(String.join(
                            " ", command.getCommandSpec().usageMessage().description())))
                    .append('\n');
            for (PositionalParamSpec word : command.getCommandSpec().positionalParameters()) {
                entry(page, "\\fI" + roff(word.paramLabel()) + "\\fR", word);
            }
            for (OptionSpec option : command.getCommandSpec().options()) {
                String label = option.arity().max() == 0 ? "" : " \\fI" + roff(option.paramLabel()) + "\\fR";
                entry(page, "\\fB" + roff(String.join(", ", option.names())) + "\\fR" + label, option);
            }
        });
        page.append(
                ".SH EXIT STATUS\n0 done, 1 the answer is no, 2 bad input or an error of the program's own, 141 where the"
                        + " reader of standard output has ended.\n");
        page.append(".SH CAUTIONS\n")
                .append(roff(
                        String.join(" ", all.getCommandSpec().usageMessage().footer())))
                .append('\n');
        return page.toString();
    }

    private static void entry(StringBuilder page, String title, ArgSpec spec) {
        page.append(".TP\n").append(title).append('\n');
        page.append(roff(String.join(" ", spec.description()))).append('\n');
    }

    /** A text in which nothing is a request or an escape of roff. */
    private static String roff(String text) {
        String plain = text.replace("\\", "\\e")
                .replace("-", "\\-")
                .replace("%n", " ")
                .replace("%%", "%")
                .strip();
        return plain.startsWith(".") || plain.startsWith("'") ? "\\&" + plain : plain;
    }
}
