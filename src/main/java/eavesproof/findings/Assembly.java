package eavesproof.findings;

import eavesproof.check.Coverage;
import eavesproof.check.Requirement;
import eavesproof.job.Job;
import eavesproof.judge.Ruling;
import eavesproof.judge.Verdict;
import eavesproof.quantity.Uncertain;
import eavesproof.rules.Rule;
import eavesproof.rules.RuleSet;
import eavesproof.rules.Tables;
import eavesproof.setout.Remedies;
import eavesproof.setout.Remedy;
import eavesproof.survey.Answer;
import eavesproof.survey.FactKind;
import eavesproof.survey.Measure;
import eavesproof.survey.Place;
import eavesproof.survey.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts rulings together into the finished result. */
public final class Assembly {
    /**
     * Topic, rule, then where it is. Places are sorted by run and along the straight before ids, so
     * that a reader walks along the gutter.
     */
    private static final Comparator<Finding> ORDER =
            Comparator.comparing(Finding::topic)
                    .thenComparing(Finding::rule)
                    .thenComparing(Finding::run)
                    .thenComparing(f -> f.place().stretch().map(Place.Stretch::straight).orElse(""))
                    .thenComparing(f -> f.place().stretch().map(Place.Stretch::fromMm).orElse(0.0))
                    .thenComparing(f -> f.place().stretch().map(Place.Stretch::toMm).orElse(0.0))
                    .thenComparing(f -> f.place().keys().toString());

    private final Findings.RulesUsed rules;
    private final Remedies remedies;

    private Assembly(Findings.RulesUsed rules, Remedies remedies) {
        this.rules = rules;
        this.remedies = remedies;
    }

    /** The finished result of one check. */
    public static Findings of(
            Job job,
            String jobSha256,
            Findings.RulesUsed rules,
            String engine,
            List<Ruling> rulings,
            List<Coverage.Uncovered> uncovered,
            Remedies remedies) {
        Assembly assembly = new Assembly(rules, remedies);
        List<Finding> findings =
                Stream.of(
                                rulings.stream().map(assembly::finding),
                                Editions.findings(job, rules.documents(), cited(rulings)).stream(),
                                Days.inRecord(job).stream())
                        .flatMap(all -> all)
                        .sorted(ORDER)
                        .toList();
        Set<String> assumed = new LinkedHashSet<>();
        findings.forEach(finding -> assumed.addAll(finding.assumed()));
        return new Findings(
                job.id(),
                jobSha256,
                outcome(findings, uncovered),
                rules,
                engine,
                findings,
                uncovered,
                List.copyOf(assumed),
                OnWord.of(job, rulings),
                Notices.of(job));
    }

    /**
     * The same on a paper that carries a date: what lies after it cannot have been measured or
     * seen.
     *
     * @param issued YYYY-MM-DD
     */
    public static Findings issuedOn(Findings found, Job job, String issued) {
        List<Finding> findings =
                Stream.concat(
                                found.findings().stream()
                                        .filter(one -> !one.rule().equals(Days.ON_ISSUE)),
                                Days.onIssue(job, issued).stream())
                        .sorted(ORDER)
                        .toList();
        return new Findings(
                found.job(),
                found.jobSha256(),
                outcome(findings, found.uncovered()),
                found.rules(),
                found.engine(),
                findings,
                found.uncovered(),
                found.restsOnAssumed(),
                found.restsOnWord(),
                found.notices());
    }

