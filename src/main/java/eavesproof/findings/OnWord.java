package eavesproof.findings;

import eavesproof.check.Requirement;
import eavesproof.job.Job;
import eavesproof.job.Words;
import eavesproof.judge.Ruling;
import eavesproof.judge.Verdict;
import eavesproof.survey.Answer;
import eavesproof.survey.Facts;
import eavesproof.survey.Measure;
import eavesproof.survey.Provenance;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What the verdicts rest on that nobody who worked on the job has measured or seen: what others
 * say, a plan, and approvals for which only those who did the work stand.
 */
final class OnWord {
    private static final String TOLD = "told";
    private static final String PLAN = "plan";
    private static final Set<String> AT_WORK = Set.of("installer", "measured", "client");

    private final Map<String, Set<String>> bySpeaker = new LinkedHashMap<>();
    private final Set<String> alone = new LinkedHashSet<>();
    private final List<Job.Person> people;

    private OnWord(Job job) {
        people = Objects.requireNonNullElse(job.people(), List.of());
    }

    /** Each as the end of a sentence that begins with "Rests on". */
    static List<String> of(Job job, List<Ruling> rulings) {
        OnWord word = new OnWord(job);
        for (Ruling ruling : rulings) {
            if (ruling.verdict() != Verdict.NOT_RECORDED) {
                word.look(ruling.requirement());
            }
        }
        List<String> all = new ArrayList<>(word.alone);
        word.bySpeaker.forEach(
                (speaker, what) ->
                        all.add("what " + speaker + " says of " + InWords.list(List.copyOf(what))));
        return List.copyOf(all);
    }

    private void look(Requirement requirement) {
        for (Answer.Known known : requirement.relied()) {
            Provenance how = known.provenance();
            if (isByWhoWorkedHere(known)) {
                alone.add(
                        "the word of "
                                + how.by().map(this::named).orElse("nobody who is named")
                                + " for an approval, and not on that of whoever approves: "
                                + what(known));
            } else if (how.how().equals(TOLD)
                    && known.kind().type() != Facts.ApprovalReference.class) {
                String speaker = how.by().map(this::named).orElse("somebody who is not named");
                bySpeaker.computeIfAbsent(speaker, none -> new LinkedHashSet<>()).add(what(known));
            }
            if (known.kind().type() == Facts.OutfallTraced.class && isWord(known, PLAN)) {
                alone.add("a plan for where the water goes, which nobody has traced" + at(known));
            }
        }
    }

    /** An approval is what somebody else gives; whoever worked here can only speak of it. */
    private boolean isByWhoWorkedHere(Answer.Known known) {
        return known.kind().type() == Facts.DischargeApproved.class
                && isWord(known, Words.YES)
                && known.provenance()
                        .by()
                        .map(by -> folded(by).isEmpty() || person(by).isPresent())
                        .orElse(true);
    }

    private Optional<Job.Person> person(String by) {
        return people.stream()
                .filter(p -> AT_WORK.contains(folded(p.role())))
                .filter(p -> isNamed(p, folded(by)))
                .findFirst();
    }

    private static boolean isNamed(Job.Person person, String by) {
        return !by.isEmpty()
                && Stream.of(
                                person.name(),
                                person.company(),
                                person.id(),
                                person.role(),
                                "the " + person.role())
                        .anyMatch(name -> folded(name).equals(by));
    }

    /** Its letters and digits alone: a blank more or a capital makes nobody somebody else. */
    private static String folded(@Nullable String name) {
        return name == null
                ? ""
                : name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{IsAlphabetic}\\p{IsDigit}]", "");
    }

    private String named(String by) {
        return person(by)
                .filter(p -> !folded(by).contains(folded(p.role())))
                .map(p -> by + " (" + role(p) + ")")
                .orElse(by);
    }

    private static String role(Job.Person person) {
        return "measured".equals(folded(person.role())) ? "who measured" : "the " + person.role();
    }

    private static boolean isWord(Answer.Known known, String word) {
        return known.measure() instanceof Measure.Word said && said.word().equals(word);
    }

    private static String what(Answer.Known known) {
        List<String> said = new ArrayList<>();
        if (known.measure() instanceof Measure.Word word) {
            said.add(word.word());
        }
        known.provenance().reference().ifPresent(said::add);
        return known.kind().title()
                + (said.isEmpty() ? "" : " (" + String.join("; ", said) + ")")
                + at(known);
    }

    private static String at(Answer.Known known) {
        return known.place().key("discharge").map(id -> ", discharge " + id).orElse("");
    }
}
