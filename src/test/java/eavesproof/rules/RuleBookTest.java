package eavesproof.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.rules.RuleChange.Kind;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RuleBookTest {
    private static final RuleSet.Document PRACTICE =
            new RuleSet.Document(
                    "common practice",
                    "Common practice",
                    "",
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    RuleSet.Standing.COMMON_PRACTICE);

    private static final RuleSet ROOT =
            set(
                    "root",
                    List.of(),
                    Map.of(),
                    Decision.SIMPLE,
                    rule("centres", 500),
                    rule("ends", 150));

    @Test
    void aRuleNobodyTouchesStaysInForce() throws RefusedRules {
        RuleBook book = over(List.of(), Map.of(), rule("joints", 100));
        assertEquals(List.of("centres", "ends", "joints"), names(book.rules()));
        assertEquals(List.of("centres", "ends"), names(book.inForceOf(0)));
        assertEquals(List.of("joints"), names(book.inForceOf(1)));
    }

    @Test
    void aReplacedRuleGivesWayAndTheChangeOfLimitIsKnown() throws RefusedRules {
        RuleBook book = over(List.of("centres"), Map.of(), rule("centres", 300));
        assertEquals(List.of("ends"), names(book.inForceOf(0)));
        assertEquals(List.of("centres"), names(book.inForceOf(1)));
        RuleChange change = book.changes().get(0);
        assertEquals(Kind.LIMIT_CHANGED, change.kind());
        assertEquals(Optional.of("at most 500 mm"), change.demandBefore());
        assertEquals(Optional.of("at most 300 mm"), change.demandAfter());
    }

    @Test
    void aReplacedRuleWithOtherConditionsIsMoreThanAChangeOfLimit() throws RefusedRules {
        Rule old = rule("centres", 500);
        Rule other =
                new Rule(
                        old.name(),
                        old.topic(),
                        old.says(),
                        old.source(),
                        Optional.of(Decision.SIMPLE),
                        old.subject(),
                        List.of(),
                        old.demand(),
                        old.file(),
                        old.line());
        RuleBook book = over(List.of("centres"), Map.of(), other);
        assertEquals(Kind.REPLACED, book.changes().get(0).kind());
    }

    @Test
    void aDroppedRuleIsNotInForceAndItsReasonIsKept() throws RefusedRules {
        RuleBook book = over(List.of(), Map.of("ends", "the code says nothing of ends"));
        assertEquals(List.of("centres"), names(book.rules()));
        RuleChange change = book.changes().get(0);
        assertEquals(Kind.DROPPED, change.kind());
        assertEquals("the code says nothing of ends", change.reason());
    }

    @Test
    void threeLayersKeepTheHighest() throws RefusedRules {
        RuleSet middle = set("middle", List.of("centres"), Map.of(), null, rule("centres", 400));
        RuleSet top = set("top", List.of("centres"), Map.of(), null, rule("centres", 300));
        RuleBook book = RuleBook.of(List.of(ROOT, middle, top));
        assertEquals(List.of("ends"), names(book.inForceOf(0)));
        assertEquals(List.of(), names(book.inForceOf(1)));
        assertEquals(List.of("centres"), names(book.inForceOf(2)));
        assertEquals("top", book.name());
    }

    @Test
    void aNameFromBelowThatIsNotListedIsRefusedWhereItStands() {
        refuses("two.drl:4", "it in replaces", List.of(), Map.of(), rule("centres", 300));
    }

    @Test
    void aListedNameThatIsNotBelowIsRefused() {
        refuses("two/rule-set.json", "there below", List.of("new"), Map.of(), rule("new", 1));
    }

    @Test
    void aListedNameWithoutARuleIsRefused() {
        refuses("two/rule-set.json", "in its own files", List.of("ends"), Map.of());
    }

    @Test
    void aDroppedNameThatIsNotBelowIsRefused() {
        refuses("two/rule-set.json", "there below", List.of(), Map.of("en ds", "mistyped"));
    }

    @Test
    void aNameTwiceInOneLayerIsRefused() {
        refuses("two.drl:4", "each name once", List.of(), Map.of(), rule("a", 1), rule("a", 2));
    }

    @Test
    void aSourceThatIsNoDocumentIsRefused() {
        Rule rule = rule("a", 1).citing(new Rule.Cited("hearsay", "3"));
        refuses("two.drl:4", "a key of documents", List.of(), Map.of(), rule);
    }

    @Test
    void aDocumentBelowIsNotChangedFromAbove() {
        RuleSet.Document other =
                new RuleSet.Document(
                        PRACTICE.key(),
                        "Something else",
                        "",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        RuleSet.Standing.LAW);
        RuleSet two =
                new RuleSet(
                        "two",
                        "",
                        "",
                        Optional.empty(),
                        List.of(),
                        Map.of(),
                        Map.of(other.key(), other),
                        List.of(),
                        List.of(),
                        Optional.empty(),
                        Map.of(),
                        List.of());
        RefusedRules refused =
                assertThrows(RefusedRules.class, () -> RuleBook.of(List.of(ROOT, two)));
        assertTrue(refused.getMessage().contains("a key of its own"), refused::getMessage);
    }

    @Test
    void aRuleSetThatNeverSaysHowToDecideIsRefused() {
        RuleSet silent = set("silent", List.of(), Map.of(), null, rule("a", 1));
        RefusedRules refused = assertThrows(RefusedRules.class, () -> RuleBook.of(List.of(silent)));
        assertTrue(refused.getMessage().contains("no decision"), refused::getMessage);
    }

    @Test
    void aRuleSetWithoutRulesIsRefused() {
        RuleSet empty = set("empty", List.of(), Map.of(), Decision.SIMPLE);
        assertThrows(RefusedRules.class, () -> RuleBook.of(List.of(empty)));
    }

    @Test
    void theHighestDecisionHoldsUnlessTheRuleHasItsOwn() throws RefusedRules {
        RuleSet two = set("two", List.of(), Map.of(), new Decision(1), rule("a", 1));
        RuleBook book = RuleBook.of(List.of(ROOT, two));
        assertEquals(new Decision(1), book.decision());
        assertEquals(new Decision(1), book.decision(book.rule("centres").orElseThrow()));
    }

    @Test
    void aDocumentOfTwoWordsIsFoundBeforeItsClause() throws RefusedRules {
        Rule rule = RuleBook.of(List.of(ROOT)).rule("centres").orElseThrow();
        assertEquals(new Rule.Cited("common practice", "2.1"), rule.source());
    }

    @Test
    void orderAndPlaceDoNotChangeTheIdentity() throws RefusedRules {
        RuleSet turned = set("root", List.of(), Map.of(), Decision.SIMPLE, reversed(ROOT.rules()));
        assertEquals(RuleBook.of(List.of(ROOT)).sha256(), RuleBook.of(List.of(turned)).sha256());
    }

    @Test
    void whatCanMoveAVerdictChangesTheIdentity() throws RefusedRules {
        String plain = RuleBook.of(List.of(ROOT)).sha256();
        RuleSet limit =
                set(
                        "root",
                        List.of(),
                        Map.of(),
                        Decision.SIMPLE,
                        rule("centres", 501),
                        rule("ends", 150));
        RuleSet decision = set("root", List.of(), Map.of(), new Decision(1), array(ROOT.rules()));
        RuleSet fewer = set("root", List.of(), Map.of(), Decision.SIMPLE, rule("centres", 500));
        for (RuleSet other : List.of(limit, decision, fewer)) {
            assertNotEquals(plain, RuleBook.of(List.of(other)).sha256());
        }
        assertNotEquals(plain, over(List.of(), Map.of("ends", "no")).sha256());
    }

    @Test
    void betweenTwoStatesOnlyWhatDiffersIsSaid() {
        List<RuleChange> changes =
                RuleChange.between(
                        List.of(rule("a", 1), rule("b", 2), rule("c", 3)),
                        List.of(rule("c", 3), rule("b", 4), rule("d", 5)));
        assertEquals(
                List.of("a DROPPED", "b LIMIT_CHANGED", "d ADDED"),
                changes.stream().map(change -> change.rule() + " " + change.kind()).toList());
    }

    private static void refuses(
            String where,
            String expected,
            List<String> replaces,
            Map<String, String> drops,
            Rule... rules) {
        RefusedRules refused = assertThrows(RefusedRules.class, () -> over(replaces, drops, rules));
        RuleProblem problem = refused.problems().get(0);
        assertEquals(where, problem.where());
        assertTrue(problem.expected().contains(expected), problem::text);
    }

    @Test
    void whatTheHigherLayerStatesCounts() throws RefusedRules {
        RuleBook book =
                RuleBook.of(
                        List.of(
                                stating(ROOT, "run_off", "0.9", "common practice"),
                                stating(
                                        set("two", List.of(), Map.of(), null),
                                        "run_off",
                                        "1",
                                        "common practice 2")));
        Stated stated = book.basis().get("run_off");
        assertEquals("1", stated.text());
        assertEquals(PRACTICE, book.document(stated));
    }

    @Test
    void whatIsStatedCitesADocument() {
        RefusedRules refused =
                assertThrows(
                        RefusedRules.class,
                        () -> RuleBook.of(List.of(stating(ROOT, "run_off", "1", "hearsay"))));
        assertTrue(refused.getMessage().contains("basis run_off"), refused::getMessage);
    }

    @Test
    void whatIsStatedIsPartOfTheIdentity() throws RefusedRules {
        RuleBook plain = RuleBook.of(List.of(ROOT));
        RuleBook one = RuleBook.of(List.of(stating(ROOT, "run_off", "1", "common practice")));
        RuleBook other = RuleBook.of(List.of(stating(ROOT, "run_off", "0.9", "common practice")));
        assertNotEquals(plain.sha256(), one.sha256());
        assertNotEquals(one.sha256(), other.sha256());
    }

    private static RuleSet stating(RuleSet set, String key, String number, String source) {
        Rule.Num is = new Rule.Num(Double.parseDouble(number), number);
        return new RuleSet(
                set.name(),
                set.title(),
                set.jurisdiction(),
                set.buildsOn(),
                set.replaces(),
                set.drops(),
                set.documents(),
                set.clausesNotChecked(),
                set.mustJudge(),
                set.decision(),
                Map.of(key, new Stated(is, new Rule.Cited(source, ""))),
                set.rules());
    }

    private static RuleBook over(List<String> replaces, Map<String, String> drops, Rule... rules)
            throws RefusedRules {
        return RuleBook.of(List.of(ROOT, set("two", replaces, drops, null, rules)));
    }

    private static RuleSet set(
            String name,
            List<String> replaces,
            Map<String, String> drops,
            Decision decision,
            Rule... rules) {
        return new RuleSet(
                name,
                "Title of " + name,
                "nowhere",
                Optional.empty(),
                replaces,
                new LinkedHashMap<>(drops),
                Map.of(PRACTICE.key(), PRACTICE),
                List.of(),
                List.of("BracketSpacing"),
                Optional.ofNullable(decision),
                Map.of(),
                Arrays.asList(rules));
    }

    private static Rule rule(String name, int most) {
        return new Rule(
                name,
                "support",
                "Close enough.",
                new Rule.Cited("common", "practice 2.1"),
                Optional.empty(),
                new Rule.Pattern("BracketSpacing", "$s", List.of()),
                List.of(),
                new Rule.AtMost(new Rule.Constant(new Rule.Num(most, String.valueOf(most))), "mm"),
                "two.drl",
                4);
    }

    private static Rule[] reversed(List<Rule> rules) {
        List<Rule> turned = new java.util.ArrayList<>(rules);
        Collections.reverse(turned);
        return array(turned);
    }

    private static Rule[] array(List<Rule> rules) {
        return rules.toArray(Rule[]::new);
    }

    private static List<String> names(List<Rule> rules) {
        return rules.stream().map(Rule::name).toList();
    }
}
