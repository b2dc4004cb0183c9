package pegbed.storage.peg;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pegbed.model.InputException;
import pegbed.model.Peg;

/**
 * Reads the bytes of a peg file. A damaged one is read as far as it goes: what stands whole before a cut is kept; where
 * the JSON breaks in the middle, the file is read line by line without the broken ones; a value that can't be is left
 * out, or the reading with it. Whatever the bytes are, the answer is an {@link Opened} or an {@link InputException}.
 */
public final class PegReader {
    private static final Pattern READING = Pattern.compile("\"distance_m\"[^{}]{0,400}?\"depth_m\"");

    /** The folder beside a peg file in which its earlier versions lie. */
    public static final String EARLIER_FOLDER = ".pegbed-earlier";

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
        return read(name, bytes, Fingerprint.of(bytes));
    }

    /**
     * As {@link #read(String, byte[])}, where what tells that the file has changed is known or does not matter.
     *
     * @throws InputException if this is not a peg file, or one of a later version
     */
    public static Opened read(String name, byte[] bytes, Fingerprint fingerprint) throws InputException {
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
        return new PegReader(name, out.flip().toString()).read(fingerprint, badLetter);
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
                            + EARLIER_FOLDER + ".");
        }
        int first = bytes[0] & 0xFF;
        int second = bytes.length > 1 ? bytes[1] & 0xFF : -1;
        if ((first == 0xFE && second == 0xFF) || (first == 0xFF && second == 0xFE) || first == 0 || second == 0) {
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
            throw new InputException(name + " was written by a later Pegbed: it has version " + NumberText.text(version)
                    + ", and this Pegbed reads version " + PegWriter.VERSION + "; open it with the later one.");
        }
        if (version != PegWriter.VERSION) {
            draft.top.trouble("version must be " + PegWriter.VERSION + ".");
        }
        Peg peg = draft.peg();
        return damage.isEmpty()
                ? new Opened.Whole(peg, fingerprint)
                : new Opened.Recovered(peg, damage.where(), damage.why(), damage.lost(), begun(), fingerprint);
    }

    /** How many readings the text begins: they alone have a distance and then a depth. */
    private int begun() {
        int begun = 0;
        for (Matcher reading = READING.matcher(text); reading.find(); ) {
            begun++;
        }
        return begun;
    }

    private InputException notAPeg() {
        return new InputException(name + " is not a peg file; one is JSON text that starts with \"format\": \""
                + PegWriter.FORMAT + "\".");
    }

    /** What was read, and what was wrong with it. */
    private record Read(PegDraft draft, Damage damage) {}

    /** Reads the text as JSON, and where it breaks reads it once more line by line; the fuller draft counts. */
    private Read draft() {
        Damage damage = new Damage(text);
        PegParser.Pass pass = PegParser.pass(text, damage);
        if (pass.breakage().isPresent()) {
            noteEnd(pass.breakage().get(), damage);
            Damage damageOfLines = new Damage(text);
            PegDraft byLines = new DamagedFileReader(text, damageOfLines).draft();
            if (byLines.size() > pass.draft().size()) {
                return new Read(byLines, damageOfLines);
            }
        }
        return new Read(pass.draft(), damage);
    }

    private void noteEnd(PegParser.Breakage breakage, Damage damage) {
        LineCounter.Line line = LineCounter.line(text, breakage.line());
        String words = Fields.shortened(text.substring(line.start(), line.end()), 300);
        damage.add(
                breakage.atEnd() ? line.end() : line.start(),
                breakage.atEnd()
                        ? "The file breaks off here, and what followed is lost. Its last words are: " + words
                        : "This is not JSON, and what follows is lost: " + words);
    }
}