    private static Set<String> cited(List<Ruling> rulings) {
        return rulings.stream()
                .filter(ruling -> ruling.verdict() != Verdict.NOT_APPLICABLE)
                .map(ruling -> ruling.requirement().rule().source().document())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /**
     * Does not comply if any finding does not; else not shown if anything is too close, not
     * recorded or spoken of by no rule, or if nothing complies; else complies.
     */
    private static Outcome outcome(List<Finding> findings, List<Coverage.Uncovered> uncovered) {
        boolean complies = false;
        boolean open = !uncovered.isEmpty();
        for (Finding finding : findings) {
            switch (finding.verdict()) {
                case DOES_NOT_COMPLY -> {
                    return Outcome.DOES_NOT_COMPLY;
                }
                case TOO_CLOSE, NOT_RECORDED -> open = true;
                case COMPLIES -> complies = true;
                case NOT_APPLICABLE -> {}
            }
        }
        return complies && !open ? Outcome.COMPLIES : Outcome.NOT_SHOWN;
    }

    private Finding finding(Ruling ruling) {
        Requirement requirement = ruling.requirement();
        Rule rule = requirement.rule();
        Answer subject = requirement.subject();
        Optional<Answer.Known> known =
                subject instanceof Answer.Known k ? Optional.of(k) : Optional.empty();
        return new Finding(
                rule.name(),
                rule.topic(),
                rule.says(),
                ruling.verdict(),
                subject.kind().id(),
                subject.kind().says(),
                subject.place(),
                known.map(k -> measured(k.measure())),
                limit(requirement),
                ruling.margin().map(Uncertain::value),
                ruling.probability(),
                ruling.decision().text(),
                ruling.because(),
                source(rule.source()),
                known.map(Answer.Known::provenance),
                assumed(requirement),
                remedies.of(ruling).map(Remedy::words),
                workings(requirement, known));
    }

    private static Finding.Measured measured(Measure measure) {
        if (measure instanceof Measure.Number number) {
            return new Finding.MeasuredNumber(
                    number.value().value(),
                    number.unit(),
                    number.value().isStated()
                            ? Optional.of(number.value().expandedUncertainty())
                            : Optional.empty());
        }
        return new Finding.MeasuredWord(((Measure.Word) measure).word());
    }

    private static Optional<Finding.Limit> limit(Requirement requirement) {
        if (requirement.limit() instanceof Requirement.NumberLimit number) {
            return Optional.of(
                    new Finding.NumberLimit(
                            requirement.rule().demand() instanceof Rule.AtMost,
                            number.value().value(),
                            number.unit(),
                            number.asWritten()));
        }
        if (requirement.limit() instanceof Requirement.WordLimit words) {
            return Optional.of(new Finding.WordLimit(words.words()));
        }
        return Optional.empty();
    }

    private Finding.Source source(Rule.Cited cited) {
        Map<String, RuleSet.Document> documents = rules.documents();
        RuleSet.Document document = documents.get(cited.document());
        if (document == null) {
            throw new IllegalStateException("no document " + cited.document());
        }
        return new Finding.Source(
                document.title(), document.edition(), cited.clause(), document.standing());
    }

    /** What was assumed and counts here: of the circumstances, and of the subject itself. */
    private static List<String> assumed(Requirement requirement) {
        List<String> result = new ArrayList<>();
        for (Answer.Known known : requirement.relied()) {
            if (known.provenance().isAssumed() || known.provenance().isUnsaid()) {
                String by =
                        (known.provenance().isUnsaid() ? ", nobody says how that is known" : "")
                                + known.provenance().by().map(who -> ", by " + who).orElse("");
                String run = known.place().key("run").map(id -> " (run " + id + ")").orElse("");
                result.add(known.kind().title() + ": " + known.measure().text() + run + by);
            }
        }
        return result;
    }

    private static List<Working> workings(Requirement requirement, Optional<Answer.Known> known) {
        List<Working> result = new ArrayList<>();
        known.ifPresent(k -> result.addAll(k.workings()));
        if (!Tables.in(requirement.rule()).isEmpty()) {
            requirement.relied().stream()
                    .filter(one -> isBound(requirement.rule(), one.kind()))
                    .forEach(one -> result.addAll(one.workings()));
        }
        if (requirement.limit() instanceof Requirement.NumberLimit number) {
            result.addAll(number.workings());
        }
        return result;
    }

    /** Whether a rule reckons with what a circumstance measures: a table is entered with it. */
    private static boolean isBound(Rule rule, FactKind kind) {
        return rule.circumstances().stream()
                .filter(one -> one.kind().equals(kind.name()))
                .flatMap(one -> one.conditions().stream())
                .anyMatch(one -> one instanceof Rule.Bind && one.field().equals(kind.measure()));
    }
}
