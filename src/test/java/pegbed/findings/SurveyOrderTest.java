package pegbed.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** IHO S-44, Standards for Hydrographic Surveys, Edition 6, Table 1: largest uncertainty at 2 m. */
class SurveyOrderTest {
    @ParameterizedTest
    @CsvSource({"EXCLUSIVE,0.1507", "SPECIAL,0.2504", "ORDER_1A,0.5007", "ORDER_1B,0.5007", "ORDER_2,1.0011"})
    void largestUncertaintyAtTwoMetres(SurveyOrder order, double metres) {
        assertEquals(metres, order.largestUncertainty(2), 5e-5);
    }

    @Test
    void theStrictestOrderThatIsMet() {
        assertEquals(Optional.of(SurveyOrder.EXCLUSIVE), SurveyOrder.metBy(2, 0.0768));
        assertEquals(Optional.of(SurveyOrder.SPECIAL), SurveyOrder.metBy(2, 0.0770));
        assertTrue(SurveyOrder.metBy(2, 0.52).isEmpty());
    }
}
