package pegbed.report.card;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;
import pegbed.model.Peg;
import pegbed.plan.Plan;
import pegbed.plan.PlannedLine;
import pegbed.plan.Rig;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.Themes;
import pegbed.report.paint.PdfFonts;
import pegbed.wording.Caution;
import pegbed.wording.PlanWords;
import pegbed.wording.RigWords;

/** Each form of the card has everything on it, asks for nothing, and takes what was typed as text. */
class CardTest {
    static Stream<Plan> plans() {
        return Stream.concat(Plans.SAMPLES.stream(), Stream.of(Plans.HOSTILE));
    }

    /** Blanks and line breaks apart, which depend on where a line is full. */
    private static String bare(String text) {
        return text.replaceAll("\\s+", "");
    }

    private static List<String> expected(Plan plan) {
        Peg peg = plan.findings().map().peg();
        PlanWords words = PlanWords.of(plan);
        RigWords rigWords = RigWords.of(peg);
        List<String> all = new ArrayList<>();
        for (PlannedLine line : plan.lines()) {
            all.addAll(List.of(
                    words.where(line).substring(1),
                    words.distance(line).substring(1),
                    words.direction(line),
                    words.clock(line),
                    words.depth(line),
                    words.plusMinus(line),
                    "Rig " + line.rig()));
            all.addAll(words.warnings(line));
        }
        for (Rig rig : plan.rigs()) {
            all.addAll(List.of(rigWords.lines(rig), rigWords.hookLength(rig), rigWords.shotting(rig)));
            rig.settings().forEach(setting -> all.add(rigWords.hookToTip(setting)));
        }
        all.addAll(words.shortfalls());
        all.addAll(cautions(peg));
        return all;
    }

    private static List<String> cautions(Peg peg) {
        List<String> cautions = new ArrayList<>(
                Stream.of(Caution.values()).map(Caution::shortForm).toList());
        Caution.markedLine(peg).ifPresent(cautions::add);
        return cautions;
    }

    @ParameterizedTest
    @MethodSource("plans")
    void thePdfIsOneA5PageWithEverythingOnIt(Plan plan) throws IOException {
        try (PDDocument document = Loader.loadPDF(Card.pdf(plan, Optional.empty(), Themes.LIGHT))) {
            assertEquals(1, document.getNumberOfPages());
            PDPage page = document.getPage(0);
            assertEquals(148 / 25.4 * 72, page.getMediaBox().getWidth(), 0.01);
            assertEquals(210 / 25.4 * 72, page.getMediaBox().getHeight(), 0.01);
            assertEquals(List.of(), page.getAnnotations());
            PDResources resources = page.getResources();
            int fonts = 0;
            for (var name : resources.getFontNames()) {
                assertTrue(resources.getFont(name).isEmbedded());
                fonts++;
            }
            assertEquals(2, fonts);
            assertFalse(resources.getXObjectNames().iterator().hasNext(), "vector only");
            String text = bare(new PDFTextStripper().getText(document));
            for (String part : expected(plan)) {
                assertTrue(text.contains(bare(part)), () -> part + " is not in the PDF");
            }
        }
    }

    @Test
    void marksAreNamedOnceInThePdf() throws IOException {
        try (PDDocument document = Loader.loadPDF(Card.pdf(Plans.SAMPLES.get(1), Optional.empty(), Themes.LIGHT))) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("Mallowfield Pools"), "no ligatures");
            assertEquals(2, text.split("white pipe", -1).length);
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void theSamePlanGivesTheSameBytes(Plan plan) {
        assertArrayEquals(
                Card.pdf(plan, Optional.empty(), Themes.LIGHT), Card.pdf(plan, Optional.empty(), Themes.LIGHT));
        assertArrayEquals(Card.svg(plan, Themes.LIGHT), Card.svg(plan, Themes.LIGHT));
        assertArrayEquals(Card.html(plan, Optional.empty()), Card.html(plan, Optional.empty()));
        assertArrayEquals(Card.png(plan, Themes.LIGHT), Card.png(plan, Themes.LIGHT));
    }

