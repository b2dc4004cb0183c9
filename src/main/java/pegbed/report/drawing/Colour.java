package pegbed.report.drawing;

/**
 * A colour in sRGB.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 * @param opacity 0 (nothing) to 1 (full)
 */
public record Colour(int red, int green, int blue, double opacity) {
    public Colour {
        if (red < 0 || red > 255 || green < 0 || green > 255 || blue < 0 || blue > 255) {
            throw new IllegalArgumentException("Red, green and blue go from 0 to 255.");
        }
        if (!(opacity >= 0 && opacity <= 1)) {
            throw new IllegalArgumentException("Opacity goes from 0 to 1, not " + opacity + ".");
        }
    }

    /** A full colour from 0xRRGGBB. */
    public static Colour of(int rgb) {
        return new Colour(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255, 1);
    }

    public Colour withOpacity(double other) {
        return new Colour(red, green, blue, other);
    }

    /** As in SVG and CSS, such as {@code #1b3a57}, without the opacity. */
    public String hex() {
        return "#" + hex(red) + hex(green) + hex(blue);
    }

    private static String hex(int part) {
        return (part < 16 ? "0" : "") + Integer.toHexString(part);
    }
}
