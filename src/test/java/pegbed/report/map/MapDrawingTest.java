package pegbed.report.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import pegbed.findings.Findings;
import pegbed.findings.PegMap;
import pegbed.geometry.Shapes;
import pegbed.model.Hazard;
import pegbed.model.Limits;
import pegbed.model.Peg;
import pegbed.model.Place;
import pegbed.model.Reading;
import pegbed.model.Units;
import pegbed.report.drawing.Drawing;
import pegbed.report.drawing.Fill;
import pegbed.report.drawing.Frame;
import pegbed.report.drawing.Item;
import pegbed.report.drawing.Layer;
import pegbed.report.drawing.Lettering;
import pegbed.report.drawing.Role;
import pegbed.report.drawing.Stroke;
import pegbed.report.drawing.Text;
import pegbed.report.drawing.View;
import pegbed.report.paint.LetterOutlines;
import pegbed.storage.disk.PegFile;
import pegbed.wording.Caution;

class MapDrawingTest {
    private static final MapDrawing FULL = Pegs.drawing(Pegs.full());
    private static final Set<Role> READINGS = EnumSet.of(
            Role.READING_FIGURE,
            Role.READING_DOT,
            Role.EARLIER_READING_FIGURE,
            Role.SUSPICIOUS_FIGURE,
            Role.SUSPICIOUS_FRAME);

    private static Drawing sheet(MapDrawing map) {
        return map.sheet(1000, 750, LetterOutlines.MEASURE);
    }

    private static List<String> words(Drawing drawing, Role role) {
        return drawing.of(role).stream().map(item -> ((Text) item).words()).toList();
    }

    private static Set<Place> places(Drawing drawing, Set<Role> roles) {
        Set<Place> places = new HashSet<>();
        for (Item item : drawing.items()) {
            if (roles.contains(item.role()) && item.frame() instanceof Frame.At at) {
                places.add(new Place(at.xMetres(), at.yMetres()));
            }
        }
        return places;
    }

    private static LabelBox box(Text text, View view) {
        double width = LetterOutlines.MEASURE.widthPoints(text.words(), text.lettering());
        double height = text.lettering().sizePoints() * Lettering.CAP_HEIGHT;
        double x = text.x();
        double y = text.y();
        if (text.frame() instanceof Frame.At at) {
            x += view.x(at.xMetres());
            y += view.y(at.yMetres());
        }
        double turn = Math.toRadians(text.turnDegrees());
        double along = text.align() == Text.Align.START ? width / 2 : text.align() == Text.Align.END ? -width / 2 : 0;
        return new LabelBox(
                x + along * Math.cos(turn) + height / 2 * Math.sin(turn),
                y + along * Math.sin(turn) - height / 2 * Math.cos(turn),
                width,
                height,
                text.turnDegrees());
    }

    private static void assertNoTextsOverlap(Drawing drawing) {
        List<Text> texts = new ArrayList<>();
        drawing.items().stream().filter(Text.class::isInstance).forEach(item -> texts.add((Text) item));
        for (int i = 0; i < texts.size(); i++) {
            LabelBox one = box(texts.get(i), drawing.view());
            assertTrue(
                    Shapes.FACTORY
                            .toGeometry(new org.locationtech.jts.geom.Envelope(
                                    0,
                                    drawing.view().widthPoints(),
                                    0,
                                    drawing.view().heightPoints()))
                            .covers(one.outline()),
                    texts.get(i).words() + " stands out of the sheet");
            for (int k = 0; k < i; k++) {
                assertFalse(
                        one.overlaps(box(texts.get(k), drawing.view())),
                        texts.get(i).words() + " lies on " + texts.get(k).words());
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"800,600", "1200,900", "1366,768", "2400,1800"})
    void layoutHoldsAtEverySize(int width, int height) {
        double pixels = MapDrawing.pixelsPerPoint(width, height);
        for (MapDrawing map : List.of(FULL, Pegs.drawing(Pegs.withReadings(Pegs.pond(), Pegs.fan(20))))) {
            Drawing drawing = map.sheet(width / pixels, height / pixels, LetterOutlines.MEASURE);
            assertNoTextsOverlap(drawing);
            assertEquals(1, drawing.of(Role.TITLE).size());
            assertEquals(1, drawing.of(Role.CAUTION).size());
            Fill frame = (Fill) drawing.items().stream()
                    .filter(item -> item.role() == Role.PANEL)
                    .findFirst()
                    .orElseThrow();
            double share =
                    1 - frame.shape().getArea() / frame.shape().getEnvelope().getArea();
            assertTrue(share > 0.55, "The map has only " + share + " of the sheet.");
        }
    }

    @Test
    void everyReadingIsDrawn() {
        Drawing drawing = sheet(FULL);
        Set<Place> drawn = places(drawing, READINGS);
        for (Reading reading : Pegs.full().readings()) {
            assertTrue(drawn.contains(reading.place()), reading.place().toString());
        }
        assertTrue(words(drawing, Role.READING_FIGURE).size() >= 24, "Most readings have room for their figure.");
    }

    @Test
    void ofReadingsOnTopOfEachOtherEachIsDrawnOrLiesUnderAnothersFigure() {
        List<Reading> crowd = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            crowd.add(Reading.of(5 + 0.01 * i, 0.1 * i, 1.5));
        }
        Drawing drawing = sheet(Pegs.drawing(Pegs.withReadings(Pegs.cut(), crowd)));
        Set<Place> drawn = places(drawing, READINGS);
        assertTrue(drawn.size() >= 2, drawn::toString);
        double figureMetres = 22 / drawing.view().pointsPerMetre();
        for (Reading reading : crowd) {
            assertTrue(
                    drawn.stream().anyMatch(place -> place.distanceTo(reading.place()) < figureMetres),
                    reading.place().toString());
        }
        assertNoTextsOverlap(drawing);
    }

