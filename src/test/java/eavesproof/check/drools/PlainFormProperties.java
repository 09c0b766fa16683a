package eavesproof.check.drools;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eavesproof.exchange.RuleSheet;
import eavesproof.quantity.Unit;
import eavesproof.rules.Decision;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleText;
import eavesproof.survey.FactKind;
import eavesproof.survey.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Reading, printing and reading again gives the same rule, whatever the rule. */
class PlainFormProperties {

    @Property(tries = 300)
    void whatIsPrintedReadsBackAsTheSameRule(@ForAll("rules") Rule rule) throws RefusedRules {
        List<Rule> read = Plain.read(RuleText.of(rule));
        assertEquals(List.of(rule), read);
        assertEquals(RuleText.of(rule), RuleText.of(read));
    }

    @Property(tries = 300)
    void whatIsOnASheetReadsBackAsTheSameRule(@ForAll("rules") Rule rule) {
        byte[] sheet = RuleSheet.write(List.of(rule));
        assertEquals(List.of(rule), RuleSheet.read(rule.file(), sheet));
    }

    @Provide
    Arbitrary<Rule> rules() {
        return Arbitraries.of(Vocabulary.kinds()).flatMap(PlainFormProperties::onSubject);
    }

    private static Arbitrary<Rule> onSubject(FactKind subject) {
        List<Rule.Condition> keys = new ArrayList<>();
        subject.keys().forEach(key -> keys.add(new Rule.Bind("$" + key, key)));
        List<FactKind> others =
                Vocabulary.kinds().stream()
                        .filter(
                                kind ->
                                        !kind.equals(subject)
                                                && subject.keys().containsAll(kind.keys()))
                        .filter(kind -> !kind.name().equals("GutterKind"))
                        .toList();
        Arbitrary<List<Rule.Pattern>> circumstances =
                Arbitraries.of(others)
                        .set()
                        .ofMaxSize(4)
                        .flatMap(kinds -> all(kinds.stream().map(k -> circumstance(k)).toList()));
        Arbitrary<Optional<Decision>> decision =
                Arbitraries.of(0, 1, 500, 2250)
                        .map(thousandths -> new Decision(thousandths / 1000.0))
                        .optional();
        return Combinators.combine(name(), plain(), plain(), decision, circumstances)
                .flatAs(
                        (name, says, source, decided, met) ->
                                demand(subject, met)
                                        .map(
                                                demand ->
                                                        new Rule(
                                                                name,
                                                                "a topic",
                                                                says,
                                                                new Rule.Cited("doc", source),
                                                                decided,
                                                                new Rule.Pattern(
                                                                        subject.name(),
                                                                        "$it",
                                                                        keys),
                                                                withKind(subject, met),
                                                                demand,
                                                                "plain.drl",
                                                                1)));
    }

    private static List<Rule.Pattern> withKind(FactKind subject, List<Rule.Pattern> met) {
        if (subject.name().equals("GutterKind")) {
            return met;
        }
        Rule.Compare eaves = new Rule.Compare("named", Rule.Operator.EQUAL, new Rule.Text("eaves"));
        Rule.Pattern kind =
                new Rule.Pattern("GutterKind", "", List.of(new Rule.Join("run", "$run"), eaves));
        return Stream.concat(Stream.of(kind), met.stream()).toList();
    }

    private static Arbitrary<Rule.Pattern> circumstance(FactKind kind) {
        List<Rule.Condition> joins = new ArrayList<>();
        kind.keys().forEach(key -> joins.add(new Rule.Join(key, "$" + key)));
        return comparison(kind)
                .optional()
                .map(
                        comparison -> {
                            List<Rule.Condition> all = new ArrayList<>(joins);
                            comparison.ifPresent(all::add);
                            if (kind.isNumber()) {
                                all.add(new Rule.Bind("$of" + kind.name(), kind.measure()));
                            }
                            return new Rule.Pattern(kind.name(), "", all);
                        });
    }

