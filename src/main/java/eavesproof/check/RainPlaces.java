package eavesproof.check;

import eavesproof.quantity.Decimals;
import eavesproof.quantity.Dimension;
import eavesproof.quantity.Unit;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleProblem;
import eavesproof.rules.RuleSet;
import eavesproof.rules.Stated;
import eavesproof.rules.Table;
import eavesproof.survey.BasisKey;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Lays out the table of places that a rule set names for its rain: one entry of the basis for each
 * place, in mm/h, as if it had been written there.
 */
public final class RainPlaces {
    private static final int MOST_DECIMALS = 6;

    private RainPlaces() {}

    /**
     * @param tables of its folder, by name
     * @param file what messages call its rule-set.json
     * @throws RefusedRules if the table is not there, or is none of places and rain
     */
    public static RuleSet in(RuleSet ruleSet, Map<String, Table> tables, String file)
            throws RefusedRules {
        RuleSet laidOut = ruleSet;
        for (BasisKey key : BasisKey.values()) {
            Stated stated = key.isByPlace() ? ruleSet.basis().get(key.key()) : null;
            if (stated != null) {
                laidOut = laidOut(laidOut, key.key(), stated, tables, file);
            }
        }
        return laidOut;
    }

    private static RuleSet laidOut(
            RuleSet ruleSet, String key, Stated stated, Map<String, Table> tables, String file)
            throws RefusedRules {
        Table table = tables.get(stated.text());
        if (table == null) {
            throw refused(
                    file, key, stated.text(), "a table of its own folder: " + tables.keySet());
        }
        Optional<Unit> unit =
                table.answer().unit().filter(one -> one.dimension() == Dimension.RAINFALL);
        if (table.keys().size() != 1 || table.keys().get(0).unit().isPresent() || unit.isEmpty()) {
            throw refused(
                    file, key, table.name(), "a table of one key, words, and an answer in mm/h");
        }
        Map<String, Stated> basis = new LinkedHashMap<>(ruleSet.basis());
        basis.remove(key);
        for (Table.Row row : table.rows()) {
            String place = ((Rule.Text) row.keys().get(0)).word();
            if (!(row.answer() instanceof Rule.Num printed)) {
                throw refused(file, key, place, "a place with its rain");
            }
            double mmPerH = unit.get().convert(printed.value(), Unit.MM_PER_H);
            Rule.Num rain = new Rule.Num(mmPerH, Decimals.plain(mmPerH, MOST_DECIMALS));
            basis.put(key + " " + place, new Stated(rain, stated.source()));
        }
        return ruleSet.stating(basis);
    }

    private static RefusedRules refused(String file, String key, String found, String expected) {
        return new RefusedRules(
                List.of(new RuleProblem(file, "basis " + key + " " + found, expected)));
    }
}
