package pegbed.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbed.model.InputException;

class LatitudeLongitudeTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "52.1234,-1.2345     | 52.1234 | -1.2345",
                "52.1234 -1.2345     | 52.1234 | -1.2345",
                "52,1234; -1,2345    | 52.1234 | -1.2345",
                "52,1234 1,2345      | 52.1234 | 1.2345",
                "-33.5, 18           | -33.5   | 18",
                "52.5 N 1.25 W       | 52.5    | -1.25",
                "52.5n, 1.25w        | 52.5    | -1.25",
                "52°30'N 1°15'E      | 52.5    | 1.25",
                "52°30'36.0\"S 1°15'18\"E | -52.51 | 1.255",
                "52° 30.6′ N, 1° 15.3′ W | 52.51  | -1.255"
            })
    void isReadAsPeopleWriteIt(String text, double latitude, double longitude) throws InputException {
        LatitudeLongitude read = LatitudeLongitude.parse(text);
        assertEquals(latitude, read.latitudeDegrees(), 1e-9);
        assertEquals(longitude, read.longitudeDegrees(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "52.1", "post", "91,0", "52,181", "52°61'N 1°0'E", "1.25 W 52.5 N", "52.1,-1.2,3", "NaN,1"})
    void whatIsNoneIsRefusedWithAnExample(String text) {
        InputException refused = assertThrows(InputException.class, () -> LatitudeLongitude.parse(text));
        assertTrue(
                refused.getMessage().endsWith("such as 52.1234,-1.2345 or 52°07'24\"N 1°14'04\"W."),
                refused.getMessage());
    }

    @Test
    void itIsWrittenAsItIsRead() throws InputException {
        assertEquals("52.5,-1.25", LatitudeLongitude.parse("52°30'N 1°15'W").text());
    }
}