    /** A dot beside a figure that has the place would be read as a point in the figure. */
    @Test
    void noDotLiesOnAFigure() {
        List<Reading> crowd = new ArrayList<>(Pegs.fan(30));
        Pegs.fan(30)
                .forEach(r -> crowd.add(
                        Reading.of(r.place().distanceMetres() + 0.15, r.place().angleDegrees(), r.depthMetres())));
        Drawing drawing = sheet(Pegs.drawing(Pegs.withReadings(Pegs.cut(), crowd)));
        int dots = 0;
        for (Item dot : drawing.of(Role.READING_DOT)) {
            Frame.At at = (Frame.At) dot.frame();
            LabelBox round = LabelBox.square(
                    drawing.view().x(at.xMetres()), drawing.view().y(at.yMetres()), 2.8);
            for (Item item : drawing.items()) {
                if (item instanceof Text text && text.frame() instanceof Frame.At) {
                    assertFalse(round.overlaps(box(text, drawing.view()).grown(1)), text.words());
                }
            }
            dots++;
        }
        assertTrue(dots > 0);
    }

    @Test
    void ofTwoVisitsAtOneSpotTheLatestIsShown() {
        List<Reading> deeper = Pegs.fan(20).stream()
                .map(r -> Reading.of(r.place().distanceMetres(), r.place().angleDegrees(), r.depthMetres() + 0.1))
                .toList();
        Peg peg = Pegs.cut()
                .withVisits(List.of(
                        Pegs.visit("2026-05-12T07:30:00+01:00", 0.32, Pegs.fan(20)),
                        Pegs.visit("2026-06-20T07:30:00+01:00", 0.22, deeper)));
        Drawing drawing = sheet(Pegs.drawing(peg));
        assertTrue(words(drawing, Role.READING_FIGURE).size() >= 18);
        assertEquals(List.of(), drawing.of(Role.EARLIER_READING_FIGURE));
    }

    @Test
    void aReadingThatTheOthersContradictHasAFrameAndAQuestionMark() {
        List<Reading> readings = new ArrayList<>(Pegs.fan(30));
        readings.add(Reading.of(6.5, 5, 0.4));
        Drawing drawing = sheet(Pegs.drawing(Pegs.withReadings(Pegs.cut(), readings)));
        assertTrue(words(drawing, Role.SUSPICIOUS_FIGURE).contains("1'4?"));
        assertTrue(drawing.of(Role.SUSPICIOUS_FRAME).stream().anyMatch(Stroke.class::isInstance));
    }

