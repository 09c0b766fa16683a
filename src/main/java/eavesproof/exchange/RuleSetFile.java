package eavesproof.exchange;

import eavesproof.quantity.Decimals;
import eavesproof.rules.Decision;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleProblem;
import eavesproof.rules.RuleSet;
import eavesproof.rules.RuleSet.Document;
import eavesproof.rules.RuleSet.Standing;
import eavesproof.rules.Stated;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** What {@code rule-set.json} says of a rule set. */
public final class RuleSetFile {
    /** How rule sets are called, and the folders that they lie in. */
    public static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,60}");

    private static final Pattern RULE = Pattern.compile("[A-Za-z0-9][A-Za-z0-9 .-]{0,79}");
    private static final Pattern KIND = Pattern.compile("[A-Z][A-Za-z]{1,40}");
    private static final Pattern KEY = Pattern.compile("[A-Za-z0-9][A-Za-z0-9 .-]{0,59}");

    private static final Pattern STATED = Pattern.compile("[a-z0-9_]{1,40}( [A-Za-z0-9 -]{1,40})?");
    private static final int MOST_DECIMALS = 9;

    private static final Map<String, Standing> STANDINGS = standings();

    private RuleSetFile() {}

    /**
     * The rule set without its rules.
     *
     * @param file what messages call it
     * @throws RefusedRules with everything that is wrong with the file
     */
    public static RuleSet read(String file, byte[] bytes) throws RefusedRules {
        Problems problems = new Problems();
        Found found = LocatedJson.read(bytes, problems);
        RuleSet ruleSet = found == null ? null : ruleSet(new ObjectReader(found, problems));
        if (ruleSet == null || !problems.none()) {
            throw new RefusedRules(
                    problems.inFileOrder().stream().map(one -> problem(file, one)).toList());
        }
        return ruleSet;
    }

    private static RuleProblem problem(String file, RecordProblem problem) {
        String key = problem.pointer().isEmpty() ? "" : " at " + problem.pointer();
        return new RuleProblem(
                file + ":" + problem.line() + ":" + problem.column(),
                problem.found() + key,
                problem.expected());
    }

    private static RuleSet ruleSet(ObjectReader in) {
        RuleSet read =
                new RuleSet(
                        in.text("name", NAME, "small letters, digits and hyphens"),
                        in.text("title"),
                        in.text("jurisdiction"),
                        in.mayBe("builds_on", NAME, "the name of a rule set, or null"),
                        in.texts("replaces", RULE, "the name of a rule", false),
                        in.textByKey("drops", RULE, "the name of a rule, with the reason"),
                        documents(in),
                        in.texts("clauses_not_checked", ObjectReader.LINE, "a text", true),
                        in.texts("must_judge", KIND, "the name of a fact kind", true),
                        decision(in),
                        basis(in),
                        List.of());
        in.nothingElse();
        return read;
    }

    private static Map<String, Standing> standings() {
        Map<String, Standing> byWords = new LinkedHashMap<>();
        Arrays.stream(Standing.values()).forEach(one -> byWords.put(one.words(), one));
        return byWords;
    }

    private static Map<String, Document> documents(ObjectReader in) {
        Map<String, Document> documents = new LinkedHashMap<>();
        in.objects("documents", KEY, "the key of a document")
                .forEach((key, one) -> documents.put(key, document(key, one)));
        return documents;
    }

    private static Document document(String key, ObjectReader in) {
        Document document =
                new Document(
                        key,
                        in.text("title"),
                        in.text("edition", ObjectReader.LINE_OR_EMPTY, "a text, empty if none"),
                        in.date("valid_from"),
                        in.date("valid_to"),
                        in.date("date_checked"),
                        in.oneOf("standing", STANDINGS));
        in.nothingElse();
        return document;
    }

    private static Map<String, Stated> basis(ObjectReader in) {
        Map<String, Stated> basis = new LinkedHashMap<>();
        in.objects("basis", STATED, "a key of the basis")
                .forEach((key, one) -> basis.put(key, stated(one)));
        return basis;
    }

    private static Stated stated(ObjectReader in) {
        Found is = in.take("is");
        Rule.Literal value =
                is != null && is.value() instanceof Double number
                        ? new Rule.Num(number, Decimals.plain(number, MOST_DECIMALS))
                        : new Rule.Text(in.text("is", ObjectReader.LINE, "a number or a text"));
        Stated stated = new Stated(value, new Rule.Cited(in.text("source"), ""));
        in.nothingElse();
        return stated;
    }

    /**
     * "simple", or an object with the factor of the guard band; nothing leaves it to what is below.
     */
    private static Optional<Decision> decision(ObjectReader in) {
        Found written = in.take("decision");
        if (written == null || written.value() == LocatedJson.Nothing.NULL) {
            return Optional.empty();
        }
        if (written.value().equals("simple")) {
            return Optional.of(Decision.SIMPLE);
        }
        Found guard = written.keys().size() == 1 ? written.at("guard") : null;
        if (guard != null
                && guard.value() instanceof Double factor
                && factor >= 0
                && factor <= Decision.MOST_GUARD
                && factor == Decimals.rounded(factor, 3)) {
            return Optional.of(new Decision(factor));
        }
        in.problem(
                written,
                "another decision",
                "\"simple\", {\"guard\": 0 to 10, three decimals}, or null");
        return Optional.empty();
    }
}
