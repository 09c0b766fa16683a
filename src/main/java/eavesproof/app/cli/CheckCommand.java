package eavesproof.app.cli;

import eavesproof.app.CheckedJob;
import eavesproof.exchange.FindingsFile;
import eavesproof.findings.Findings;
import java.io.IOException;
import java.util.List;

/** Shows the findings of a job. */
final class CheckCommand implements Command {
    private static final Flag FORMAT =
            new Flag("", "format", "text|json", "how they are shown; text if nothing is said");

    @Override
    public String name() {
        return "check";
    }

    @Override
    public String takes() {
        return "JOB.json";
    }

    @Override
    public String does() {
        return "shows what complies, what does not, and what is not recorded";
    }

    @Override
    public List<String> more() {
        return List.of(
                "What needs action comes first. Nothing that is missing is ever shown as complying.");
    }

    @Override
    public List<Flag> flags() {
        return List.of(FORMAT, Flag.RULES);
    }

    @Override
    public int run(Asked asked, Surroundings here) throws WrongUse, BadInput, IOException {
        String format = asked.value(FORMAT).orElse("text");
        if (!List.of("text", "json").contains(format)) {
            throw new WrongUse("--format is text or json, and not " + format);
        }
        CheckedJob checked = RecordOnDisk.read(asked).check(asked.value(Flag.RULES), here);
        Findings findings = checked.findings();
        if (format.equals("json")) {
            here.show(FindingsFile.write(findings));
        } else {
            here.show(FindingsText.of(findings, here.colour()));
        }
        return findings.outcome().exitCode();
    }
}
