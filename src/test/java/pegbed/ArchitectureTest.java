package pegbed;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.text.DecimalFormat;
import java.text.NumberFormat;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.Formatter;
import java.util.List;
import java.util.Locale;
import java.util.Scanner;
import java.util.StringJoiner;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.regex.Matcher;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pegbed.model.Parallel;
import pegbed.session.DayAnswer;
import pegbed.session.DayEdits;
import pegbed.session.DayTaps;
import pegbed.session.Edit;
import pegbed.session.LineEdits;
import pegbed.session.MissingInputs;
import pegbed.session.OpenPeg;
import pegbed.session.PlaceEdits;
import pegbed.session.PlanEdits;
import pegbed.session.ReadingAt;
import pegbed.session.ReadingEdits;
import pegbed.session.ReadingWheels;
import pegbed.session.SectionStops;
import pegbed.session.TypedDay;
import pegbed.session.VisitEdits;
import pegbed.storage.peg.Fingerprint;

/** The allowed arrows between packages; the map of them is in DEVELOPERS.md. */
@AnalyzeClasses(packages = "pegbed", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    @ArchTest
    static final ArchRule arrows = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .withOptionalLayers(true)
            .layer("start")
            .definedBy("pegbed")
            .layer("ui")
            .definedBy("pegbed.ui..")
            .layer("cli")
            .definedBy("pegbed.cli..")
            .layer("bench")
            .definedBy("pegbed.bench..")
            .layer("phone")
            .definedBy("pegbed.phone..")
            .layer("page")
            .definedBy("pegbed.page..")
            .layer("session")
            .definedBy("pegbed.session..")
            .layer("report")
            .definedBy("pegbed.report..")
            .layer("wording")
            .definedBy("pegbed.wording..")
            .layer("plan")
            .definedBy("pegbed.plan..")
            .layer("guidance")
            .definedBy("pegbed.guidance..")
            .layer("visits")
            .definedBy("pegbed.visits..")
            .layer("findings")
            .definedBy("pegbed.findings..")
            .layer("day")
            .definedBy("pegbed.day..")
            .layer("lake")
            .definedBy("pegbed.lake..")
            .layer("surface")
            .definedBy("pegbed.surface..")
            .layer("shelf")
            .definedBy("pegbed.storage.shelf..")
            .layer("table")
            .definedBy("pegbed.storage.table..")
            .layer("disk")
            .definedBy("pegbed.storage.disk..")
            .layer("peg file")
            .definedBy("pegbed.storage.peg..")
            .layer("notation")
            .definedBy("pegbed.notation..")
            .layer("geometry")
            .definedBy("pegbed.geometry..")
            .layer("exchange")
            .definedBy("pegbed.exchange..")
            .layer("geodesy")
            .definedBy("pegbed.geodesy..")
            .whereLayer("start")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("ui")
            .mayOnlyBeAccessedByLayers("start")
            .whereLayer("cli")
            .mayOnlyBeAccessedByLayers("start")
            .whereLayer("bench")
            .mayOnlyBeAccessedByLayers("cli")
            .whereLayer("phone")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("page")
            .mayOnlyBeAccessedByLayers("cli")
            .whereLayer("session")
            .mayOnlyBeAccessedByLayers("phone", "ui", "cli")
            .whereLayer("report")
            .mayOnlyBeAccessedByLayers("exchange", "session", "phone", "ui", "cli")
            .whereLayer("wording")
            .mayOnlyBeAccessedByLayers("exchange", "report", "session", "phone", "ui", "cli")
            .whereLayer("plan")
            .mayOnlyBeAccessedByLayers("exchange", "wording", "report", "session", "phone", "ui", "cli", "bench")
            .whereLayer("guidance")
            .mayOnlyBeAccessedByLayers("wording", "report", "session", "phone", "ui", "cli", "bench")
            .whereLayer("visits")
            .mayOnlyBeAccessedByLayers("guidance", "wording", "report", "session", "phone", "ui", "cli", "bench")
            .whereLayer("findings")
            .mayOnlyBeAccessedByLayers(
                    "exchange",
                    "plan",
                    "guidance",
                    "visits",
                    "wording",
                    "report",
                    "session",
                    "phone",
                    "ui",
                    "cli",
                    "bench")
            .whereLayer("day")
            .mayOnlyBeAccessedByLayers("wording", "report", "session", "phone", "ui", "cli", "bench")
            .whereLayer("lake")
            .mayOnlyBeAccessedByLayers("exchange", "cli")
            .whereLayer("surface")
            .mayOnlyBeAccessedByLayers(
                    "exchange",
                    "lake",
                    "findings",
                    "plan",
                    "guidance",
                    "visits",
                    "wording",
                    "report",
                    "session",
                    "phone",
                    "ui",
                    "cli",
                    "bench")
            .whereLayer("shelf")
            .mayOnlyBeAccessedByLayers("exchange", "session", "ui", "cli")
            .whereLayer("table")
            .mayOnlyBeAccessedByLayers("exchange", "session", "ui", "cli", "bench")
            .whereLayer("disk")
            .mayOnlyBeAccessedByLayers("exchange", "shelf", "table", "session", "ui", "cli", "bench", "start")
            .whereLayer("peg file")
            .mayOnlyBeAccessedByLayers("exchange", "disk", "shelf", "table", "session", "phone", "ui", "cli", "bench")
            .whereLayer("notation")
            .mayOnlyBeAccessedByLayers(
                    "geodesy",
                    "exchange",
                    "findings",
                    "plan",
                    "guidance",
                    "visits",
                    "wording",
                    "report",
                    "session",
                    "phone",
                    "ui",
                    "cli")
            .whereLayer("exchange")
            .mayOnlyBeAccessedByLayers("ui", "cli")
            .whereLayer("geodesy")
            .mayOnlyBeAccessedByLayers("exchange", "ui", "cli")
            .whereLayer("geometry")
            .mayOnlyBeAccessedByLayers(
                    "exchange",
                    "notation",
                    "surface",
                    "lake",
                    "findings",
                    "plan",
                    "guidance",
                    "visits",
                    "wording",
                    "report",
                    "session",
                    "phone",
                    "ui",
                    "cli",
                    "bench");

    /** Every package by itself, also those within another. */
    @ArchTest
    static final ArchRule noCycles = slices().matching("pegbed.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule modelIsPlainJava = noClasses()
            .that()
            .resideInAPackage("pegbed.model..")
            .should()
            .dependOnClassesThat()
            .resideOutsideOfPackages("java..", "pegbed.model..");

    @ArchTest
    static final ArchRule toolkitOnlyInUi = noClasses()
            .that()
            .resideOutsideOfPackage("pegbed.ui..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx..");

    @ArchTest
    static final ArchRule projectionsOnlyInGeodesy = noClasses()
            .that()
            .resideOutsideOfPackage("pegbed.geodesy..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.apache.sis..", "org.opengis..");

    /** What is printed and stored does not hang on the person's language: digits, decimal points, capitals. */
    @ArchTest
    static final ArchRule formattingNamesItsLocale = noClasses()
            .should()
            .callMethod(String.class, "format", String.class, Object[].class)
            .orShould()
            .callMethod(String.class, "formatted", Object[].class)
            .orShould()
            .callMethod(String.class, "toUpperCase")
            .orShould()
            .callMethod(String.class, "toLowerCase")
            .orShould()
            .callMethod(PrintStream.class, "printf", String.class, Object[].class)
            .orShould()
            .callMethod(PrintStream.class, "format", String.class, Object[].class)
            .orShould()
            .callMethod(PrintWriter.class, "printf", String.class, Object[].class)
            .orShould()
            .callMethod(PrintWriter.class, "format", String.class, Object[].class)
            .orShould()
            .callConstructor(Formatter.class)
            .orShould()
            .callConstructor(Formatter.class, Appendable.class)
            .orShould()
            .callConstructor(Scanner.class, InputStream.class)
            .orShould()
            .callConstructor(Scanner.class, String.class)
            .orShould()
            .callMethod(DateTimeFormatter.class, "ofPattern", String.class)
            .orShould()
            .callMethod(NumberFormat.class, "getInstance")
            .orShould()
            .callMethod(NumberFormat.class, "getNumberInstance")
            .orShould()
            .callConstructor(DecimalFormat.class, String.class)
            .orShould()
            .callMethod(Locale.class, "getDefault");

    /** What is compiled for a page too, where there is no disk, no toolkit and one thread. */
    private static final String[] CORE = {
        "pegbed.model..",
        "pegbed.geometry..",
        "pegbed.notation..",
        "pegbed.surface..",
        "pegbed.findings..",
        "pegbed.guidance..",
        "pegbed.visits..",
        "pegbed.plan..",
        "pegbed.day..",
        "pegbed.wording..",
        "pegbed.report.day..",
        "pegbed.report.drawing..",
        "pegbed.report.map..",
        "pegbed.storage.peg..",
        "pegbed.phone"
    };

    /** What of the open document a page has too; the rest of its package is for threads and the disk. */
    private static final Class<?>[] CORE_OF_SESSION = {
        DayAnswer.class,
        DayEdits.class,
        DayTaps.class,
        Edit.class,
        LineEdits.class,
        MissingInputs.class,
        OpenPeg.class,
        PlaceEdits.class,
        PlanEdits.class,
        ReadingAt.class,
        ReadingEdits.class,
        ReadingWheels.class,
        SectionStops.class,
        TypedDay.class,
        VisitEdits.class
    };

    @ArchTest
    static final ArchRule phoneUsesTheCoreOfSession = noClasses()
            .that()
            .resideInAPackage("pegbed.phone..")
            .should()
            .dependOnClassesThat(resideInAPackage("pegbed.session").and(not(belongToAnyOf(CORE_OF_SESSION))));

    @ArchTest
    static final ArchRule coreNeedsNoPlatform = noClasses()
            .that(resideInAnyPackage(CORE).or(belongToAnyOf(CORE_OF_SESSION)))
            .and()
            .doNotBelongToAnyOf(Fingerprint.class)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "java.nio.file..",
                    "java.util.concurrent",
                    "java.util.concurrent.locks..",
                    "java.awt..",
                    "javax..",
                    "java.text..",
                    "java.time.format..",
                    "java.security..",
                    "com.fasterxml.jackson.databind..")
            .orShould()
            .dependOnClassesThat()
            .belongToAnyOf(StringJoiner.class, Formatter.class, AtomicReferenceArray.class);

    @ArchTest
    static final ArchRule coreCallsNothingThatAPageLacks = noClasses()
            .that(resideInAnyPackage(CORE).or(belongToAnyOf(CORE_OF_SESSION)))
            .should()
            .callMethod(String.class, "format", Locale.class, String.class, Object[].class)
            .orShould()
            .callMethod(Matcher.class, "results")
            .orShould()
            .callMethod(IntStream.class, "parallel")
            .orShould()
            .callMethod(Collection.class, "parallelStream")
            .orShould()
            .callMethod(List.class, "parallelStream");

    /** Several cores are used through one class alone. */
    @ArchTest
    static final ArchRule oneClassUsesSeveralCores = noClasses()
            .that()
            .resideOutsideOfPackages("pegbed.bench..")
            .and()
            .doNotBelongToAnyOf(Parallel.class)
            .should()
            .callMethod(Stream.class, "parallel")
            .orShould()
            .callMethod(IntStream.class, "parallel")
            .orShould()
            .callMethod(Collection.class, "parallelStream")
            .orShould()
            .callMethod(List.class, "parallelStream")
            .orShould()
            .dependOnClassesThat()
            .belongToAnyOf(ForkJoinPool.class);

    @ArchTest
    static final ArchRule streamsOnlyInCli = noClasses()
            .that()
            .resideOutsideOfPackages("pegbed.cli..", "pegbed")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err");
}