    @Test
    void readingsOfAnEarlierVisitAreBroughtToTodaysLevel() {
        // The water is 8 cm higher at the second visit, so every depth is 8 cm more.
        List<Reading> second = new ArrayList<>();
        for (Reading reading : Pegs.fan(20)) {
            double angle = reading.place().angleDegrees() + 9;
            Place place = Place.polar(reading.place().distanceMetres(), angle);
            second.add(Reading.of(place.distanceMetres(), angle, Pegs.depth(place) + 0.08));
        }
        Peg peg = Pegs.cut()
                .withUnits(new Units(Units.Depth.CENTIMETRES, Units.Distance.METRES))
                .withVisits(List.of(
                        Pegs.visit("2026-05-12T07:30:00+01:00", 0.32, Pegs.fan(20)),
                        Pegs.visit("2026-06-20T07:30:00+01:00", 0.24, second)));
        Drawing drawing = sheet(Pegs.drawing(peg));
        int checked = 0;
        for (Item item : drawing.of(Role.EARLIER_READING_FIGURE)) {
            if (item instanceof Text text && text.frame() instanceof Frame.At at) {
                double expected = 100 * (Pegs.depth(new Place(at.xMetres(), at.yMetres())) + 0.08);
                assertEquals(expected, Double.parseDouble(text.words()), 2.6);
                checked++;
            }
        }
        assertTrue(checked >= 3, "only " + checked);
        assertSmallerAndUpright(drawing);
        assertTrue(words(drawing, Role.LEGEND_LABEL).contains("an earlier visit's, at today's level"));
        assertTrue(words(drawing, Role.SUBTITLE).get(0).contains("20 June 2026"));
        assertTrue(words(drawing, Role.SUBTITLE).get(0).contains("40 readings of 2 visits"));
    }

    private static void assertSmallerAndUpright(Drawing drawing) {
        Lettering today = letters(drawing, Role.READING_FIGURE);
        Lettering earlier = letters(drawing, Role.EARLIER_READING_FIGURE);
        assertFalse(earlier.italic() || earlier.bold());
        assertTrue(earlier.sizePoints() < 0.95 * today.sizePoints());
    }

