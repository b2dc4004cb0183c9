package pegbed.phone.page;

import org.teavm.jso.JSBody;
import org.teavm.jso.JSExport;
import org.teavm.jso.JSObject;
import pegbed.model.InputException;
import pegbed.phone.Conversation;
import pegbed.phone.PegAnswers;

/** What a worker of the page may call. Texts go in and out; a refusal begins with {@code !}. */
public final class Core {
    private static final Conversation CONVERSATION = new Conversation();

    private Core() {}

    public static void main(String[] words) {
        // The page's worker calls the functions below.
    }

    /** One request of the page, one answer; see {@link Conversation}. */
    @JSExport
    public static String ask(String request) {
        return CONVERSATION.ask(request);
    }

    /**
     * Paints the open peg's map.
     *
     * @param canvas an OffscreenCanvas of width × density by height × density pixels
     * @param width CSS pixels
     * @param height CSS pixels
     * @param density pixels for a CSS pixel
     * @param options see {@link Conversation#paint}
     */
    @JSExport
    public static String paint(JSObject canvas, double width, double height, double density, String options) {
        CanvasPainter painter = new CanvasPainter(canvas, density);
        return CONVERSATION.paint(painter, width, height, options, painter);
    }

    /**
     * Paints the day's fishing; the canvas gets its size.
     *
     * @param canvas an OffscreenCanvas
     * @param width CSS pixels
     * @param density pixels for a CSS pixel
     * @param options see {@link Conversation#paintDay}
     */
    @JSExport
    public static String paintDay(JSObject canvas, double width, double density, String options) {
        return CONVERSATION.paintDay(
                height -> {
                    size(canvas, Math.ceil(width * density), Math.ceil(height * density));
                    return new CanvasPainter(canvas, density);
                },
                width,
                options,
                new CanvasPainter(canvas, density));
    }

    @JSBody(
            params = {"canvas", "width", "height"},
            script = "canvas.width = width; canvas.height = height;")
    private static native void size(JSObject canvas, double width, double height);

    /** The numbers of a peg, separated by blanks, each as the shortest text that reads back as itself. */
    @JSExport
    public static String numbers(String peg) {
        try {
            StringBuilder all = new StringBuilder();
            PegAnswers.of(peg).numbers().forEach(number -> all.append(number).append(' '));
            return all.toString().strip();
        } catch (InputException refused) {
            return "!" + refused.getMessage();
        }
    }

    /** The sentences of a peg, one a line. */
    @JSExport
    public static String words(String peg) {
        try {
            return String.join("\n", PegAnswers.of(peg).words());
        } catch (InputException refused) {
            return "!" + refused.getMessage();
        }
    }

    /** The peg as it would be written to a file. */
    @JSExport
    public static String text(String peg) {
        try {
            return PegAnswers.of(peg).text();
        } catch (InputException refused) {
            return "!" + refused.getMessage();
        }
    }

    /** How a typed line is understood at a peg, or why not. */
    @JSExport
    public static String understood(String peg, String typed) {
        try {
            return PegAnswers.understood(peg, typed);
        } catch (InputException refused) {
            return "!" + refused.getMessage();
        }
    }
}
