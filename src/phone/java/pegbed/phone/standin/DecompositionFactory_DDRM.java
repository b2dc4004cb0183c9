package pegbed.phone.standin;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.decomposition.chol.CholeskyDecompositionInner_DDRM;
import org.ejml.dense.row.decomposition.eig.SymmetricQRAlgorithmDecomposition_DDRM;
import org.ejml.dense.row.decomposition.hessenberg.TridiagonalDecompositionHouseholder_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * Stands for EJML's class of this name, which takes other ways for matrices of more than a thousand rows: no peg has so
 * many readings, and the ways for smaller ones do those too.
 */
@SuppressWarnings("MemberName") // the name is EJML's
public final class DecompositionFactory_DDRM {
    private DecompositionFactory_DDRM() {}

    public static CholeskyDecomposition_F64<DMatrixRMaj> chol(int rows, boolean lower) {
        return new CholeskyDecompositionInner_DDRM(lower);
    }

    public static EigenDecomposition_F64<DMatrixRMaj> eig(int rows, boolean vectors, boolean symmetric) {
        if (!symmetric) {
            throw new UnsupportedOperationException("only symmetric matrices are decomposed");
        }
        return new SymmetricQRAlgorithmDecomposition_DDRM(new TridiagonalDecompositionHouseholder_DDRM(), vectors);
    }
}
