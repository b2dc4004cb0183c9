package pegbed.reliability;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import pegbed.cli.Cli;

/** A program that gives {@code pegbed add PEG LINE} whenever it is told to. */
public final class AddingCommands {
    private AddingCommands() {}

    /**
     * For each line of standard input, a peg file and what to add, with a tab between, it runs one command, and prints
     * the exit status.
     */
    public static void main(String[] args) throws IOException {
        BufferedReader told = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        System.out.println("ready");
        for (String line = told.readLine(); line != null; line = told.readLine()) {
            String[] words = line.split("\t", -1);
            int status = Cli.run(new String[] {"add", words[0], words[1], "--json"}, System.err, System.err);
            System.out.println(status);
        }
    }
}
