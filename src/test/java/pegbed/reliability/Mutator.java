package pegbed.reliability;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Makes hostile texts out of honest ones. The same seed makes the same text. */
final class Mutator {
    /** Sizes of what is repeated or long: most are small, so that a run gets through. */
    private static final int SMALL = 2_000;

    private static final int MIDDLING = 200_000;

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
    private static final Pattern TEXT = Pattern.compile("\"[^\"\n]*\"");

    private static final List<String> NUMBERS = List.of(
            "1e999",
            "-1e999",
            "1e-999",
            "-0",
            "0.0",
            "NaN",
            "Infinity",
            "9".repeat(400),
            "0." + "1".repeat(2000),
            "1E+308",
            "4.9e-324",
            "-1",
            "2147483648",
            "9223372036854775808",
            "1,5",
            "0x10",
            "1_000",
            "١٢",
            "1e",
            "--1");

    private static final List<String> TEXTS = List.of(
            "",
            "\u0000",
            "\\u0000",
            "\\uD800",
            "\uD800",
            "\uDFFF\uD800",
            "\uFEFF",
            "\u202E",
            "../../../etc/passwd",
            "C:\\\\CON",
            "NUL",
            "a/b",
            "~",
            "%s%n%x",
            "${x}",
            "<script>alert(1)</script>",
            "]]>",
            "&amp;",
            "=1+1",
            "-2+3",
            "@SUM(A1)",
            "'; DROP",
            "\\\"",
            "\\",
            "\"",
            "\r",
            "\n",
            "\r\n",
            "\t",
            "\u2028",
            "é",
            "\uD83D\uDC1F");

    private static final List<String> STRUCTURES = List.of(
            "{", "}", "[", "]", ",", ":", "\"", "null", "true", "[]", "{}", "{\"a\":", "[[[[", "]]]]", ";", "/*");

    private final List<byte[]> corpus;
    private final int longest;

    /**
     * @param corpus honest texts
     * @param longest of the texts made, bytes; the rare huge ones come up to it
     */
    Mutator(List<byte[]> corpus, int longest) {
        this.corpus = corpus;
        this.longest = longest;
    }

    byte[] make(long seed) {
        Random random = new Random(seed * 0x9E3779B97F4A7C15L);
        byte[] bytes = pick(corpus, random);
        for (int i = 1 + random.nextInt(4); i > 0; i--) {
            bytes = changed(bytes, random);
            bytes = bytes.length > longest ? Arrays.copyOf(bytes, longest) : bytes;
        }
        return bytes;
    }

    private byte[] changed(byte[] bytes, Random random) {
        return switch (random.nextInt(16)) {
            case 0, 1 -> flipped(bytes, random);
            case 2 -> spliced(bytes, random, new byte[] {(byte) random.nextInt(256)}, 0);
            case 3 -> spliced(bytes, random, new byte[0], random.nextInt(100));
            case 4 -> Arrays.copyOf(bytes, random.nextInt(bytes.length + 1));
            case 5 -> repeated(bytes, random);
            case 6 -> lineTwice(bytes, random);
            case 7, 8 -> replaced(bytes, NUMBER, pick(NUMBERS, random), random);
            case 9, 10 -> replaced(bytes, TEXT, "\"" + pick(TEXTS, random) + "\"", random);
            case 11 -> spliced(bytes, random, utf8(pick(TEXTS, random)), 0);
            case 12 -> spliced(bytes, random, utf8(pick(STRUCTURES, random)), random.nextInt(3));
            case 13 -> spliced(bytes, random, pieceOf(pick(corpus, random), random), random.nextInt(40));
            case 14 -> random.nextInt(10) > 0 ? longRow(bytes, random) : encoded(bytes, random);
            default -> nested(bytes, random);
        };
    }

