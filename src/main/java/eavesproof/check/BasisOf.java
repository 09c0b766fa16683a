package eavesproof.check;

import eavesproof.rules.Rule;
import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleSet;
import eavesproof.rules.Stated;
import eavesproof.survey.Basis;
import java.util.LinkedHashMap;
import java.util.Map;

/** What the rules in force state of their country, as the survey takes it. */
public final class BasisOf {
    private BasisOf() {}

    public static Basis book(RuleBook book) {
        Map<String, Basis.Stated> entries = new LinkedHashMap<>();
        book.basis()
                .forEach((key, stated) -> entries.put(key, entry(stated, source(book, stated))));
        return new Basis(entries);
    }

    /** One entry as the survey takes it, from a source in words. */
    public static Basis.Stated entry(Stated stated, String source) {
        return stated.is() instanceof Rule.Num number
                ? new Basis.Amount(number.value(), source)
                : new Basis.Choice(stated.text(), source);
    }

    private static String source(RuleBook book, Stated stated) {
        RuleSet.Document document = book.document(stated);
        String edition = document.edition().isEmpty() ? "" : " " + document.edition();
        String clause = stated.source().clause();
        return document.title()
                + edition
                + (clause.isEmpty() ? "" : ", " + clause)
                + (document.standing().isUnconfirmed() ? ", " + document.standing().words() : "");
    }
}
