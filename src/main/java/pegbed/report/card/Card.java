package pegbed.report.card;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pegbed.model.InputException;
import pegbed.plan.Plan;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Theme;
import pegbed.report.map.Heading;
import pegbed.report.paint.LetterOutlines;
import pegbed.report.paint.PdfFonts;
import pegbed.report.paint.PdfWriter;
import pegbed.report.paint.PngWriter;
import pegbed.report.paint.SvgWriter;

/**
 * The card of a plan as a file: lines, rigs, map and cautions. The same plan gives the same bytes (a PNG with the same
 * fonts).
 */
public final class Card {
    /** 200 dots an inch. */
    private static final double PIXELS_PER_POINT = 200 / 72.0;

    private static final String PNG = ".png";
    private static final String SVG = ".svg";

    private Card() {}

    /**
     * One A5 page, vector, with its own letters, on white.
     *
     * @param fishing a second page; empty for none
     */
    public static byte[] pdf(Plan plan, Optional<DayPage> fishing, Theme theme) {
        PdfFonts fonts = new PdfFonts();
        List<Drawing> pages = new ArrayList<>();
        pages.add(CardDrawing.of(plan, fonts));
        fishing.map(page -> page.drawing(fonts)).ifPresent(pages::add);
        return PdfWriter.write(pages, new OnWhite(theme), title(plan), fonts);
    }

    /** The A5 page in memory, 200 dots an inch, to be looked at or printed. */
    public static BufferedImage picture(Plan plan, Theme theme) {
        return PngWriter.image(CardDrawing.of(plan, LetterOutlines.MEASURE), theme, PIXELS_PER_POINT);
    }

    /** The A5 page as a PNG file of 200 dots an inch. */
    public static byte[] png(Plan plan, Theme theme) {
        return PngWriter.write(CardDrawing.of(plan, LetterOutlines.MEASURE), theme, PIXELS_PER_POINT);
    }

    /** The A5 page as SVG. */
    public static byte[] svg(Plan plan, Theme theme) {
        return SvgWriter.write(CardDrawing.of(plan, LetterOutlines.MEASURE), theme, title(plan), 1);
    }

    /** A page for a phone in one file, light and dark, that needs no network. */
    public static byte[] html(Plan plan, Optional<DayPage> fishing) {
        return HtmlCard.of(plan, fishing).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * The card as the kind of file that a name asks for.
     *
     * @param name ends in {@code .pdf}, {@code .png}, {@code .svg} or {@code .html}
     * @param fishing the fishing of the peg, for PDF and HTML, which have room for it
     * @throws InputException if it ends in anything else
     */
    public static byte[] file(String name, Plan plan, Optional<DayPage> fishing, Theme theme) throws InputException {
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.endsWith(".pdf")) {
            return pdf(plan, fishing, theme);
        }
        if (lower.endsWith(PNG)) {
            return png(plan, theme);
        }
        if (lower.endsWith(SVG)) {
            return svg(plan, theme);
        }
        if (lower.endsWith(".html")) {
            return html(plan, fishing);
        }
        throw new InputException(name + " must end in .pdf, .png, .svg or .html.");
    }

    /** Whether a file of that name is a picture of the first page, with no room for the fishing. */
    public static boolean isOnePage(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return lower.endsWith(PNG) || lower.endsWith(SVG);
    }

    static String title(Plan plan) {
        return Heading.title(plan.findings().map().peg());
    }
}
