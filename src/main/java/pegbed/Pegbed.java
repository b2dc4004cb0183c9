package pegbed;

import pegbed.cli.Cli;

/** Where the program starts. */
public final class Pegbed {
    private Pegbed() {}

    public static void main(String[] args) {
        System.exit(Cli.run(args, System.out, System.err));
    }
}
