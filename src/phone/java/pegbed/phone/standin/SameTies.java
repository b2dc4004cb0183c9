package pegbed.phone.standin;

import java.util.List;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.MethodHolder;
import org.teavm.model.ReferenceCache;
import org.teavm.parsing.ClassRefsRenamer;
import org.teavm.vm.spi.TeaVMHost;
import org.teavm.vm.spi.TeaVMPlugin;

/**
 * Of places with equal room JTS's {@code MaximumInscribedCircle} takes the one that its queue gives first, which the
 * JDK's queue and that of the compiler's library settle differently. Here it gets {@link BinaryHeap}, so that the middle of
 * a flat spot is the same everywhere.
 */
public final class SameTies implements TeaVMPlugin {
    private static final String CIRCLE = "org.locationtech.jts.algorithm.construct.MaximumInscribedCircle";

    @Override
    public void install(TeaVMHost host) {
        host.add((ClassHolderTransformer) (holder, context) -> replace(holder));
    }

    private static void replace(ClassHolder holder) {
        if (holder.getName().equals(CIRCLE)) {
            ClassRefsRenamer renamer = new ClassRefsRenamer(
                    new ReferenceCache(),
                    name -> name.equals("java.util.PriorityQueue") ? BinaryHeap.class.getName() : name);
            for (MethodHolder method : List.copyOf(holder.getMethods())) {
                holder.removeMethod(method);
                holder.addMethod(renamer.rename(method));
            }
        }
    }
}
