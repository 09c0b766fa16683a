package eavesproof.check.drools;

import eavesproof.rules.Decision;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drools.drl.ast.descr.AnnotationDescr;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.drools.drl.ast.descr.RuleDescr;

/** Reads one rule: its name, what is said about it, its patterns and what it demands. */
final class RuleReader {
    private static final int MOST_PATTERNS = 8;
    private static final List<String> NEEDED = List.of("topic", "says", "source");
    private static final String DECISION = "decision";
    private static final int LONGEST = 300;

    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9]+([ .-]+[A-Za-z0-9]+)*");
    private static final Pattern PLAIN = Pattern.compile("\"([!#-~]+( [!#-~]+)*)\"");
    private static final Pattern GUARDED = Pattern.compile("guarded ([0-9]{1,2}(\\.[0-9]{1,3})?)");

    private final String file;
    private final Tokens tokens;
    private final Problems problems;
    private final TreeMap<String, String> said = new TreeMap<>();

    /**
     * @param tokens of the whole file, which know the lines better than the parser
     */
    RuleReader(String file, Tokens tokens, Problems problems) {
        this.file = file;
        this.tokens = tokens;
        this.problems = problems;
    }

    /** The rule, or nothing where something is wrong with it. */
    Optional<Rule> read(RuleDescr parsed) {
        int line = parsed.getLine();
        name(parsed);
        nothingElse(parsed);
        annotations(parsed);
        Optional<Decision> decision = decision(line);
        Scope scope = new Scope();
        List<Rule.Pattern> patterns = patterns(parsed, scope);
        namesItsGutterKind(line, patterns);
        Optional<Rule.Demand> demand =
                new DemandReader(scope, problems)
                        .read(
                                String.valueOf(parsed.getConsequence()),
                                tokens.lineAfter("then", parsed.getConsequenceLine()));
        if (demand.isEmpty() || problems.any()) {
            return Optional.empty();
        }
        return Optional.of(
                new Rule(
                        parsed.getName(),
                        said.getOrDefault("topic", ""),
                        said.getOrDefault("says", ""),
                        cited(said.getOrDefault("source", "")),
                        decision,
                        patterns.get(0),
                        patterns.subList(1, patterns.size()),
                        demand.get(),
                        file,
                        line));
    }

    private void name(RuleDescr rule) {
        String name = String.valueOf(rule.getName());
        if (name.length() > 80 || name.contains("  ") || !NAME.matcher(name).matches()) {
            problems.add(
                    rule.getLine(),
                    "the rule name " + name,
                    "at most 80 letters, digits, spaces, dots and hyphens");
        }
    }

    private void nothingElse(RuleDescr rule) {
        int line = rule.getLine();
        if (rule.isQuery() || rule.getClass() != RuleDescr.class) {
            problems.add(line, "a query", "a rule");
        }
        if (rule.getParentName() != null) {
            problems.add(line, "extends", "a rule that stands alone");
        }
        if (rule.getUnit() != null) {
            problems.add(line, "a unit", "a rule that stands alone");
        }
        for (String attribute : new TreeMap<>(rule.getAttributes()).keySet()) {
            problems.add(line, attribute, "no attributes");
        }
        if (!rule.getNamedConsequences().isEmpty()) {
            problems.add(line, "a named consequence", "one then");
        }
    }

    private void annotations(RuleDescr rule) {
        int line = rule.getLine();
        TreeMap<String, AnnotationDescr> sorted = new TreeMap<>();
        rule.getAnnotations().forEach(one -> sorted.put(String.valueOf(one.getName()), one));
        sorted.forEach(
                (name, annotation) -> {
                    String value = written(annotation);
                    Matcher plain = PLAIN.matcher(value);
                    if (!NEEDED.contains(name) && !name.equals(DECISION)) {
                        problems.add(line, "@" + name, "@topic, @says, @source or @decision");
                    } else if (annotation.isDuplicated()) {
                        problems.add(line, "@" + name + " twice", "it once");
                    } else if (annotation.getValueMap().size() != 1 || !plain.matches()) {
                        problems.add(line, "@" + name + "(" + value + ")", "one text in quotes");
                    } else {
                        said.put(name, plain.group(1));
                    }
                });
        for (String name : NEEDED) {
            if (!sorted.containsKey(name)) {
                problems.add(line, "no @" + name, "@topic, @says and @source, each once");
            }
        }
    }

    /** As it stands in the file, cut off where nobody would read on. */
    private static String written(AnnotationDescr annotation) {
        String value = String.valueOf(annotation.getValueMap().get(AnnotationDescr.VALUE));
        return value.length() > LONGEST ? value.substring(0, LONGEST) : value;
    }

    private Optional<Decision> decision(int line) {
        String written = said.get(DECISION);
        if (written == null) {
            return Optional.empty();
        }
        Matcher guarded = GUARDED.matcher(written);
        if (guarded.matches() && Double.parseDouble(guarded.group(1)) <= Decision.MOST_GUARD) {
            Decision decision = new Decision(Double.parseDouble(guarded.group(1)));
            if (RuleText.decision(decision).equals(written)) {
                return Optional.of(decision);
            }
        } else if (written.equals("simple")) {
            return Optional.of(Decision.SIMPLE);
        }
        problems.add(line, "@decision of " + written, "simple, or guarded and a factor: guarded 1");
        return Optional.empty();
    }

    /** The first word is the document for now; the rule set that knows its documents settles it. */
    private static Rule.Cited cited(String source) {
        int space = source.indexOf(' ');
        return space < 0
                ? new Rule.Cited(source, "")
                : new Rule.Cited(source.substring(0, space), source.substring(space + 1));
    }

    private List<Rule.Pattern> patterns(RuleDescr rule, Scope scope) {
        List<Rule.Pattern> read = new ArrayList<>();
        PatternReader reader = new PatternReader(scope, problems);
        List<? extends BaseDescr> parts = rule.getLhs().getDescrs();
        if (parts.isEmpty() || parts.size() > MOST_PATTERNS) {
            problems.add(
                    rule.getLine(),
                    parts.size() + " patterns",
                    "a subject, and at most " + (MOST_PATTERNS - 1) + " circumstances");
            return List.of();
        }
        for (BaseDescr part : parts) {
            if (part.getClass() != PatternDescr.class) {
                String what = part.getClass().getSimpleName().replace("Descr", "");
                problems.add(part.getLine(), what, "plain fact patterns only");
            } else {
                reader.read((PatternDescr) part).ifPresent(read::add);
            }
        }
        return read;
    }

    /** An eaves rule must never pass a box gutter. */
    private void namesItsGutterKind(int line, List<Rule.Pattern> patterns) {
        if (patterns.isEmpty()) {
            return;
        }
        boolean named =
                patterns.get(0).kind().equals("GutterKind")
                        || patterns.stream()
                                .filter(pattern -> pattern.kind().equals("GutterKind"))
                                .flatMap(pattern -> pattern.conditions().stream())
                                .anyMatch(Rule.Compare.class::isInstance);
        if (!named) {
            problems.add(
                    line,
                    "no gutter kind",
                    "the kind that the rule is for: GutterKind(run == $run, named == \"eaves\")");
        }
    }
}
