package pegbed.report.map;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import pegbed.model.Peg;
import pegbed.model.PegName;
import pegbed.report.drawing.Colour;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Theme;
import pegbed.report.drawing.Themes;
import pegbed.report.paint.LetterOutlines;
import pegbed.report.paint.PngWriter;
import pegbed.report.paint.SvgWriter;
import pegbed.wording.Caution;

/**
 * The pictures that a map makes: same bytes every time, right colours at some places, well-formed whatever was typed.
 */
class PaintersTest {
    private static final String SCRIPT = "<script>alert('x')</script>";
    private static final String QUOTES = "\"a\" & 'b' ]]>";
    private static final String HEBREW = "עץ הלימון";

    private static final Peg HOSTILE = Pegs.withReadings(Pegs.cut(), Pegs.fan(8))
            .withName(new PegName(SCRIPT, "<&>\u0000\uFFFF" + QUOTES, "\u202E9"))
            .withMarks(
                    List.of(Pegs.mark("<svg onload=x>", 12, -30), Pegs.mark(QUOTES, 12, 0), Pegs.mark(HEBREW, 12, 30)));

    private static Drawing sheet(Peg peg) {
        return Pegs.drawing(peg).sheet(1000, 750, LetterOutlines.MEASURE);
    }

    private static Document parse(byte[] svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
    }

    @Test
    void theSamePegGivesTheSameBytes() {
        for (Theme theme : List.of(Themes.LIGHT, Themes.DARK, Themes.BLACK_AND_WHITE)) {
            Drawing one = sheet(Pegs.full());
            Drawing two = sheet(Pegs.full());
            assertArrayEquals(PngWriter.write(one, theme, 1), PngWriter.write(two, theme, 1));
            assertArrayEquals(SvgWriter.write(one, theme, "t", 1), SvgWriter.write(two, theme, "t", 1));
        }
    }

    @Test
    void aPngHasTheSizeThatWasAskedFor() throws Exception {
        byte[] png = PngWriter.write(sheet(Pegs.full()), Themes.LIGHT, 1.2);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        assertEquals(1200, image.getWidth());
        assertEquals(900, image.getHeight());
    }

    @Test
    void colourIsRightAtSomePlaces() {
        for (Theme theme : List.of(Themes.LIGHT, Themes.DARK, Themes.BLACK_AND_WHITE)) {
            Drawing drawing = sheet(Pegs.cut());
            BufferedImage image = PngWriter.image(drawing, theme, 1);
            assertEquals(theme.fill(Role.PANEL, 0, 1), pixel(image, 3, 3));
            var view = drawing.view();
            assertEquals(theme.fill(Role.LAND, 0, 1), pixel(image, view.x(-4), view.y(10.9)));
            assertEquals(theme.fill(Role.UNKNOWN_WATER, 0, 1), pixel(image, view.x(2.1), view.y(5.9)));
        }
    }

    @Test
    void deepWaterIsDarkerThanShallow() {
        Drawing drawing = sheet(Pegs.withReadings(Pegs.cut(), Pegs.fan(40)));
        BufferedImage image = PngWriter.image(drawing, Themes.LIGHT, 1);
        var view = drawing.view();
        assertTrue(mean(image, view.x(1.2), view.y(9.6)) > mean(image, view.x(1.2), view.y(5.5)) + 30);
    }

    /** Mean of the three channels over 9 by 9 pixels. */
    private static double mean(BufferedImage image, double x, double y) {
        double sum = 0;
        for (int dx = -4; dx <= 4; dx++) {
            for (int dy = -4; dy <= 4; dy++) {
                Colour colour = pixel(image, x + dx, y + dy);
                sum += colour.red() + colour.green() + colour.blue();
            }
        }
        return sum / 243;
    }

    private static Colour pixel(BufferedImage image, double x, double y) {
        return Colour.of(image.getRGB((int) x, (int) y) & 0xffffff);
    }

    @Test
    void svgIsWellFormedWhateverWasTyped() throws Exception {
        Document document = parse(SvgWriter.write(sheet(HOSTILE), Themes.LIGHT, SCRIPT + "\u0001" + QUOTES, 1));
        NodeList all = document.getElementsByTagName("*");
        Set<String> names = new HashSet<>();
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            names.add(element.getLocalName());
            for (int k = 0; k < element.getAttributes().getLength(); k++) {
                String attribute = element.getAttributes().item(k).getNodeName();
                assertTrue(!attribute.startsWith("on") && !attribute.contains("href"), attribute);
            }
        }
        assertEquals(Set.of("svg", "title", "rect", "g", "path", "text"), names);
        List<String> texts = texts(document);
        assertTrue(texts.contains(HEBREW));
        assertTrue(texts.contains("<svg onload=x>"));
        assertTrue(texts.contains(QUOTES));
        assertTrue(texts.stream().anyMatch(words -> words.startsWith(SCRIPT)), texts.toString());
        assertTrue(texts.contains("<&>" + QUOTES + ", peg 9"), texts.toString());
    }

    @Test
    void textStaysText() throws Exception {
        List<String> texts = texts(parse(SvgWriter.write(sheet(Pegs.full()), Themes.DARK, "Tansy Cut, peg 9", 1)));
        assertTrue(texts.containsAll(List.of(
                "Tansy Cut, peg 9",
                "leaning post",
                "12",
                Caution.markedLine(Pegs.full()).orElseThrow() + " " + Caution.PURPOSE_SHORT)));
    }

    @Test
    void aPictureOfHostileNamesCanBePainted() {
        assertTrue(PngWriter.write(sheet(HOSTILE), Themes.LIGHT, 1).length > 10_000);
    }

    @Test
    void svgOfAPageHasNoDeclaration() {
        String element = SvgWriter.element(sheet(HOSTILE), Themes.LIGHT, "t", 1);
        assertTrue(element.startsWith("<svg ") && element.endsWith("</svg>"));
        assertTrue(new String(SvgWriter.write(sheet(HOSTILE), Themes.LIGHT, "t", 1), StandardCharsets.UTF_8)
                .contains(element));
    }

    private static List<String> texts(Document document) {
        List<String> texts = new ArrayList<>();
        NodeList nodes = document.getElementsByTagName("text");
        for (int i = 0; i < nodes.getLength(); i++) {
            texts.add(nodes.item(i).getTextContent());
        }
        return texts;
    }
}
