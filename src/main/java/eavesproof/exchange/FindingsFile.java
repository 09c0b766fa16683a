package eavesproof.exchange;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import eavesproof.check.Coverage;
import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.findings.InWords;
import eavesproof.rules.RuleSet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * Findings as JSON for other programs, in the shape of {@code findings.schema.json}. The same
 * findings give the same bytes on every machine.
 */
public final class FindingsFile {
    private static final JsonFactory JSON =
            JsonFactory.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build();

    private FindingsFile() {}

    public static byte[] write(Findings findings) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (JsonGenerator json = JSON.createGenerator(bytes)) {
            json.setPrettyPrinter(layout());
            all(json, findings);
        } catch (IOException e) {
            throw new UncheckedIOException("memory could not be written to", e);
        }
        bytes.write('\n');
        return bytes.toByteArray();
    }

    private static PrettyPrinter layout() {
        // Lines end the same way whatever the machine is used to.
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        return new DefaultPrettyPrinter(
                        Separators.createDefaultInstance()
                                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                                .withArrayEmptySeparator(""))
                .withObjectIndenter(indent)
                .withArrayIndenter(indent);
    }

    private static void all(JsonGenerator json, Findings findings) throws IOException {
        json.writeStartObject();
        json.writeStringField("job", findings.job());
        json.writeStringField("job_sha256", findings.jobSha256());
        json.writeStringField("outcome", findings.outcome().id());
        json.writeFieldName("rules");
        rules(json, findings.rules());
        json.writeStringField("engine", findings.engine());
        strings(json, "clauses_not_checked", findings.rules().clausesNotChecked());
        json.writeArrayFieldStart("uncovered");
        for (Coverage.Uncovered uncovered : findings.uncovered()) {
            uncovered(json, uncovered);
        }
        json.writeEndArray();
        strings(json, "rests_on_assumed", findings.restsOnAssumed());
        strings(json, "rests_on_word", findings.restsOnWord());
        strings(json, "notices", findings.notices());
        json.writeArrayFieldStart("findings");
        for (Finding finding : findings.findings()) {
            FindingJson.write(json, finding);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void rules(JsonGenerator json, Findings.RulesUsed rules) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", rules.name());
        json.writeStringField("title", rules.title());
        json.writeStringField("jurisdiction", rules.jurisdiction());
        json.writeStringField("sha256", rules.sha256());
        json.writeStringField("words_sha256", rules.wordsSha256());
        json.writeBooleanField("as_shipped", rules.asShipped());
        strings(json, "changes", rules.changes());
        json.writeArrayFieldStart("documents");
        for (RuleSet.Document document : rules.documents().values()) {
            document(json, document);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void document(JsonGenerator json, RuleSet.Document document) throws IOException {
        json.writeStartObject();
        json.writeStringField("key", document.key());
        json.writeStringField("title", document.title());
        json.writeStringField("edition", document.edition());
        json.writeStringField("valid_from", document.validFrom().orElse(null));
        json.writeStringField("valid_to", document.validTo().orElse(null));
        json.writeStringField("checked", document.checked().orElse(null));
        json.writeStringField("standing", document.standing().words());
        json.writeEndObject();
    }

    private static void uncovered(JsonGenerator json, Coverage.Uncovered uncovered)
            throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", uncovered.kind().id());
        json.writeStringField("place", InWords.place(uncovered));
        json.writeStringField("why", FindingJson.joined(uncovered.why()));
        json.writeEndObject();
    }

    static void strings(JsonGenerator json, String name, List<String> strings) throws IOException {
        json.writeArrayFieldStart(name);
        for (String string : strings) {
            json.writeString(string);
        }
        json.writeEndArray();
    }
}
