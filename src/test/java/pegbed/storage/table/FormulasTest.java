package pegbed.storage.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.model.Bottom;
import pegbed.model.Extras;
import pegbed.model.InputException;
import pegbed.model.Place;
import pegbed.model.Precision;
import pegbed.model.Reading;
import pegbed.model.Typed;

class FormulasTest {
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {
                "=1+1, '=1+1",
                "+7, '+7",
                "-2, '-2",
                "@SUM(A1), '@SUM(A1)",
                "'=x, ''=x",
                "soft, soft",
                "'twas, 'twas"
            })
    void wordsThatWouldBeAFormulaAreMarkedAsText(String words, String cell) {
        assertEquals(cell, Formulas.asText(words));
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "'=1+1", "''-", "@a", "\t=1", "\r", "\n=1", "'", "''", "", "a=b", "-", "'a", "é"})
    void aNoteComesBackAsItWas(String note) throws InputException {
        Reading reading = new Reading(
                Typed.NOTHING, Place.polar(5, 0), Precision.PLAIN, 1, Bottom.SILT, note, Optional.empty(), Extras.NONE);
        String table = ReadingsTable.write(List.of(reading));
        assertEquals(
                note,
                ReadingsTable.read(new StringReader(table), "r.csv")
                        .readings()
                        .get(0)
                        .note());
    }
}
