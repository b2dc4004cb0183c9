package pegbed.phone.standin;

import java.util.Map;
import org.teavm.extension.spi.substitution.SubstitutionPolicy;
import org.teavm.extension.spi.substitution.SubstitutionSink;

/** Which classes are replaced by those of this package; named to the compiler in META-INF/services. */
public final class StandIns implements SubstitutionPolicy {
    private static final Map<String, String> PACKAGES = Map.of(
            "DecompositionFactory_DDRM", "org.ejml.dense.row.factory",
            "OrdinateFormat", "org.locationtech.jts.io",
            "GeometryRelate", "org.locationtech.jts.geom",
            "ReentrantLock", "java.util.concurrent.locks",
            "AtomicReferenceArray", "java.util.concurrent.atomic",
            "DoubleToDecimal", "com.fasterxml.jackson.core.io.schubfach");

    @Override
    public void contribute(SubstitutionSink sink) {
        PACKAGES.forEach((name, of) -> sink.selectClasses((of + "." + name)::equals)
                .replacePackage(of, StandIns.class.getPackageName()));
    }
}
