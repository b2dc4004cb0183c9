package pegbed.cli.output;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Where a command's answer goes, and whether it is for a machine. */
public final class Output {
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    @Option(names = "--json", description = "Answer in JSON, for machines.")
    private boolean json;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    public boolean json() {
        return json;
    }

    public PrintWriter out() {
        return spec.commandLine().getOut();
    }

    public PrintWriter err() {
        return spec.commandLine().getErr();
    }

    public ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    public ArrayNode array() {
        return JsonNodeFactory.instance.arrayNode();
    }

    public void print(JsonNode node) {
        try {
            out().println(MAPPER.writeValueAsString(node));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A number to so many decimals, without noise behind them. */
    public static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}
