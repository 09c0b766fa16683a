package eavesproof.check.drools;

import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleText;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.ImportDescr;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsError;
import org.drools.drl.parser.DroolsParserException;
import org.kie.internal.builder.conf.LanguageLevelOption;

/**
 * Reads a rule file in the plain form: an allow-list over the parse tree of Drools, and at the end
 * a count of the words, so that nothing in the file was left unread, by the parser or by us.
 */
public final class PlainForm {
    private static final int MOST_BYTES = 64 * 1024;
    private static final int MOST_RULES = 200;
    private static final String ONLY_RULES = "rules and nothing else";

    private final Problems problems;
    private final String file;

    private PlainForm(String file) {
        this.file = file;
        this.problems = new Problems(file);
    }

    /**
     * The rules of the file in their order.
     *
     * @param file what messages and rules call it
     * @throws RefusedRules with everything in it that is not in the plain form
     */
    public static List<Rule> read(String file, byte[] bytes) throws RefusedRules {
        return new PlainForm(file).read(bytes);
    }

    private List<Rule> read(byte[] bytes) throws RefusedRules {
        plainText(bytes);
        problems.refuseIfAny();
        Tokens tokens = Tokens.of(new String(bytes, StandardCharsets.US_ASCII), problems);
        problems.refuseIfAny();
        PackageDescr parsed = parse(tokens.bare());
        problems.refuseIfAny();
        onlyRules(parsed);
        List<Rule> rules = rules(parsed.getRules(), tokens);
        problems.refuseIfAny();
        nothingLeftUnread(tokens.words(), rules);
        problems.refuseIfAny();
        return rules;
    }

    private void plainText(byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            problems.add(0, bytes.length + " bytes", "at most " + MOST_BYTES);
            return;
        }
        int line = 1;
        int badLine = 0;
        for (byte one : bytes) {
            boolean blank = one == '\n' || one == '\r' || one == '\t';
            if (!blank && (one < ' ' || one > '~' || one == '\\') && badLine != line) {
                badLine = line;
                String shown = one == '\\' ? "a backslash" : "the byte " + (one & 0xff);
                problems.add(line, shown, "plain ASCII without a backslash");
            }
            line += one == '\n' ? 1 : 0;
        }
    }

    /** An empty file has no rules; the parser would say null. */
    private PackageDescr parse(String text) {
        DrlParser parser = new DrlParser(LanguageLevelOption.DRL6);
        try {
            PackageDescr parsed = parser.parse(false, text);
            for (DroolsError error : parser.getErrors()) {
                int[] lines = error.getLines();
                String message = String.valueOf(error.getMessage());
                problems.add(
                        lines == null || lines.length == 0 ? 0 : lines[0],
                        message.replaceFirst("^\\[ERR \\d+\\] (Line \\d+:\\d+ )?", ""),
                        "a rule in the plain form");
            }
            return parsed == null ? new PackageDescr() : parsed;
        } catch (DroolsParserException | RuntimeException | StackOverflowError e) {
            problems.add(0, "a file that cannot be parsed", "a rule in the plain form");
            return new PackageDescr();
        }
    }

    private void onlyRules(PackageDescr parsed) {
        for (ImportDescr one : parsed.getImports()) {
            refuse(one, "an import");
        }
        parsed.getFunctionImports().forEach(one -> refuse(one, "an import"));
        parsed.getAccumulateImports().forEach(one -> refuse(one, "an import"));
        parsed.getGlobals().forEach(one -> refuse(one, "a global"));
        parsed.getAttributes().forEach(one -> refuse(one, one.getName()));
        parsed.getFunctions().forEach(one -> refuse(one, "a function"));
        parsed.getTypeDeclarations().forEach(one -> refuse(one, "declare"));
        parsed.getEnumDeclarations().forEach(one -> refuse(one, "declare"));
        parsed.getEntryPointDeclarations().forEach(one -> refuse(one, "declare"));
        parsed.getWindowDeclarations().forEach(one -> refuse(one, "declare"));
        if (parsed.getUnit() != null) {
            refuse(parsed.getUnit(), "a unit");
        }
        if (parsed.getName() != null && !parsed.getName().isEmpty()) {
            refuse(parsed, "package " + parsed.getName());
        }
    }

    private void refuse(BaseDescr part, String what) {
        problems.add(part.getLine(), what, ONLY_RULES);
    }

    private List<Rule> rules(List<RuleDescr> parsed, Tokens tokens) {
        if (parsed.size() > MOST_RULES) {
            problems.add(0, parsed.size() + " rules", "at most " + MOST_RULES + " in a file");
            return List.of();
        }
        List<Rule> rules = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (RuleDescr rule : parsed) {
            if (!names.add(rule.getName())) {
                problems.add(rule.getLine(), "the name " + rule.getName() + " again", "it once");
            }
            new RuleReader(file, tokens, problems).read(rule).ifPresent(rules::add);
        }
        return rules;
    }

    /**
     * Printed again, the rules must use up every word of the file. Parentheses are not counted: a
     * limit may have more of them than it needs, and everything that they hold is.
     */
    private void nothingLeftUnread(List<Token> words, List<Rule> rules) {
        Map<String, Integer> read = new LinkedHashMap<>();
        for (Token word : Tokens.of(RuleText.of(rules), problems).words()) {
            read.merge(word.kind() + word.text(), 1, Integer::sum);
        }
        for (Token word : words) {
            boolean counted = !word.is("(") && !word.is(")");
            if (counted && read.merge(word.kind() + word.text(), -1, Integer::sum) < 0) {
                problems.add(word.line(), word.shown(), "nothing besides what the rules say");
            }
        }
    }
}
