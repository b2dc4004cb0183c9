package pegbed.report.card;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pegbed.day.Lesson;
import pegbed.day.LineHistories;
import pegbed.model.InputException;
import pegbed.model.Peg;
import pegbed.report.day.CatchByDepth;
import pegbed.report.day.DayStrip;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Item;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.TextMeasure;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.View;
import pegbed.report.paint.LetterOutlines;
import pegbed.report.paint.PdfFonts;
import pegbed.report.paint.PdfWriter;
import pegbed.report.paint.PngWriter;
import pegbed.report.paint.SvgWriter;
import pegbed.wording.Caution;
import pegbed.wording.Sentences;

/**
 * The fishing of a peg on one A5 page: a day as a strip, and what visits gave by depth. It is the second page of a
 * card, and a picture by itself.
 *
 * @param peg the peg
 * @param day which day it was, such as {@code 24 Oct 2026}; empty if not known
 * @param histories the day's lines
 * @param byDepth what finished visits gave by depth band
 * @param bandMetres width of those bands, metres
 * @param visits how many visits those were
 * @param target the target depth that they speak for, one sentence; empty if there is none
 */
public record DayPage(
        Peg peg,
        String day,
        LineHistories histories,
        List<Lesson<Integer>> byDepth,
        double bandMetres,
        int visits,
        Optional<String> target) {
    private static final double MARGIN = 15;
    private static final Lettering TITLE = Lettering.bold(15);
    private static final Lettering HEAD = Lettering.bold(11);
    private static final Lettering BODY = Lettering.plain(9.5);
    private static final Lettering CAUTION = Lettering.plain(7.9);
    private static final double PIXELS_PER_POINT = 200 / 72.0;

    public DayPage {
        byDepth = List.copyOf(byDepth);
    }

    /** Whether there is nothing to show. */
    public boolean isEmpty() {
        return byDepth.isEmpty()
                && histories.lines().stream().allMatch(line -> line.events().isEmpty());
    }

    /** What the strip is called: its day. */
    public String heading() {
        return day.isBlank() ? "The day" : day;
    }

    /** What the bars are called. */
    public String barsHeading() {
        return "Fish an hour by depth, " + (visits == 1 ? "1 visit" : visits + " visits");
    }

    /** The day as a strip; empty where nothing happened. */
    public Optional<Drawing> strip(double widthPoints, TextMeasure measure) {
        return DayStrip.of(peg, histories, widthPoints, measure);
    }

    /** What visits gave by depth; empty where none was fished at a known depth. */
    public Optional<Drawing> bars(double widthPoints, TextMeasure measure) {
        return CatchByDepth.of(peg, byDepth, bandMetres, widthPoints, measure);
    }

    /** The page, as wide as a card and as high, or higher where there is more to show. */
    public Drawing drawing(TextMeasure measure) {
        double right = CardDrawing.WIDTH_POINTS - MARGIN;
        double width = right - MARGIN;
        Flow flow = new Flow(measure, 1, MARGIN);
        flow.add(CardDrawing.paper());
        flow.paragraph(Role.TITLE, TITLE, MARGIN, right, peg.name().title() + ", the fishing");
        strip(width, measure).ifPresent(strip -> put(flow, 6, heading(), strip));
        bars(width, measure).ifPresent(bars -> put(flow, 12, barsHeading(), bars));
        target.ifPresent(sentence -> {
            flow.skip(4);
            flow.paragraph(Role.LEGEND_HEADING, BODY, MARGIN, right, Sentences.capital(sentence));
        });
        flow.skip(10);
        for (String caution : Caution.day()) {
            flow.paragraph(Role.CAUTION, CAUTION, MARGIN, right, caution);
        }
        double height = Math.max(CardDrawing.HEIGHT_POINTS, flow.y() + MARGIN);
        return new Drawing(flow.items(), new View(CardDrawing.WIDTH_POINTS, height, 1, 0, 0));
    }

    private static void put(Flow flow, double above, String heading, Drawing part) {
        flow.skip(above);
        flow.paragraph(Role.LEGEND_HEADING, HEAD, MARGIN, CardDrawing.WIDTH_POINTS - MARGIN, heading);
        flow.skip(4);
        for (Item item : part.items()) {
            flow.add(CardDrawing.moved(item, MARGIN, flow.y()));
        }
        flow.skip(part.view().heightPoints());
    }

    /** The page in memory, 200 dots an inch. */
    public BufferedImage picture(Theme theme) {
        return PngWriter.image(drawing(LetterOutlines.MEASURE), theme, PIXELS_PER_POINT);
    }

    /**
     * The page as the kind of file that a name asks for.
     *
     * @param name ends in {@code .pdf}, {@code .png} or {@code .svg}
     * @throws InputException if it ends in anything else
     */
    public byte[] file(String name, Theme theme) throws InputException {
        String lower = name.toLowerCase(Locale.ROOT);
        String title = peg.name().title() + ", the fishing";
        if (lower.endsWith(".pdf")) {
            PdfFonts fonts = new PdfFonts();
            return PdfWriter.write(List.of(drawing(fonts)), new OnWhite(theme), title, fonts);
        }
        if (lower.endsWith(".png")) {
            return PngWriter.write(drawing(LetterOutlines.MEASURE), theme, PIXELS_PER_POINT);
        }
        if (lower.endsWith(".svg")) {
            return SvgWriter.write(drawing(LetterOutlines.MEASURE), theme, title, 1);
        }
        throw new InputException(name + " must end in .pdf, .png or .svg.");
    }
}
