package eavesproof.check.drools;

import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A plain rule, and how tests read it after changing a word. */
final class Plain {
    static final String RULE =
            """
            rule "bracket centres"
              @topic("support")
              @says("Brackets are close enough.")
              @source("practice 1.2")
            when
              $spacing : BracketSpacing($run : run)
              GutterKind(run == $run, named == "eaves")
              GutterWidth(run == $run, $width : widthMm, widthMm <= 150.50)
            then
              require.atMost($spacing, 500, "mm");
            end
            """;

    private Plain() {}

    static List<Rule> read(String text) throws RefusedRules {
        return PlainForm.read("plain.drl", text.getBytes(StandardCharsets.UTF_8));
    }

    static Rule with(String old, String now) throws RefusedRules {
        return read(change(old, now)).get(0);
    }

    static String change(String old, String now) {
        if (!RULE.contains(old)) {
            throw new IllegalArgumentException("the rule does not say " + old);
        }
        return RULE.replace(old, now);
    }
}
