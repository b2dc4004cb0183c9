package pegbed.report.card;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import pegbed.model.Peg;
import pegbed.plan.Plan;
import pegbed.plan.PlannedLine;
import pegbed.plan.Rig;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.Themes;
import pegbed.report.drawing.View;
import pegbed.report.map.Heading;
import pegbed.report.map.MapDrawing;
import pegbed.report.paint.LetterOutlines;
import pegbed.report.paint.SvgWriter;
import pegbed.wording.CardWords;
import pegbed.wording.Caution;
import pegbed.wording.PlanWords;
import pegbed.wording.RigWords;
import pegbed.wording.Sentences;

/**
 * The card as one page of HTML for a phone. It has no script and asks for nothing from elsewhere, and a content
 * security policy in it says so; everything that a person typed is written as text.
 */
final class HtmlCard {
    private static final double MAP_WIDTH_POINTS = 380;

    private final Plan plan;
    private final Optional<DayPage> fishing;
    private final Peg peg;
    private final PlanWords words;
    private final RigWords rigWords;
    private final Markup page = new Markup();

    private HtmlCard(Plan plan, Optional<DayPage> fishing) {
        this.plan = plan;
        this.fishing = fishing;
        peg = plan.findings().map().peg();
        words = PlanWords.of(plan);
        rigWords = RigWords.of(peg);
    }

    static String of(Plan plan, Optional<DayPage> fishing) {
        return new HtmlCard(plan, fishing).write();
    }

    private String write() {
        String title = Card.title(plan);
        page.raw("<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\"/>\n")
                .raw(
                        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\"/>\n")
                .raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n")
                .raw("<meta name=\"color-scheme\" content=\"light dark\"/>\n")
                .element("title", "", title)
                .raw("<style>\n" + style() + "</style>\n</head>\n<body>\n<header>\n")
                .element("h1", "", title)
                .element("p", "", Heading.subtitle(peg))
                .raw("</header>\n<main>\n");
        Caution.markedLine(peg).ifPresent(warning -> page.element("p", " class=\"warning\" role=\"alert\"", warning));
        map(title);
        lines();
        rigs();
        shortfalls();
        fishing.ifPresent(this::fishing);
        page.raw("</main>\n<footer>\n").element("h2", "", "Take care").raw("<ul>\n");
        Caution.markedLine(peg).ifPresent(warning -> page.element("li", "", warning));
        for (Caution caution : Caution.values()) {
            page.element("li", "", caution.shortForm());
        }
        return page.raw("</ul>\n</footer>\n</body>\n</html>\n").toString();
    }

    private static String style() {
        try (InputStream in = HtmlCard.class.getResourceAsStream("/pegbed/report/card.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("The program's own style sheet can't be read.", e);
        }
    }

    private void map(String title) {
        MapDrawing map = CardDrawing.map(plan);
        double height = Math.min(520, map.frameHeight(MAP_WIDTH_POINTS));
        View view = map.fitted(new Envelope(0, MAP_WIDTH_POINTS, 0, height), MAP_WIDTH_POINTS, height);
        Drawing drawing = map.at(view, LetterOutlines.MEASURE);
        page.raw("<figure>\n");
        pictures(drawing, "Map of " + title);
        page.element("figcaption", "", CardWords.key(plan)).raw("</figure>\n");
    }

    /** A drawing for bright and for dark screens, of which the style sheet shows one. */
    private void pictures(Drawing drawing, String title) {
        picture(drawing, Themes.LIGHT, "bright", title);
        picture(drawing, Themes.DARK, "dark", title);
    }

    private void picture(Drawing drawing, Theme theme, String name, String title) {
        page.raw("<div class=\"" + name + "\">\n")
                .raw(SvgWriter.element(drawing, theme, title, 1))
                .raw("\n</div>\n");
    }

    private void headed(Drawing drawing, String heading) {
        page.element("h3", "", heading).raw("<figure>\n");
        pictures(drawing, heading);
        page.raw("</figure>\n");
    }

    private void fishing(DayPage fished) {
        page.raw("<section>\n").element("h2", "", "The fishing");
        fished.strip(MAP_WIDTH_POINTS, LetterOutlines.MEASURE).ifPresent(strip -> headed(strip, fished.heading()));
        fished.bars(MAP_WIDTH_POINTS, LetterOutlines.MEASURE).ifPresent(bars -> headed(bars, fished.barsHeading()));
        fished.target().ifPresent(sentence -> page.element("p", "", sentence));
        page.raw("</section>\n");
    }

    private void lines() {
        page.raw("<section>\n").element("h2", "", "Lines");
        if (plan.lines().isEmpty()) {
            page.element("p", "", CardWords.NO_LINES);
        }
        for (PlannedLine line : plan.lines()) {
            page.raw("<article>\n<h3><b class=\"number\">" + line.number() + "</b> ")
                    .element("span", "", Sentences.capital(words.where(line)))
                    .element("span", " class=\"depth\"", words.depth(line) + " " + words.plusMinus(line))
                    .raw("</h3>\n");
            page.element("p", " class=\"far\"", Sentences.capital(words.distance(line)));
            page.element("p", "", CardWords.towards(words, line));
            page.element("p", "", "Rig " + line.rig() + ". " + words.order(line));
            for (String warning : words.warnings(line)) {
                page.element("p", " class=\"note\"", warning);
            }
            words.confirming(line).ifPresent(sentence -> page.element("p", " class=\"note\"", sentence));
            page.raw("<details>\n")
                    .element("summary", "", "Why, and what to check")
                    .element("p", "", words.why(line));
            if (words.warnings(line).isEmpty()) {
                words.checks(line).forEach(check -> page.element("p", "", check));
            }
            page.raw("</details>\n</article>\n");
        }
        page.raw("</section>\n");
    }

    private void rigs() {
        if (plan.rigs().isEmpty()) {
            return;
        }
        page.raw("<section>\n").element("h2", "", "Rigs");
        for (Rig rig : plan.rigs()) {
            page.raw("<article>\n<h3>")
                    .element("span", "", "Rig " + rig.number() + ", " + rigWords.lines(rig))
                    .element("span", " class=\"depth\"", rigWords.floatSize(rig))
                    .raw("</h3>\n")
                    .element("p", "", CardWords.settings(rigWords, rig))
                    .element("p", "", "Hook length " + rigWords.hookLength(rig) + "; " + rigWords.shotting(rig) + ".")
                    .raw("</article>\n");
        }
        page.raw("</section>\n");
    }

    private void shortfalls() {
        List<String> all = words.shortfalls();
        if (!all.isEmpty()) {
            page.raw("<section>\n").element("h2", "", "What could not be had").raw("<ul>\n");
            all.forEach(sentence -> page.element("li", "", sentence));
            page.raw("</ul>\n</section>\n");
        }
    }
}
