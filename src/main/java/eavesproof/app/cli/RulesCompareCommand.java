package eavesproof.app.cli;

import eavesproof.app.CompareRules;
import eavesproof.app.CompareVerdicts;
import eavesproof.app.LoadedRules;
import eavesproof.app.cli.Page.Look;
import eavesproof.findings.Findings;
import eavesproof.findings.InWords;
import eavesproof.findings.OutcomeSentence;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Shows what differs between two rule sets, and what that does to a job. */
final class RulesCompareCommand implements Command {
    private static final Flag JOB =
            new Flag("", "job", "JOB.json", "a record: shows which of its verdicts change");
    private static final int TEXT = 2;
    private static final int UNDER = 4;

    @Override
    public String name() {
        return "rules compare";
    }

    @Override
    public String takes() {
        return "A B";
    }

    @Override
    public String does() {
        return "shows what differs from one rule set to another";
    }

    @Override
    public List<String> more() {
        return List.of("A and B are names or folders. It ends with 0 whether or not they differ.");
    }

    @Override
    public List<Flag> flags() {
        return List.of(JOB);
    }

    @Override
    public int run(Asked asked, Surroundings here) throws WrongUse, BadInput, IOException {
        List<String> two = asked.two("rule sets to compare");
        LoadedRules from = RulesOnDisk.load(two.get(0), here);
        LoadedRules to = RulesOnDisk.load(two.get(1), here);
        CompareRules differences = CompareRules.of(from, to);
        Page page = new Page(here.colour());
        page.say(0, Look.STRONG, "From " + two.get(0) + " to " + two.get(1));
        if (differences.isSame()) {
            page.gap().say(TEXT, "No difference that can move a verdict.");
        }
        listed(page, "RULES", differences.rules());
        listed(page, "WHAT ELSE CAN MOVE A VERDICT", differences.others());
        listed(page, "NOT CHECKED BY " + two.get(0) + " ALONE", differences.notCheckedBefore());
        listed(page, "NOT CHECKED BY " + two.get(1) + " ALONE", differences.notCheckedAfter());
        Optional<String> job = asked.value(JOB);
        if (job.isPresent()) {
            RecordOnDisk record = RecordOnDisk.read(job.get());
            Findings before = record.check(Optional.of(two.get(0)), here).findings();
            Findings after = record.check(Optional.of(two.get(1)), here).findings();
            CompareVerdicts verdicts = CompareVerdicts.of(before, after);
            listed(page, "VERDICTS ON " + job.get(), verdicts.lines());
            page.gap().say(TEXT, InWords.count(verdicts.changed(), "verdict") + " changed.");
            page.say(TEXT, UNDER, Look.PLAIN, "from: " + OutcomeSentence.outcome(before));
            page.say(TEXT, UNDER, Look.PLAIN, "to:   " + OutcomeSentence.outcome(after));
        }
        here.show(page.text());
        return 0;
    }

    private static void listed(Page page, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            page.gap().say(0, Look.STRONG, title);
            lines.forEach(line -> page.say(TEXT, UNDER, Look.PLAIN, line));
        }
    }
}
