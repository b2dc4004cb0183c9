package pegbed.reliability;

import java.nio.file.Path;
import java.util.Random;
import pegbed.session.Pegs;

/**
 * A program that works on a peg and prints a line for each step, until it is killed: {@code T state} for what it tries,
 * {@code C state} for what is confirmed, {@code M file} before it saves under another name and {@code D} or {@code S}
 * when that was done or refused, {@code R sentence} if the peg could not be opened.
 */
public final class EditingLife {
    private EditingLife() {}

    /**
     * Edits until it is killed.
     *
     * @param args the folder of the journals, the folder of the pegs, the file or {@code -} for none, the seed, and
     *     {@code fishing} if it is a day's log above all
     */
    public static void main(String[] args) {
        Path pegs = Path.of(args[1]);
        Random random = new Random(Long.parseLong(args[3]));
        RandomEditor editor =
                new RandomEditor(Path.of(args[0]), random, random.nextInt(3) == 0, new RandomEditor.Listener() {
                    @Override
                    public void tries(String state) {
                        say("T " + state);
                    }

                    @Override
                    public void confirms(String state) {
                        say("C " + state);
                    }

                    @Override
                    public void moves(Path to) {
                        say("M " + to);
                    }

                    @Override
                    public void moved(boolean done) {
                        say(done ? "D" : "S");
                    }
                });
        if (args.length > 4) {
            editor.fishing();
        }
        if (args[2].equals("-")) {
            editor.begin(Pegs.bare());
        } else if (!editor.open(Path.of(args[2]))) {
            say("R " + editor.refusals().get(0));
            return;
        }
        while (true) {
            if (random.nextInt(40) == 0) {
                editor.saveAs(pegs.resolve("peg" + random.nextInt(3) + ".peg.json"));
            } else {
                editor.step();
            }
        }
    }

    /** Says one line at once; whoever started this program and is gone has no use for more. */
    private static void say(String line) {
        System.out.println(line);
        if (System.out.checkError()) {
            System.exit(1);
        }
    }
}
