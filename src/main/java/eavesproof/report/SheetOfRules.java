package eavesproof.report;

import java.util.List;

/**
 * All that the template of a rule sheet may print, as finished words.
 *
 * @param issued date, YYYY-MM-DD
 * @param held the same rules as a report has them: whether they are as shipped, their documents
 * @param tables the published tables that limits are looked up in
 * @param identity hashes and versions
 * @param unprintable says which characters could not be printed; empty where all could
 */
public record SheetOfRules(
        String issued,
        RulesInWords rules,
        Report.Rules held,
        List<Report.Grid> tables,
        List<Report.Entry> identity,
        String unprintable) {
    public SheetOfRules {
        tables = List.copyOf(tables);
        identity = List.copyOf(identity);
    }

    SheetOfRules saying(String cannotBePrinted) {
        return new SheetOfRules(issued, rules, held, tables, identity, cannotBePrinted);
    }
}
