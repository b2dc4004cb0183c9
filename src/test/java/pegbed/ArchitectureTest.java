package pegbed;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

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
            .layer("session")
            .definedBy("pegbed.session..")
            .layer("report")
            .definedBy("pegbed.report..")
            .layer("storage")
            .definedBy("pegbed.storage..")
            .layer("bench")
            .definedBy("pegbed.bench..")
            .layer("analysis")
            .definedBy("pegbed.analysis..")
            .layer("surface")
            .definedBy("pegbed.surface..")
            .layer("notation")
            .definedBy("pegbed.notation..")
            .layer("geometry")
            .definedBy("pegbed.geometry..")
            .layer("model")
            .definedBy("pegbed.model..")
            .whereLayer("start")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("ui")
            .mayOnlyBeAccessedByLayers("start")
            .whereLayer("cli")
            .mayOnlyBeAccessedByLayers("start")
            .whereLayer("session")
            .mayOnlyBeAccessedByLayers("ui", "cli")
            .whereLayer("bench")
            .mayOnlyBeAccessedByLayers("cli")
            .whereLayer("report")
            .mayOnlyBeAccessedByLayers("session", "ui", "cli")
            .whereLayer("storage")
            .mayOnlyBeAccessedByLayers("session", "ui", "cli", "bench")
            .whereLayer("analysis")
            .mayOnlyBeAccessedByLayers("report", "session", "ui", "cli", "bench")
            .whereLayer("surface")
            .mayOnlyBeAccessedByLayers("analysis", "report", "session", "ui", "cli", "bench")
            .whereLayer("notation")
            .mayOnlyBeAccessedByLayers("analysis", "report", "session", "ui", "cli")
            .whereLayer("geometry")
            .mayOnlyBeAccessedByLayers("notation", "surface", "analysis", "report", "session", "ui", "cli", "bench");

    @ArchTest
    static final ArchRule noCycles = slices().matching("pegbed.(*)..").should().beFreeOfCycles();

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
    static final ArchRule streamsOnlyInCli = noClasses()
            .that()
            .resideOutsideOfPackages("pegbed.cli..", "pegbed")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err");
}