    private static Lettering letters(Drawing drawing, Role role) {
        return drawing.of(role).stream()
                .filter(Text.class::isInstance)
                .map(item -> ((Text) item).lettering())
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"0", "1", "2"})
    void fewReadingsMakeAMapThatClaimsLittle(int count) {
        Peg peg = Pegs.withReadings(Pegs.cut(), Pegs.fan(count));
        MapDrawing map = Pegs.drawing(peg);
        Drawing drawing = sheet(map);
        assertNoTextsOverlap(drawing);
        assertEquals(count, places(drawing, READINGS).size());
        PegMap known = Pegs.map(peg);
        for (double x = -11.5; x <= 11.5; x += 1) {
            Geometry place = Shapes.FACTORY.createPoint(new Coordinate(x, 5.2));
            if (known.bottom().at(x, 5.2).sdMetres() > Ground.UNKNOWN_METRES + 0.02) {
                for (Item item : drawing.of(Role.DEPTH_BAND)) {
                    assertFalse(
                            item.frame() instanceof Frame.Water
                                    && ((Fill) item).shape().intersects(place),
                            "Nothing is known at " + x);
                }
            }
        }
        if (count == 0) {
            assertTrue(drawing.of(Role.DEEPEST).isEmpty());
            assertTrue(words(drawing, Role.LEGEND_HEADING).stream().noneMatch(words -> words.startsWith("Flat")));
            assertTrue(words(drawing, Role.SUBTITLE).get(0).endsWith("no readings yet"));
        }
    }

    @Test
    void islandsAreLandWithAShore() {
        Drawing drawing = sheet(Pegs.drawing(Pegs.withIsland(Pegs.withReadings(Pegs.cut(), Pegs.fan(30)))));
        Geometry middle = Shapes.FACTORY.createPoint(new Coordinate(-3, 7));
        assertTrue(drawing.of(Role.LAND).stream()
                .anyMatch(item -> ((Fill) item).shape().intersects(middle)));
        assertTrue(drawing.of(Role.DEPTH_BAND).stream()
                .filter(item -> item.frame() instanceof Frame.Water)
                .noneMatch(item -> ((Fill) item).shape().intersects(middle)));
    }

    @Test
    void aPondHasNoLandBeyond() {
        Drawing drawing = sheet(Pegs.drawing(Pegs.withReadings(Pegs.pond(), Pegs.fan(20))));
        Geometry beyond = Shapes.FACTORY.createPoint(new Coordinate(0, 20));
        Geometry behind = Shapes.FACTORY.createPoint(new Coordinate(0, -1));
        Geometry land = ((Fill) drawing.of(Role.LAND).get(0)).shape();
        assertFalse(land.intersects(beyond));
        assertTrue(land.intersects(behind));
    }

    @Test
    void ringsBearSectionsAndTheClockStandsRoundTheRim() {
        Drawing drawing = sheet(FULL);
        List<String> rings = words(drawing, Role.RING_LABEL);
        assertEquals(List.of("s1", "s2", "s3", "s4", "s5", "s6", "s7", "s8"), rings);
        assertEquals(Set.of("9", "10", "11", "12", "1", "2", "3"), Set.copyOf(words(drawing, Role.CLOCK_FIGURE)));
        Drawing metric =
                sheet(Pegs.drawing(Pegs.full().withUnits(new Units(Units.Depth.METRES, Units.Distance.METRES))));
        assertTrue(words(metric, Role.RING_LABEL).containsAll(List.of("4 m", "8.5 m")));
    }

    @Test
    void ringsAreNamedAlongOneRadius() {
        Drawing drawing = sheet(FULL);
        List<Double> degrees = new ArrayList<>();
        for (Item item : drawing.of(Role.RING_LABEL)) {
            Frame.At at = (Frame.At) item.frame();
            degrees.add(new Place(at.xMetres(), at.yMetres()).angleDegrees());
        }
        double least = degrees.stream().min(Double::compare).orElseThrow();
        double most = degrees.stream().max(Double::compare).orElseThrow();
        assertTrue(most - least <= 9.1, degrees::toString);
    }

    /** Also where the water's edge runs nearly along the direction of nine and three. */
    @Test
    void clockFiguresStandOutsideTheWater() {
        for (MapDrawing map : List.of(FULL, Pegs.drawing(Pegs.withReadings(Pegs.bay(), Pegs.fan(20))))) {
            Drawing drawing = sheet(map);
            Geometry water = ((Fill) drawing.of(Role.UNKNOWN_WATER).get(0)).shape();
            assertEquals(7, drawing.of(Role.CLOCK_FIGURE).size());
            for (Item item : drawing.of(Role.CLOCK_FIGURE)) {
                Geometry box = box((Text) item, drawing.view()).outline();
                Geometry onWater = box.copy();
                onWater.apply((org.locationtech.jts.geom.CoordinateFilter) c -> c.setCoordinate(new Coordinate(
                        drawing.view().xMetres(c.x), drawing.view().yMetres(c.y))));
                assertFalse(water.intersects(onWater), ((Text) item).words());
            }
        }
    }

    @Test
    void theWaterHasThreeQuartersOfTheFrame() {
        for (Peg peg : List.of(
                Pegs.full(),
                Pegs.withReadings(Pegs.pond(), Pegs.fan(20)),
                Pegs.withReadings(Pegs.bay(), Pegs.fan(20)))) {
            MapDrawing map = Pegs.drawing(peg);
            for (double width : new double[] {800, 1200}) {
                assertWaterFills(
                        map.sheet(width, map.sheetHeight(width, LetterOutlines.MEASURE), LetterOutlines.MEASURE));
            }
            assertWaterFills(sheet(map));
        }
    }

    private static void assertWaterFills(Drawing drawing) {
        Geometry land = ((Fill) drawing.of(Role.LAND).get(0)).shape();
        org.locationtech.jts.geom.Envelope frame = drawing.of(Role.LEGEND_RULE).stream()
                .map(item -> ((Stroke) item).lines().getEnvelopeInternal())
                .max(java.util.Comparator.comparingDouble(org.locationtech.jts.geom.Envelope::getArea))
                .orElseThrow();
        View view = drawing.view();
        Geometry shown = Shapes.FACTORY.toGeometry(new org.locationtech.jts.geom.Envelope(
                view.xMetres(frame.getMinX()),
                view.xMetres(frame.getMaxX()),
                view.yMetres(frame.getMinY()),
                view.yMetres(frame.getMaxY())));
        double share = shown.difference(land).getArea() / shown.getArea();
        assertTrue(share >= 0.75, "The water has only " + share + " of the frame.");
    }

    @Test
    void aMarkFarOffStandsAtTheEdgeInItsDirectionWithAnArrow() {
        Peg peg = Pegs.withReadings(Pegs.cut(), Pegs.fan(10)).withMarks(List.of(Pegs.mark("church tower", 60, 12)));
        Drawing drawing = sheet(Pegs.drawing(peg));
        assertEquals(List.of("church tower"), words(drawing, Role.MARK_LABEL));
        assertEquals(1, drawing.of(Role.MARK_BEYOND).size());
        Frame.At at = (Frame.At) drawing.of(Role.MARK).get(0).frame();
        assertEquals(12, new Place(at.xMetres(), at.yMetres()).angleDegrees(), 0.2);
    }

    @Test
    void pointsOfTheBanksAreNotDrawnAndTheShoreIsDrawnOnce() {
        Drawing drawing = sheet(FULL);
        assertEquals(1, drawing.of(Role.BANK).size());
        Geometry shore = ((Stroke) drawing.of(Role.BANK).get(0)).lines();
        for (Role role : List.of(Role.KNOWN_EDGE, Role.DOUBT_EDGE)) {
            for (Item item : drawing.of(role)) {
                if (item.frame() == Frame.WATER) {
                    Geometry along = ((Stroke) item).lines().intersection(shore.buffer(0.03));
                    assertTrue(along.getLength() < 0.3, role + " runs " + along.getLength() + " m along the shore");
                }
            }
        }
        for (Item item : drawing.items()) {
            if (item.layer() == Layer.GROUND) {
                assertFalse(item.frame() instanceof Frame.At, item.role().name());
            }
        }
    }

    @Test
    void doubtIsHatchedCloserWhereItIsGreaterAndHasAnEdge() {
        Drawing drawing = sheet(Pegs.drawing(Pegs.withReadings(Pegs.cut(), Pegs.fan(7))));
        Ground ground = Ground.of(Pegs.map(Pegs.withReadings(Pegs.cut(), Pegs.fan(7))));
        double metres = GroundPart.HATCH_POINTS / drawing.view().pointsPerMetre();
        assertEquals(
                ground.guess().getArea() / metres,
                onWater(drawing, Role.DOUBT_HATCH),
                ground.guess().getArea() / metres / 5);
        assertTrue(onWater(drawing, Role.MORE_DOUBT_HATCH) > 0);
        assertTrue(onWater(drawing, Role.STRONG_DOUBT_HATCH) > 0);
        assertTrue(onWater(drawing, Role.DOUBT_EDGE) > 5);
    }

    private static double onWater(Drawing drawing, Role role) {
        return drawing.of(role).stream()
                .filter(item -> item.frame() == Frame.WATER)
                .mapToDouble(item -> ((Stroke) item).lines().getLength())
                .sum();
    }

    /** Two lines nearer to each other than their signs are wide: one moves, with a line to its place. */
    @Test
    void aSignThatHasToMoveHasALineToItsPlace() {
        Composition to = new Composition(
                new View(400, 300, 20, -10, 14),
                new org.locationtech.jts.geom.Envelope(0, 400, 0, 300),
                LetterOutlines.MEASURE,
                MapOptions.USUAL);
        assertEquals(
                Placer.Spot.HERE, to.placer.sign(Layer.FLATS, 0, 5, 20, 20, 0).orElseThrow());
        Placer.Spot moved = to.placer.sign(Layer.FLATS, 0.1, 5, 20, 20, 0).orElseThrow();
        assertTrue(Math.hypot(moved.right(), moved.down()) >= 18, moved::toString);
        to.placer.addLeaders(new Masked(to.view, to.space.signsBut(Layer.GROUND)));
        assertEquals(1, to.drawing().of(Role.LEADER).size());
        assertTrue(to.placer.sign(Layer.FLATS, 50, 5, 20, 20, 0).isEmpty(), "not on the map");
    }

    @Test
    void signsAndLettersKeepOffTheNextPlace() {
        Place next = Pegs.fan(30).get(10).place();
        MapDrawing map = Pegs.drawing(
                Pegs.full(), new MapOptions(MapOptions.USUAL.layers(), false, java.util.Optional.of(next)));
        Drawing drawing = map.at(new View(900, 500, 30, -15, 12), LetterOutlines.MEASURE);
        LabelBox sign = LabelBox.square(
                drawing.view().x(next.xMetres()), drawing.view().y(next.yMetres()), 2 * MapOptions.NEXT_POINTS);
        for (Item item : drawing.items()) {
            if (item instanceof Text text) {
                assertFalse(sign.overlaps(box(text, drawing.view())), text.words());
            }
        }
    }

    /** Quickly placed alone, each answer stands where it stands on the whole map. */
    @Test
    void answersAloneStandWhereTheyStandOnTheWholeMap() {
        View view = new View(900, 500, 30, -15, 12);
        Drawing whole = FULL.at(view, LetterOutlines.MEASURE);
        Drawing alone = FULL.answersAt(view, LetterOutlines.MEASURE);
        for (Role role : List.of(Role.DEEPEST, Role.DEEPEST_LABEL, Role.FLAT_BADGE, Role.FLAT_NUMBER)) {
            assertEquals(whole.of(role).toString(), alone.of(role).toString());
        }
        assertFalse(alone.of(Role.DEEPEST_LABEL).isEmpty());
        assertTrue(alone.of(Role.READING_FIGURE).isEmpty());
    }

    @Test
    void joinedUpIsSaidOnTheMapAndHasNoAnswersOfTheModel() {
        MapDrawing model = Pegs.drawing(Pegs.full());
        MapDrawing joined = Pegs.drawing(Pegs.full(), MapOptions.USUAL.withJoinedUp(true));
        for (Drawing drawing :
                List.of(sheet(joined), joined.at(new View(900, 500, 30, -15, 12), LetterOutlines.MEASURE))) {
            assertEquals(List.of("Joined up: straight between readings, no model"), words(drawing, Role.JOINED_UP));
            for (Role role : List.of(
                    Role.DEEPEST,
                    Role.FLAT_BADGE,
                    Role.LINE_BADGE,
                    Role.DOUBT_HATCH,
                    Role.DOUBT_VEIL,
                    Role.SUSPICIOUS_FIGURE)) {
                assertEquals(List.of(), drawing.of(role), role.name());
            }
            assertFalse(drawing.of(Role.CONTOUR).isEmpty()
                    || drawing.of(Role.READING_FIGURE).isEmpty());
            assertEquals(4, drawing.of(Role.MARK_LABEL).size());
        }
        assertEquals(List.of(), sheet(model).of(Role.JOINED_UP));
        assertNoTextsOverlap(sheet(joined));
    }

    @Test
    void theLegendOfAWindowSaysWhatIsOnTheMap() {
        Drawing legend = FULL.legend(30, LetterOutlines.MEASURE);
        assertNoTextsOverlap(legend);
        List<String> words = words(legend, Role.LEGEND_LABEL);
        assertTrue(
                words.containsAll(List.of("overhead line", "snag", "a reading", "the deepest", "not known")),
                words::toString);
        assertTrue(words(
                        Pegs.drawing(Pegs.full(), MapOptions.USUAL.withJoinedUp(true))
                                .legend(30, LetterOutlines.MEASURE),
                        Role.LEGEND_LABEL)
                .stream()
                .noneMatch(word -> word.contains("guess") || word.contains("deepest")));
    }

    @Test
    void marksHaveTheirNamesAndHazardsTheirKind() {
        Drawing drawing = sheet(FULL);
        assertEquals(
                Set.of("leaning post", "split ash", "white pipe", "gate"), Set.copyOf(words(drawing, Role.MARK_LABEL)));
        assertEquals(
                Set.of("snag", "lilies or reeds", "low branch", "overhead line", "other"),
                Set.copyOf(words(drawing, Role.HAZARD_LABEL)));
        assertEquals(
                5,
                drawing.of(Role.HAZARD).stream()
                        .filter(item -> item.layer() == Layer.HAZARDS)
                        .count());
        assertEquals(4, drawing.of(Role.HAZARD_OUTLINE).size(), "A hazard without a radius has no outline.");
        assertEquals(
                Caution.markedLine(Pegs.full()).orElseThrow() + " " + Caution.PURPOSE_SHORT,
                words(drawing, Role.CAUTION).get(0));
        assertEquals(
                Caution.PURPOSE_SHORT,
                words(sheet(Pegs.drawing(Pegs.withReadings(Pegs.cut(), Pegs.fan(3)))), Role.CAUTION)
                        .get(0));
    }

    @Test
    void kindsOfHazardDifferInShape() {
        for (Hazard.Kind one : Hazard.Kind.values()) {
            for (Hazard.Kind other : Hazard.Kind.values()) {
                assertEquals(one == other, Symbols.hazard(one).equalsExact(Symbols.hazard(other)), one + " " + other);
            }
        }
    }

    @Test
    void flatSpotsAreNumberedAndExplained() throws Exception {
        var map = Pegs.map(
                PegFile.read(Path.of("sample-pegs/tansy-cut-14.peg.json")).peg());
        Findings findings = Findings.of(map, OptionalDouble.of(0.85));
        MapDrawing drawing = MapDrawing.of(map, findings, MapOptions.USUAL);
        int shown = FindingPart.numbered(findings, Ground.of(map)).size();
        assertTrue(shown > 0);
        Drawing sheet = sheet(drawing);
        assertEquals(shown, sheet.of(Role.FLAT_NUMBER).size());
        assertTrue(words(sheet, Role.LEGEND_HEADING).stream().anyMatch(words -> words.startsWith("Flat at 2 ft 9")));
        for (int i = 1; i <= shown; i++) {
            assertTrue(words(sheet, Role.FLAT_NUMBER).contains(Integer.toString(i)));
        }
    }

    @Test
    void theDeepestSaysItsDoubt() {
        String words = words(sheet(FULL), Role.DEEPEST_LABEL).get(0);
        assertTrue(words.matches("deepest \\d ft( \\d+ in)? ± \\d+ in"), words);
    }

    @Test
    void zonesAreOffUntilAskedFor() {
        assertTrue(sheet(FULL).of(Role.ZONE_OUTLINE).isEmpty());
        Drawing zones = sheet(Pegs.drawing(Pegs.full(), MapOptions.USUAL.with(Layer.ZONES, true)));
        assertEquals(5, zones.of(Role.ZONE_OUTLINE).size());
        assertNoTextsOverlap(zones);
    }

    @ParameterizedTest
    @EnumSource(Layer.class)
    void aLayerThatIsOffDrawsNothing(Layer layer) {
        var map = Pegs.map(Pegs.withReadings(Pegs.cut(), Pegs.fan(5)));
        MapDrawing drawing =
                MapDrawing.of(map, Findings.of(map, OptionalDouble.empty()), MapOptions.USUAL.with(layer, false));
        assertTrue(sheet(drawing).items().stream().noneMatch(item -> item.layer() == layer));
    }

    @Test
    void limitsAreDrawn() {
        Peg peg = Pegs.withReadings(Pegs.cut(), Pegs.fan(10))
                .withLimits(new Limits(OptionalDouble.of(-5), OptionalDouble.of(6)));
        assertEquals(2, sheet(Pegs.drawing(peg)).of(Role.LIMIT).size());
    }

    @Test
    void linesLeaveGapsForTexts() {
        Drawing drawing = sheet(FULL);
        Geometry contours = ((Stroke) drawing.of(Role.INDEX_CONTOUR).get(0)).lines();
        for (Item item : drawing.items()) {
            if (item instanceof Text text && text.frame() instanceof Frame.At && text.role() != Role.FLAT_NUMBER) {
                var outline = box(text, drawing.view()).outline();
                Geometry onWater = outline.copy();
                onWater.apply((org.locationtech.jts.geom.CoordinateFilter) c -> c.setCoordinate(new Coordinate(
                        drawing.view().xMetres(c.x), drawing.view().yMetres(c.y))));
                assertFalse(onWater.intersects(contours), text.words());
            }
        }
    }

    @Test
    void aWindowGetsTheMapAloneAtAnyZoom() {
        for (double scale : new double[] {15, 40, 160}) {
            Drawing drawing = FULL.at(new View(900, 600, scale, -450 / scale, 5 + 300 / scale), LetterOutlines.MEASURE);
            assertTrue(drawing.items().stream()
                    .noneMatch(item -> item.layer() == Layer.FURNITURE || item.layer() == Layer.CAUTION));
            assertNoTextsOverlap(drawing);
        }
    }

    @Test
    void answersOfAnotherMapAreRefused() {
        var other = Pegs.map(Pegs.withReadings(Pegs.cut(), Pegs.fan(3)));
        Findings findings = Findings.of(other, OptionalDouble.empty());
        assertThrows(IllegalArgumentException.class, () -> FULL.with(findings, MapOptions.USUAL));
        assertThrows(IllegalArgumentException.class, () -> FULL.sheet(100, 100, LetterOutlines.MEASURE));
    }
}