    private static byte[] flipped(byte[] bytes, Random random) {
        byte[] flipped = bytes.clone();
        for (int i = 1 + random.nextInt(6); i > 0 && flipped.length > 0; i--) {
            flipped[random.nextInt(flipped.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return flipped;
    }

    /** Other bytes in the place of some. */
    private static byte[] spliced(byte[] bytes, Random random, byte[] in, int removed) {
        int at = random.nextInt(bytes.length + 1);
        return spliced(bytes, at, Math.min(at + removed, bytes.length), in);
    }

    private static byte[] spliced(byte[] bytes, int from, int to, byte[] in) {
        byte[] spliced = Arrays.copyOf(bytes, from + in.length + bytes.length - to);
        System.arraycopy(in, 0, spliced, from, in.length);
        System.arraycopy(bytes, to, spliced, from + in.length, bytes.length - to);
        return spliced;
    }

    /** How many letters something long has. */
    private int length(Random random) {
        int kind = random.nextInt(50_000);
        int most = kind == 0 ? longest : kind < 200 ? MIDDLING : SMALL;
        return 1 + random.nextInt(Math.min(most, longest));
    }

    private byte[] repeated(byte[] bytes, Random random) {
        byte[] piece = pieceOf(bytes, random);
        int times = piece.length == 0 ? 0 : 1 + length(random) / piece.length;
        return spliced(bytes, random, many(piece, times), 0);
    }

    private static byte[] many(byte[] piece, int times) {
        byte[] many = new byte[piece.length * times];
        for (int i = 0; i < times; i++) {
            System.arraycopy(piece, 0, many, i * piece.length, piece.length);
        }
        return many;
    }

    private static byte[] pieceOf(byte[] bytes, Random random) {
        int from = random.nextInt(bytes.length + 1);
        return Arrays.copyOfRange(bytes, from, Math.min(bytes.length, from + random.nextInt(120)));
    }

    /** A line twice, or very often. */
    private byte[] lineTwice(byte[] bytes, Random random) {
        int from = bytes.length == 0 ? 0 : random.nextInt(bytes.length);
        while (from > 0 && bytes[from - 1] != '\n') {
            from--;
        }
        int to = from;
        while (to < bytes.length && bytes[to] != '\n') {
            to++;
        }
        byte[] line = Arrays.copyOfRange(bytes, from, Math.min(bytes.length, to + 1));
        int times = line.length == 0 || random.nextInt(4) > 0 ? 1 : 1 + length(random) / line.length;
        return spliced(bytes, from, from, many(line, times));
    }

    private static byte[] replaced(byte[] bytes, Pattern what, String by, Random random) {
        if (bytes.length > MIDDLING) {
            return bytes;
        }
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        List<MatchResult> found = new ArrayList<>(what.matcher(text).results().toList());
        if (found.isEmpty()) {
            return spliced(bytes, random, utf8(by), 0);
        }
        MatchResult one = found.get(random.nextInt(found.size()));
        return spliced(bytes, one.start(), one.end(), utf8(by));
    }

    /** A long text, digit row or blank. */
    private byte[] longRow(byte[] bytes, Random random) {
        byte[] letter = utf8(pick(List.of("a", "9", " ", "\n", "é", "'", ",", "0", "\uD83D\uDC1F", "-", "\""), random));
        return spliced(bytes, random, many(letter, 1 + length(random) / letter.length), 0);
    }

    private byte[] nested(byte[] bytes, Random random) {
        String piece = pick(List.of("[", "{\"a\":", "[{\"a\":[", "(", "{\"visits\": [", "[["), random);
        int depth = 1 + length(random) / piece.length();
        byte[] open = many(utf8(piece), depth);
        return spliced(bytes, random, random.nextBoolean() ? open : both(open, many(utf8("]"), depth)), 0);
    }

    private static byte[] both(byte[] a, byte[] b) {
        return spliced(a, a.length, a.length, b);
    }

    private static byte[] encoded(byte[] bytes, Random random) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        return switch (random.nextInt(4)) {
            case 0 -> text.getBytes(StandardCharsets.UTF_16);
            case 1 -> text.getBytes(StandardCharsets.UTF_16LE);
            case 2 -> text.getBytes(StandardCharsets.ISO_8859_1);
            default -> both(new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF}, bytes);
        };
    }

    /** UTF-8; half of a pair in the three bytes that it would have if it had any. */
    private static byte[] utf8(String text) {
        StringBuilder bytes = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean pair = Character.isHighSurrogate(c)
                    && i + 1 < text.length()
                    && Character.isLowSurrogate(text.charAt(i + 1));
            if (Character.isSurrogate(c) && !pair) {
                bytes.append((char) (0xE0 | (c >> 12)))
                        .append((char) (0x80 | ((c >> 6) & 63)))
                        .append((char) (0x80 | (c & 63)));
            } else {
                String letter = pair ? text.substring(i, ++i + 1) : String.valueOf(c);
                bytes.append(new String(letter.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1));
            }
        }
        return bytes.toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    private static <T> T pick(List<T> list, Random random) {
        return list.get(random.nextInt(list.size()));
    }
}
