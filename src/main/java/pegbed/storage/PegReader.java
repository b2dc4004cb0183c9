package pegbed.storage;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import pegbed.model.InputException;
import pegbed.model.Peg;

/**
 * Reads the bytes of a peg file. A damaged one is read as far as it goes: what stands whole before a cut is kept; a line
 * that is not JSON is left out and the rest read; a value that can't be is left out, or the reading with it. Whatever
 * the bytes are, the answer is an {@link Opened} or an {@link InputException}.
 */
public final class PegReader {
    /** How many damaged lines are left out before the rest is given up. */
    private static final int MOST_MENDS = 50;

    /** Texts longer than this are not gone through again for each damaged line. */
    private static final int LONGEST_MENDED = 5_000_000;

    private final String name;
    private final String text;

    private PegReader(String name, String text) {
        this.name = name;
        this.text = text;
    }

    /**
     * Reads a peg.
     *
     * @param name what to call the file in sentences
     * @param bytes what it holds
     * @throws InputException if this is not a peg file, or one of a later version
     */
    public static Opened read(String name, byte[] bytes) throws InputException {
        refuseOtherEncodings(name, bytes);
        boolean marked =
                bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF;
        ByteBuffer in = ByteBuffer.wrap(bytes, marked ? 3 : 0, bytes.length - (marked ? 3 : 0));
        CharBuffer out = CharBuffer.allocate(in.remaining());
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        int badLetter = -1;
        for (CoderResult result = decoder.decode(in, out, true);
                result.isError();
                result = decoder.decode(in, out, true)) {
            badLetter = badLetter < 0 ? out.position() : badLetter;
            out.put('\uFFFD');
            in.position(in.position() + result.length());
        }
        return new PegReader(name, out.flip().toString()).read(Fingerprint.of(bytes), badLetter);
    }

    private static void refuseOtherEncodings(String name, byte[] bytes) throws InputException {
        if (bytes.length == 0) {
            throw new InputException(name + " is empty; a peg file is JSON text that starts with \"format\": \""
                    + PegWriter.FORMAT + "\".");
        }
        boolean hasText = false;
        for (byte each : bytes) {
            hasText |= each != 0;
        }
        if (!hasText) {
            throw new InputException(
                    name + " holds nothing but zero bytes, as a power cut can leave; take an earlier version from "
                            + SafeSave.EARLIER_FOLDER + ".");
        }
        int first = bytes[0] & 0xFF;
        int second = bytes.length > 1 ? bytes[1] & 0xFF : -1;
        if (first == 0xFE && second == 0xFF || first == 0xFF && second == 0xFE || first == 0 || second == 0) {
            throw new InputException(name + " is not UTF-8 text; a peg file is JSON in UTF-8, not UTF-16 or binary.");
        }
    }

    private Opened read(Fingerprint fingerprint, int badLetter) throws InputException {
        if (!text.stripLeading().startsWith("{")) {
            throw notAPeg();
        }
        Read read = draft();
        PegDraft draft = read.draft();
        Damage damage = read.damage();
        if (badLetter >= 0) {
            damage.add(badLetter, "Some letters here are not UTF-8, and stand as \uFFFD.");
        }
        String format = draft.top.words("format");
        if (!format.equals(PegWriter.FORMAT)) {
            if (draft.readings() == 0) {
                throw notAPeg();
            }
            draft.top.trouble("format must be \"" + PegWriter.FORMAT + "\".");
        }
        double version = draft.top.number("version").orElse(0);
        if (version > PegWriter.VERSION) {
            throw new InputException(name + " was written by a later Pegbed: it has version " + Numbers.text(version)
                    + ", and this Pegbed reads version " + PegWriter.VERSION + "; open it with the later one.");
        }
        if (version != PegWriter.VERSION) {
            draft.top.trouble("version must be " + PegWriter.VERSION + ".");
        }
        Peg peg = draft.peg();
        return damage.isEmpty()
                ? new Opened.Whole(peg, fingerprint)
                : new Opened.Recovered(peg, damage.where(), damage.why(), damage.lost(), fingerprint);
    }

    private InputException notAPeg() {
        return new InputException(name + " is not a peg file; one is JSON text that starts with \"format\": \""
                + PegWriter.FORMAT + "\".");
    }

    /** What was read, and what was wrong with it. */
    private record Read(PegDraft draft, Damage damage) {}

    /** Reads the text, and where it breaks reads it again without its broken lines; the fuller draft counts. */
    private Read draft() {
        Damage damage = new Damage(text);
        PegParser.Pass pass = PegParser.pass(Json.STRICT, text, damage);
        if (pass.breakage().isPresent()) {
            noteEnd(pass.breakage().get(), damage);
            if (!pass.breakage().get().atEnd() && text.length() <= LONGEST_MENDED) {
                Read mended = mended();
                if (mended.draft().readings() >= pass.draft().readings()) {
                    return mended;
                }
            }
        }
        return new Read(pass.draft(), damage);
    }

    /** Reads the text without the lines that are not JSON, found one after the other. */
    private Read mended() {
        Map<Integer, String> leftOut = new TreeMap<>();
        StringBuilder rest = new StringBuilder(text);
        while (true) {
            Damage damage = new Damage(text);
            leftOut.forEach((start, words) ->
                    damage.add(start, "This line is not JSON and was left out: " + Fields.shortened(words, 300)));
            PegParser.Pass pass = PegParser.pass(Json.MENDED, rest.toString(), damage);
            if (pass.breakage().isEmpty()) {
                return new Read(pass.draft(), damage);
            }
            PegParser.Breakage breakage = pass.breakage().get();
            Line line = line(breakage.line());
            if (breakage.atEnd()
                    || leftOut.size() == MOST_MENDS
                    || rest.substring(line.start(), line.end()).isBlank()) {
                noteEnd(breakage, damage);
                return new Read(pass.draft(), damage);
            }
            leftOut.put(line.start(), text.substring(line.start(), line.end()));
            rest.replace(line.start(), line.end(), " ".repeat(line.end() - line.start()));
        }
    }

    private void noteEnd(PegParser.Breakage breakage, Damage damage) {
        Line line = line(breakage.line());
        String words = Fields.shortened(text.substring(line.start(), line.end()), 300);
        damage.add(
                breakage.atEnd() ? line.end() : line.start(),
                breakage.atEnd()
                        ? "The file breaks off here, and what followed is lost. Its last words are: " + words
                        : "This is not JSON, and what follows is lost: " + words);
    }

    /**
     * A line of the text.
     *
     * @param start offset of its first letter
     * @param end offset behind its last letter
     */
    private record Line(int start, int end) {}

    /** The line of a number; the last one where there are not so many. A line ends as it does for the JSON parser. */
    private Line line(int number) {
        int start = 0;
        int current = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || (c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n'))) {
                if (current == number) {
                    return new Line(start, i);
                }
                current++;
                start = i + 1;
            }
        }
        return new Line(start, text.length());
    }
}
