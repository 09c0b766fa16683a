package eavesproof.exchange;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleText;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * The rules of one rule file as they were admitted, so that a file which was read once need not be
 * parsed again. It is read from the program's own jar, where the build wrote it, or from a folder
 * that is the user's alone.
 */
public final class RuleSheet {
    private static final JsonFactory JSON = new JsonFactory();

    private RuleSheet() {}

    public static byte[] write(List<Rule> rules) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (JsonGenerator json = JSON.createGenerator(bytes)) {
            json.writeStartArray();
            for (Rule rule : rules) {
                rule(json, rule);
            }
            json.writeEndArray();
        } catch (IOException e) {
            throw new UncheckedIOException("memory could not be written to", e);
        }
        return bytes.toByteArray();
    }

    /**
     * @param file what the rules call the file that they came from
     * @throws IllegalStateException if this is no sheet: a fault of the program
     */
    public static List<Rule> read(String file, byte[] sheet) {
        return SheetReader.read(file, sheet);
    }

    private static void rule(JsonGenerator json, Rule rule) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", rule.name());
        json.writeStringField("topic", rule.topic());
        json.writeStringField("says", rule.says());
        json.writeStringField("document", rule.source().document());
        json.writeStringField("clause", rule.source().clause());
        if (rule.decision().isPresent()) {
            json.writeNumberField("guard", rule.decision().get().guard());
        }
        json.writeNumberField("line", rule.line());
        json.writeFieldName("subject");
        pattern(json, rule.subject());
        json.writeArrayFieldStart("circumstances");
        for (Rule.Pattern circumstance : rule.circumstances()) {
            pattern(json, circumstance);
        }
        json.writeEndArray();
        json.writeFieldName("demand");
        demand(json, rule.demand());
        json.writeEndObject();
    }

    private static void pattern(JsonGenerator json, Rule.Pattern pattern) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", pattern.kind());
        json.writeStringField("variable", pattern.variable());
        json.writeArrayFieldStart("conditions");
        for (Rule.Condition condition : pattern.conditions()) {
            json.writeStartObject();
            json.writeStringField("field", condition.field());
            condition(json, condition);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void condition(JsonGenerator json, Rule.Condition condition) throws IOException {
        if (condition instanceof Rule.Bind bind) {
            json.writeStringField("bind", bind.variable());
        } else if (condition instanceof Rule.Join join) {
            json.writeStringField("join", join.variable());
        } else {
            Rule.Compare compare = (Rule.Compare) condition;
            json.writeStringField("operator", compare.operator().sign());
            if (compare.literal() instanceof Rule.Num number) {
                json.writeStringField("number", number.written());
            } else {
                json.writeStringField("word", ((Rule.Text) compare.literal()).word());
            }
        }
    }

    private static void demand(JsonGenerator json, Rule.Demand demand) throws IOException {
        json.writeStartObject();
        if (demand instanceof Rule.AtMost most) {
            json.writeStringField("unit", most.unit());
            json.writeFieldName("at_most");
            limit(json, most.limit());
        } else if (demand instanceof Rule.AtLeast least) {
            json.writeStringField("unit", least.unit());
            json.writeFieldName("at_least");
            limit(json, least.limit());
        } else if (demand instanceof Rule.OneOfTable choice) {
            json.writeFieldName("one_of_table");
            limit(json, choice.lookup());
        } else {
            json.writeArrayFieldStart("one_of");
            for (String word : ((Rule.OneOf) demand).words()) {
                json.writeString(word);
            }
            json.writeEndArray();
        }
        json.writeEndObject();
    }

    /** A number or variable as written, [operator, left, right], or a table with its keys. */
    private static void limit(JsonGenerator json, Rule.Limit limit) throws IOException {
        if (limit instanceof Rule.Constant constant) {
            json.writeString(constant.number().written());
        } else if (limit instanceof Rule.Bound bound) {
            json.writeString(bound.variable());
        } else if (limit instanceof Rule.Lookup lookup) {
            json.writeStartObject();
            json.writeStringField("table", lookup.table());
            json.writeArrayFieldStart("keys");
            for (Rule.Key key : lookup.keys()) {
                json.writeString(RuleText.key(key));
            }
            json.writeEndArray();
            json.writeEndObject();
        } else {
            Rule.Arithmetic sum = (Rule.Arithmetic) limit;
            json.writeStartArray();
            json.writeString(String.valueOf(sum.operator()));
            limit(json, sum.left());
            limit(json, sum.right());
            json.writeEndArray();
        }
    }
}