    private static Arbitrary<Rule.Condition> comparison(FactKind kind) {
        if (!kind.isNumber()) {
            return Arbitraries.of(kind.words())
                    .map(
                            word ->
                                    new Rule.Compare(
                                            kind.measure(),
                                            Rule.Operator.EQUAL,
                                            new Rule.Text(word)));
        }
        Arbitrary<Rule.Operator> operators =
                Arbitraries.of(Rule.Operator.values())
                        .filter(
                                one ->
                                        one != Rule.Operator.EQUAL
                                                || kind.unit().equals(Optional.of(Unit.COUNT)));
        return Combinators.combine(operators, numbers())
                .as((operator, number) -> new Rule.Compare(kind.measure(), operator, number));
    }

    private static Arbitrary<Rule.Demand> demand(FactKind subject, List<Rule.Pattern> met) {
        if (!subject.isNumber()) {
            return Arbitraries.of(subject.words())
                    .set()
                    .ofMinSize(1)
                    .map(words -> new Rule.OneOf(List.copyOf(words)));
        }
        String unit = subject.unit().orElseThrow().symbol();
        List<Rule.Limit> leaves =
                met.stream()
                        .flatMap(pattern -> pattern.conditions().stream())
                        .filter(Rule.Bind.class::isInstance)
                        .<Rule.Limit>map(bind -> new Rule.Bound(((Rule.Bind) bind).variable()))
                        .collect(Collectors.toCollection(ArrayList::new));
        leaves.add(lookup(leaves));
        return limits(leaves, 3)
                .flatMap(
                        limit ->
                                Arbitraries.of(
                                        new Rule.AtMost(limit, unit),
                                        new Rule.AtLeast(limit, unit)));
    }

    private static Rule.Limit lookup(List<Rule.Limit> bound) {
        List<Rule.Key> keys = new ArrayList<>(List.of(new Rule.Text("a word")));
        keys.add(new Rule.Num(1.5, "1.5"));
        bound.stream().limit(2).forEach(one -> keys.add((Rule.Bound) one));
        return new Rule.Lookup("a-table", keys, Optional.empty());
    }

    private static Arbitrary<Rule.Limit> limits(List<Rule.Limit> bound, int depth) {
        Arbitrary<Rule.Limit> leaf = numbers().map(Rule.Constant::new);
        Arbitrary<Rule.Limit> some =
                bound.isEmpty() ? leaf : Arbitraries.oneOf(leaf, Arbitraries.of(bound));
        if (depth == 0) {
            return some;
        }
        Arbitrary<Rule.Limit> within = limits(bound, depth - 1);
        Arbitrary<Rule.Limit> sum =
                Combinators.combine(Arbitraries.of('+', '-', '*', '/'), within, within)
                        .as(
                                (sign, left, right) ->
                                        (Rule.Limit) new Rule.Arithmetic(sign, left, right))
                        .filter(PlainFormProperties::dividesByNoZero);
        return Arbitraries.oneOf(some, sum);
    }

    private static boolean dividesByNoZero(Rule.Limit limit) {
        return !(limit instanceof Rule.Arithmetic sum
                && sum.operator() == '/'
                && sum.right() instanceof Rule.Constant constant
                && constant.number().value() == 0);
    }

    private static Arbitrary<Rule.Num> numbers() {
        return Arbitraries.bigDecimals()
                .between(java.math.BigDecimal.valueOf(-99999), java.math.BigDecimal.valueOf(99999))
                .ofScale(3)
                .map(number -> new Rule.Num(number.doubleValue(), number.toPlainString()));
    }

    private static Arbitrary<String> name() {
        return Arbitraries.strings()
                .withChars("abcXYZ019")
                .ofMinLength(1)
                .ofMaxLength(9)
                .list()
                .ofMinSize(1)
                .ofMaxSize(5)
                .map(words -> String.join(" ", words));
    }

    /** Words of any letter and sign that a text may hold, those of comments among them. */
    private static Arbitrary<String> plain() {
        return Arbitraries.strings()
                .withCharRange('!', '~')
                .excludeChars('"', '\\')
                .ofMinLength(1)
                .ofMaxLength(9)
                .list()
                .ofMinSize(1)
                .ofMaxSize(5)
                .map(words -> String.join(" ", words));
    }

    private static <T> Arbitrary<List<T>> all(List<Arbitrary<T>> each) {
        return Combinators.combine(each).as(values -> values);
    }
}
