package pegbed;

import pegbed.cli.Cli;
import pegbed.model.InputException;
import pegbed.ui.Window;

/** Where the program starts. */
public final class Pegbed {
    private Pegbed() {}

    public static void main(String[] args) {
        System.exit(args.length == 0 ? window() : Cli.run(args, System.out, System.err));
    }

    private static int window() {
        try {
            Window.open();
            return 0;
        } catch (InputException e) {
            System.err.println(e.getMessage());
            return 2;
        }
    }
}
