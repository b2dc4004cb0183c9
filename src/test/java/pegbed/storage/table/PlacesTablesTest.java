package pegbed.storage.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbed.model.BankPoint;
import pegbed.model.Banks;
import pegbed.model.InputException;
import pegbed.model.Place;

/** Tables of banks and of points. */
class PlacesTablesTest {
    private static final String NEAR = "bank,x_m,y_m\nnear,-5,0.2\nnear,5,0\n";

    private static Banks banks(String text) throws InputException {
        return BanksTable.read(new StringReader(text), "b.csv").banks();
    }

    private static String bankRefusal(String text) {
        return assertThrows(InputException.class, () -> banks(text)).getMessage();
    }

    private static List<BankPoint> ring(double x) {
        return List.of(BankPoint.at(x, 6), BankPoint.at(x + 1, 7), BankPoint.at(x - 1, 7));
    }

    @Test
    void banksComeInOrder() throws InputException {
        Banks banks = banks("Bank;X (m);y_m\r\nfar;-5;13,5\r\nNear ;-5;0,2\r\nfar;0;12\r\nnear;5;0\r\n");
        assertEquals(
                new Banks(
                        List.of(BankPoint.at(-5, 0.2), BankPoint.at(5, 0)),
                        List.of(BankPoint.at(-5, 13.5), BankPoint.at(0, 12)),
                        List.of()),
                banks);
    }

    @Test
    void anotherIslandHasItsNumberOrComesAfterSomethingElse() throws InputException {
        String first = "island,0,6\nisland,1,7\nisland,-1,7\n";
        String second = "island,9,6\nisland,10,7\nisland,8,7\n";
        List<List<BankPoint>> both = List.of(ring(0), ring(9));
        assertEquals(List.of(ring(0)), banks(NEAR + first).islands());
        assertEquals(both, banks(NEAR + first + "near,6,0\n" + second).islands());
        assertEquals(
                both, banks(NEAR + first + second.replace("island", "island2")).islands());
        assertEquals(
                both,
                banks(NEAR + first.replace("island", "Island 1") + second.replace("island", "island 2"))
                        .islands());
        String apart = "island2,9,6\nnear,6,0\nisland2,10,7\nisland2,8,7\n";
        assertEquals(List.of(ring(9)), banks(NEAR + apart).islands());
    }

    @Test
    void aRingThatRepeatsItsFirstPointIsTheSameRing() throws InputException {
        assertEquals(
                List.of(ring(0)),
                banks(NEAR + "island,0,6\nisland,1,7\nisland,-1,7\nisland,0,6\n")
                        .islands());
    }

    @Test
    void badBanksAreRefusedWithASentence() {
        assertEquals(
                "b.csv has one point of the near bank, which needs two at least, such as near,-5,0 and near,5,0.",
                bankRefusal("bank,x_m,y_m\nnear,1,2\nfar,1,2\nfar,2,2\n"));
        assertTrue(bankRefusal("bank,x_m,y_m\n").contains("has no point of the near bank"));
        assertTrue(bankRefusal(NEAR + "far,1,13\n").contains("has one point of the far bank"));
        assertTrue(bankRefusal(NEAR + "island,1,6\nisland,2,6\n").contains("an island of 2 points"));
        assertEquals(
                "b.csv, line 4, column bank: \"left\" is no bank; right is, for example, near, far, island or island2.",
                bankRefusal(NEAR + "left,1,6\n"));
        assertTrue(bankRefusal(NEAR + ",1,6\n").contains("line 4, column bank: the bank is missing"));
        assertTrue(bankRefusal(NEAR + "far,x,6\n").contains("line 4, column x_m: \"x\" is not a number"));
        assertTrue(bankRefusal(NEAR + "far,1,NaN\n").contains("line 4, column y_m: \"NaN\" is not a number"));
        assertTrue(bankRefusal(NEAR + "far,1e9,1\n").contains("line 4, column x_m: 1e9 is out of range"));
        assertTrue(bankRefusal("x_m,y_m\n1,2\n").contains("there is no column bank"));
        assertTrue(bankRefusal("bank,y_m\nnear,2\n").contains("there is no column x_m"));
        assertTrue(bankRefusal("near,1,2\nnear,3,4\n").contains("has no header"));
        assertTrue(bankRefusal("").contains("is empty"));
    }

    @Test
    void pointsComeInOrderAndOtherColumnsAreNamed() throws InputException {
        PointsTable table = PointsTable.read(new StringReader("id,y_m,x_m\n1,2,-3\n2,4.5,0\n"), "p.csv");
        assertEquals(new PointsTable(List.of(new Place(-3, 2), new Place(0, 4.5)), List.of("id")), table);
    }

    @Test
    void badPointsAreRefusedWithASentence() {
        String sentence = assertThrows(
                        InputException.class, () -> PointsTable.read(new StringReader("x_m,y_m\n1,two\n"), "p.csv"))
                .getMessage();
        assertEquals("p.csv, line 2, column y_m: \"two\" is not a number; right is, for example, 11.5.", sentence);
    }

    @Test
    void filesAreReadLikeText(@TempDir Path folder) throws IOException, InputException {
        Path points = Files.writeString(folder.resolve("p.csv"), "x_m,y_m\n1,2\n");
        assertEquals(List.of(new Place(1, 2)), PointsTable.read(points).places());
        Path banks = Files.writeString(folder.resolve("b.csv"), NEAR);
        assertEquals(2, BanksTable.read(banks).banks().near().size());
    }
}
