package eavesproof.exchange;

import com.fasterxml.jackson.core.JsonGenerator;
import eavesproof.findings.Finding;
import eavesproof.findings.Rounding;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import eavesproof.survey.Place;
import eavesproof.survey.Provenance;
import eavesproof.survey.Working;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One finding as JSON. */
final class FindingJson {
    private static final int DECIMALS_OF_A_PROBABILITY = 4;

    private FindingJson() {}

    static void write(JsonGenerator json, Finding finding) throws IOException {
        json.writeStartObject();
        json.writeStringField("rule", finding.rule());
        json.writeStringField("topic", finding.topic());
        json.writeStringField("says", finding.says());
        json.writeStringField("verdict", finding.verdict().id());
        subject(json, finding);
        measured(json, finding);
        provenance(json, finding.provenance().orElse(null));
        limit(json, finding);
        margin(json, finding);
        Optional<Double> probability = finding.probability();
        if (probability.isPresent()) {
            number(json, "probability", probability.get(), DECIMALS_OF_A_PROBABILITY);
        } else {
            json.writeNullField("probability");
        }
        json.writeStringField("decision", finding.decision());
        json.writeStringField("because", joined(finding.because()));
        FindingsFile.strings(json, "assumed", finding.assumed());
        source(json, finding.source());
        json.writeStringField("remedy", finding.remedy().orElse(null));
        json.writeArrayFieldStart("workings");
        for (Working working : finding.workings()) {
            json.writeStartObject();
            json.writeStringField("name", working.name());
            json.writeStringField("value", working.value());
            json.writeStringField("from", working.from());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** The reasons in one string; null where there are none. */
    static @Nullable String joined(List<String> reasons) {
        return reasons.isEmpty() ? null : String.join("; ", reasons);
    }

    private static void subject(JsonGenerator json, Finding finding) throws IOException {
        Place place = finding.place();
        json.writeObjectFieldStart("subject");
        json.writeStringField("kind", finding.kind());
        for (Map.Entry<String, String> key : place.keys().entrySet()) {
            json.writeStringField(snake(key.getKey()), key.getValue());
        }
        if (place.stretch().isPresent()) {
            Place.Stretch stretch = place.stretch().get();
            if (place.key("straight").isEmpty()) {
                json.writeStringField("straight", stretch.straight());
            }
            number(json, "from_mm", stretch.fromMm(), Unit.MM.decimals());
            number(json, "to_mm", stretch.toMm(), Unit.MM.decimals());
        }
        json.writeEndObject();
    }

    private static void measured(JsonGenerator json, Finding finding) throws IOException {
        Finding.Measured measured = finding.measured().orElse(null);
        if (measured == null) {
            json.writeNullField("measured");
            return;
        }
        json.writeObjectFieldStart("measured");
        if (measured instanceof Finding.MeasuredNumber number) {
            Unit unit = number.unit();
            number(json, "value", number.value(), Rounding.decimals(finding));
            json.writeStringField("unit", unit.symbol());
            if (number.expandedUncertainty().isPresent()) {
                double expanded = number.expandedUncertainty().get();
                number(json, "expanded_uncertainty", expanded, Rounding.decimals(expanded, unit));
            } else {
                json.writeNullField("expanded_uncertainty");
            }
        } else if (measured instanceof Finding.MeasuredWord word) {
            json.writeStringField("word", word.word());
        }
        json.writeEndObject();
    }

    private static void provenance(JsonGenerator json, @Nullable Provenance provenance)
            throws IOException {
        if (provenance == null) {
            json.writeNullField("provenance");
            return;
        }
        json.writeObjectFieldStart("provenance");
        json.writeStringField("how", provenance.how());
        json.writeStringField("by", provenance.by().orElse(null));
        json.writeStringField("reference", provenance.reference().orElse(null));
        json.writeEndObject();
    }

    private static void limit(JsonGenerator json, Finding finding) throws IOException {
        Finding.Limit limit = finding.limit().orElse(null);
        if (limit == null) {
            json.writeNullField("limit");
            return;
        }
        json.writeObjectFieldStart("limit");
        if (limit instanceof Finding.NumberLimit number) {
            json.writeStringField("is", number.atMost() ? "at-most" : "at-least");
            number(json, "value", number.value(), decimals(finding, number.unit()));
            json.writeStringField("unit", number.unit().symbol());
            json.writeStringField("as_written", number.asWritten());
        } else if (limit instanceof Finding.WordLimit word) {
            json.writeStringField("is", "one-of");
            FindingsFile.strings(json, "words", word.words());
        }
        json.writeEndObject();
    }

    /** A margin is in the unit of its limit. */
    private static void margin(JsonGenerator json, Finding finding) throws IOException {
        if (finding.margin().isPresent()
                && finding.limit().orElse(null) instanceof Finding.NumberLimit limit) {
            number(json, "margin", finding.margin().get(), decimals(finding, limit.unit()));
        } else {
            json.writeNullField("margin");
        }
    }

    private static void source(JsonGenerator json, Finding.Source source) throws IOException {
        json.writeObjectFieldStart("source");
        json.writeStringField("document", source.document());
        json.writeStringField("edition", source.edition());
        json.writeStringField("clause", source.clause());
        json.writeStringField("standing", source.standing().words());
        json.writeEndObject();
    }

    private static int decimals(Finding finding, Unit unit) {
        return Math.max(unit.decimals(), Rounding.decimals(finding));
    }

    private static void number(JsonGenerator json, String name, double value, int decimals)
            throws IOException {
        json.writeFieldName(name);
        json.writeNumber(new BigDecimal(Decimals.plain(value, decimals)));
    }

    private static String snake(String key) {
        return key.replaceAll("(?<=[a-z])(?=[A-Z])", "_").toLowerCase(Locale.ROOT);
    }
}