    @ParameterizedTest
    @MethodSource("plans")
    void thePageForAPhoneHasEverythingAndAsksForNothing(Plan plan) throws Exception {
        Document page = parsed(Card.html(plan, Optional.empty()));
        String text = bare(page.getDocumentElement().getTextContent());
        for (String part : expected(plan)) {
            assertTrue(text.contains(bare(part)), () -> part + " is not on the page");
        }
        for (PlannedLine line : plan.lines()) {
            assertTrue(text.contains(bare(PlanWords.of(plan).order(line))));
        }
        assertInert(page);
        assertEquals(
                "default-src 'none'; style-src 'unsafe-inline'",
                ((Element) page.getElementsByTagName("meta").item(1)).getAttribute("content"));
        assertEquals(2, page.getElementsByTagName("svg").getLength());
        String style = page.getElementsByTagName("style").item(0).getTextContent();
        assertFalse(style.contains("url(") || style.contains("@import"));
        for (String media : List.of("prefers-color-scheme: dark", "@media print")) {
            assertTrue(style.contains(media));
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void theSvgIsWellFormedAndInert(Plan plan) throws Exception {
        Document svg = parsed(Card.svg(plan, Themes.LIGHT));
        assertEquals("svg", svg.getDocumentElement().getLocalName());
        assertEquals("http://www.w3.org/2000/svg", svg.getDocumentElement().getNamespaceURI());
        assertInert(svg);
        String text = bare(svg.getDocumentElement().getTextContent());
        cautions(plan.findings().map().peg()).forEach(caution -> assertTrue(text.contains(bare(caution))));
    }

    @Test
    void thePngIsA5At200DotsAnInch() throws IOException {
        var picture = ImageIO.read(new ByteArrayInputStream(Card.png(Plans.SAMPLES.get(0), Themes.LIGHT)));
        assertEquals(148 / 25.4 * 200, picture.getWidth(), 1);
        assertEquals(210 / 25.4 * 200, picture.getHeight(), 1);
    }

    @Test
    void hostileNamesStandAsText() throws Exception {
        String html = bare(parsed(Card.html(Plans.HOSTILE, Optional.empty()))
                .getDocumentElement()
                .getTextContent());
        for (String name : List.of(Plans.SCRIPT, Plans.IMAGE, Plans.ENTITY, Plans.HEBREW)) {
            assertTrue(html.contains(bare(name)), name);
        }
        assertFalse(html.contains("\u202E") || html.contains("\u0000"));
        String svg = bare(parsed(Card.svg(Plans.HOSTILE, Themes.LIGHT))
                .getDocumentElement()
                .getTextContent());
        assertTrue(svg.contains(bare(Plans.SCRIPT)));
    }

    @Test
    void anOverheadLineIsShoutedAbout() {
        String html = new String(Card.html(Plans.HOSTILE, Optional.empty()), java.nio.charset.StandardCharsets.UTF_8);
        assertTrue(html.contains("class=\"warning\" role=\"alert\">OVERHEAD LINE AT THIS PEG"));
        String calm =
                new String(Card.html(Plans.SAMPLES.get(0), Optional.empty()), java.nio.charset.StandardCharsets.UTF_8);
        assertFalse(calm.contains("OVERHEAD LINE AT THIS PEG"));
    }

    /** Every text lies on the sheet, however many lines and warnings there are. */
    @ParameterizedTest
    @MethodSource("plans")
    void nothingRunsOffTheSheet(Plan plan) {
        PdfFonts fonts = new PdfFonts();
        Drawing card = CardDrawing.of(plan, fonts);
        int texts = 0;
        for (var item : card.items()) {
            if (item instanceof Text text && text.frame() == pegbed.report.drawing.Frame.SHEET) {
                double width = fonts.widthPoints(text.words(), text.lettering());
                double start = switch (text.align()) {
                    case START -> text.x();
                    case MIDDLE -> text.x() - width / 2;
                    case END -> text.x() - width;
                };
                assertTrue(start >= 10 && start + width <= CardDrawing.WIDTH_POINTS - 10, text.words());
                assertTrue(text.y() > 10 && text.y() < CardDrawing.HEIGHT_POINTS - 8, text.words());
                assertTrue(text.lettering().sizePoints() >= 5.5, text.words());
                texts++;
            }
        }
        assertTrue(texts > 15);
        assertEquals(
                2 * plan.lines().size(),
                card.of(Role.LINE_NUMBER).size(),
                "a number on the map and one beside the line");
    }

    private static Document parsed(byte[] markup) throws ParserConfigurationException, SAXException, IOException {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        DocumentBuilder builder = factory.newDocumentBuilder();
        builder.setErrorHandler(null);
        return builder.parse(new ByteArrayInputStream(markup));
    }

    /** No script, no handler, no reference of any kind. */
    private static void assertInert(Document document) {
        NodeList all = document.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Node node = all.item(i);
            String name = node.getNodeName();
            assertFalse(
                    List.of("script", "iframe", "object", "embed", "link", "a", "image", "img", "use", "foreignObject")
                            .contains(name),
                    name);
            for (int k = 0; k < node.getAttributes().getLength(); k++) {
                String attribute = node.getAttributes().item(k).getNodeName();
                assertFalse(attribute.startsWith("on"), attribute);
                assertFalse(List.of("href", "src", "xlink:href", "srcset", "action", "style")
                        .contains(attribute));
            }
        }
    }
}
