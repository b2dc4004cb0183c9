package pegbed.phone.standin;

/** What {@code String.format} becomes in the page; see {@link Messages}. */
public final class Inserted {
    private Inserted() {}

    /** The arguments in the places of a format's parts, in order. */
    public static String into(String format, Object[] arguments) {
        StringBuilder out = new StringBuilder();
        int next = 0;
        int i = 0;
        while (i < format.length()) {
            char letter = format.charAt(i++);
            if (letter != '%') {
                out.append(letter);
                continue;
            }
            while (i < format.length() - 1 && !isConversion(format.charAt(i))) {
                i++;
            }
            char conversion = i < format.length() ? format.charAt(i++) : '%';
            if (conversion == '%') {
                out.append('%');
            } else if (conversion == 'n') {
                out.append('\n');
            } else {
                out.append(next < arguments.length ? arguments[next++] : "");
            }
        }
        return out.toString();
    }

    private static boolean isConversion(char letter) {
        return letter == '%' || (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z');
    }
}
