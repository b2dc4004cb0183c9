package pegbed.phone.standin;

import java.util.Locale;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.MethodDescriptor;
import org.teavm.model.MethodHolder;
import org.teavm.model.emit.ProgramEmitter;
import org.teavm.vm.spi.TeaVMHost;
import org.teavm.vm.spi.TeaVMPlugin;

/**
 * Libraries use {@code String.format} in the messages of their errors, and EJML a {@code DecimalFormat} in texts of
 * matrices; both bring the currencies, languages and time zones of the world into the page. In their places simpler texts
 * do. What is shown to a person is never made so: ArchitectureTest keeps {@code String.format} out of the core.
 */
public final class Messages implements TeaVMPlugin {
    @Override
    public void install(TeaVMHost host) {
        host.add((ClassHolderTransformer) Messages::replace);
    }

    private static void replace(ClassHolder holder, ClassHolderTransformerContext context) {
        if (holder.getName().equals("java.lang.String")) {
            MethodHolder plain = holder.getMethod(
                    new MethodDescriptor("format", String.class, Object[].class, String.class));
            ProgramEmitter of = ProgramEmitter.create(plain, context.getHierarchy());
            of.invoke(Inserted.class, "into", String.class, of.var(1, String.class), of.var(2, Object[].class))
                    .returnValue();
            MethodHolder local = holder.getMethod(
                    new MethodDescriptor("format", Locale.class, String.class, Object[].class, String.class));
            ProgramEmitter in = ProgramEmitter.create(local, context.getHierarchy());
            in.invoke(Inserted.class, "into", String.class, in.var(2, String.class), in.var(3, Object[].class))
                    .returnValue();
        } else if (holder.getName().equals("org.ejml.UtilEjml")) {
            for (MethodHolder method : holder.getMethods()) {
                if (method.getName().startsWith("fancyString")) {
                    ProgramEmitter text = ProgramEmitter.create(method, context.getHierarchy());
                    text.invoke(Double.class, "toString", String.class, text.var(1, double.class)).returnValue();
                }
            }
        }
    }
}
