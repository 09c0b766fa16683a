package eavesproof.app;

import eavesproof.rules.Rule;
import eavesproof.rules.RuleBook;
import eavesproof.rules.RuleChange;
import eavesproof.rules.RuleSet;
import eavesproof.rules.RuleText;
import eavesproof.rules.Stated;
import eavesproof.survey.BasisKey;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * All that differs from one rule book to another, whether it can move a verdict or is only printed:
 * each thing by itself, with what it was.
 */
final class ChangesInWords {
    private static final int FEW = 5;

    private final RuleBook from;
    private final RuleBook to;

    private ChangesInWords(RuleBook from, RuleBook to) {
        this.from = from;
        this.to = to;
    }

    /**
     * @param another whether the second is meant to be another rule set, with a title of its own
     */
    static List<String> all(RuleBook from, RuleBook to, boolean another) {
        ChangesInWords changes = new ChangesInWords(from, to);
        List<String> all = new ArrayList<>();
        if (!another) {
            differ(all, "title", from.title(), to.title());
            differ(all, "jurisdiction", from.jurisdiction(), to.jurisdiction());
        }
        all.addAll(changes.rules());
        all.addAll(changes.settings());
        all.addAll(
                listed("named as not checked", from.clausesNotChecked(), to.clausesNotChecked()));
        return all;
    }

    static List<String> rules(RuleBook from, RuleBook to) {
        return new ChangesInWords(from, to).rules();
    }

    /** What else can move a verdict. */
    static List<String> settings(RuleBook from, RuleBook to) {
        return new ChangesInWords(from, to).settings();
    }

    private List<String> rules() {
        List<RuleChange> changes = RuleChange.between(from.rules(), to.rules());
        Set<String> told = new HashSet<>();
        List<String> words = new ArrayList<>();
        for (RuleChange change : changes) {
            Optional<Rule> heir = change.before().flatMap(before -> heir(before, changes, told));
            if (change.after().isEmpty() && heir.isPresent()) {
                words.add(ChangedRule.renamed(change.before().orElseThrow(), heir.get()));
                told.addAll(List.of(change.rule(), heir.get().name()));
            }
        }
        changes.stream()
                .filter(change -> !told.contains(change.rule()))
                .forEach(change -> words.add(ChangedRule.inWords(change, from, to)));
        return words;
    }

    /** The rule that is there now under another name. */
    private static Optional<Rule> heir(Rule before, List<RuleChange> changes, Set<String> told) {
        return changes.stream()
                .filter(change -> change.before().isEmpty() && !told.contains(change.rule()))
                .flatMap(change -> change.after().stream())
                .filter(after -> nameless(after).equals(nameless(before)))
                .findFirst();
    }

    private static List<Object> nameless(Rule rule) {
        String text = RuleText.of(rule);
        return List.of(text.substring(text.indexOf('\n')), RuleChange.figures(rule));
    }

    private List<String> settings() {
        List<String> settings = new ArrayList<>();
        differ(settings, "decision rule", from.decision().text(), to.decision().text());
        settings.addAll(listed("must judge", from.mustJudge(), to.mustJudge()));
        Set<String> keys = new TreeSet<>(from.basis().keySet());
        keys.addAll(to.basis().keySet());
        List<String> places = new ArrayList<>();
        for (String key : keys) {
            boolean rain =
                    BasisKey.of(key.split(" ", 2)[0]).filter(BasisKey::isByPlace).isPresent();
            differ(
                    rain ? places : settings,
                    key.replace('_', ' '),
                    stated(from, key),
                    stated(to, key));
        }
        // A map of rain has thousands of places, and somebody may have changed one of them.
        settings.addAll(places.subList(0, Math.min(FEW, places.size())));
        if (places.size() > FEW) {
            settings.add("rain at: another, or none, at " + (places.size() - FEW) + " more places");
        }
        Set<String> documents = new TreeSet<>(from.citedDocuments().keySet());
        documents.addAll(to.citedDocuments().keySet());
        for (String key : documents) {
            document(settings, key);
        }
        return settings;
    }

    private static String stated(RuleBook book, String key) {
        Stated stated = book.basis().get(key);
        if (stated == null) {
            return "not stated";
        }
        String clause = stated.source().clause();
        return stated.text()
                + " ("
                + book.document(stated).title()
                + (clause.isEmpty() ? "" : ", " + clause)
                + ")";
    }

    private void document(List<String> settings, String key) {
        RuleSet.Document was = from.documents().get(key);
        RuleSet.Document now = to.documents().get(key);
        String name = "document " + key;
        if (was == null || now == null) {
            RuleSet.Document one = was == null ? now : was;
            if (one != null) {
                String edition = one.edition().isEmpty() ? "" : ", " + one.edition();
                settings.add(
                        name
                                + (was == null ? ": added, " : ": left out, was ")
                                + one.title()
                                + edition
                                + ", "
                                + one.standing().words());
            }
            return;
        }
        List<String> parts = new ArrayList<>();
        differ(parts, "title", was.title(), now.title());
        differ(parts, "edition", none(was.edition()), none(now.edition()));
        differ(parts, "standing", was.standing().words(), now.standing().words());
        differ(parts, "valid from", day(was.validFrom()), day(now.validFrom()));
        differ(parts, "valid to", day(was.validTo()), day(now.validTo()));
        differ(parts, "checked", day(was.checked()), day(now.checked()));
        if (!parts.isEmpty()) {
            settings.add(name + ": " + String.join("; ", parts));
        }
    }

    private static String day(Optional<String> day) {
        return day.orElse("no day");
    }

    private static String none(String edition) {
        return edition.isEmpty() ? "none" : edition;
    }

    private static List<String> listed(String what, List<String> were, List<String> are) {
        List<String> changes = new ArrayList<>();
        are.stream()
                .filter(one -> !were.contains(one))
                .forEach(one -> changes.add(what + ": added, " + one));
        were.stream()
                .filter(one -> !are.contains(one))
                .forEach(one -> changes.add(what + ": left out, was " + one));
        return changes;
    }

    private static void differ(List<String> changes, String what, String was, String now) {
        if (!was.equals(now)) {
            changes.add(what + ": " + now + ", was " + was);
        }
    }
}
