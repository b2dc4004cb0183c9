package pegbed.cli.output;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.Locale;

/**
 * Shows signs that would command a terminal, or turn round the direction of what follows, as their Unicode escapes such
 * as {@code \\u001b}: names and notes come from files that others wrote. Line ends and tabs pass.
 */
public final class EscapingWriter extends FilterWriter {
    public EscapingWriter(Writer out) {
        super(out);
    }

    @Override
    public void write(int sign) throws IOException {
        if (commands((char) sign)) {
            out.write(String.format(Locale.ROOT, "\\u%04x", sign));
        } else {
            out.write(sign);
        }
    }

    @Override
    public void write(char[] signs, int from, int length) throws IOException {
        write(new String(signs, from, length), 0, length);
    }

    @Override
    public void write(String words, int from, int length) throws IOException {
        int plain = from;
        for (int at = from; at < from + length; at++) {
            if (commands(words.charAt(at))) {
                out.write(words, plain, at - plain);
                write(words.charAt(at));
                plain = at + 1;
            }
        }
        out.write(words, plain, from + length - plain);
    }

    /**
     * Control characters (C0, DEL, C1) but line ends and tabs; directional embeddings, overrides and isolates (UAX #9).
     */
    private static boolean commands(char sign) {
        boolean layout = sign == '\n' || sign == '\r' || sign == '\t';
        return (Character.isISOControl(sign) && !layout)
                || (sign >= '\u202A' && sign <= '\u202E')
                || (sign >= '\u2066' && sign <= '\u2069');
    }
}
