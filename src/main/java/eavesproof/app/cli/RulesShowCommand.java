package eavesproof.app.cli;

import eavesproof.app.RuleSheetJob;
import eavesproof.app.WholeFile;
import eavesproof.report.LayoutTrouble;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Shows what a rule set will check, for people who do not read rule files. */
final class RulesShowCommand implements Command {
    private static final Flag TO =
            new Flag("o", "out", "F.pdf", "write it as a sheet to print, .pdf or .html");
    private static final Flag BRIEF =
            new Flag("", "brief", "", "on the terminal only names and limits");

    private static final String USUAL_TEMPLATE = "rule-sheet";

    @Override
    public String name() {
        return "rules show";
    }

    @Override
    public String takes() {
        return RulesOnDisk.CALLED;
    }

    @Override
    public String does() {
        return "shows every requirement of a rule set in words";
    }

    @Override
    public List<String> more() {
        return List.of(
                "Each with its limit, when it applies, where it comes from and how far that binds;"
                        + " what a rule set changes of the one that it builds on; then what it does"
                        + " not check. Show it to your inspector before you rely on it.");
    }

    @Override
    public List<Flag> flags() {
        return List.of(TO, BRIEF, Printed.PAPER, Flag.TEMPLATE_OF_RULES, Printed.DATE, Flag.FORCE);
    }

    @Override
    public int run(Asked asked, Surroundings here) throws WrongUse, BadInput, IOException {
        String named = asked.one(RulesOnDisk.CALLED);
        if (asked.has(TO) && asked.has(BRIEF)) {
            throw new WrongUse("--brief is for the terminal, and not for a sheet");
        }
        if (asked.has(TO)) {
            write(named, new WholeFile(asked.file(TO), asked.has(Flag.FORCE)), asked, here);
        } else {
            onlyOnPaper(asked);
            RuleSheetJob sheet = new RuleSheetJob(RulesOnDisk.load(named, here));
            here.show(
                    RulesSheetText.of(
                            sheet.inWords(), sheet.used(), asked.has(BRIEF), here.colour()));
        }
        return 0;
    }

    private static void onlyOnPaper(Asked asked) throws WrongUse {
        for (Flag flag : List.of(Printed.PAPER, Flag.TEMPLATE_OF_RULES, Printed.DATE, Flag.FORCE)) {
            if (asked.has(flag)) {
                throw new WrongUse("--" + flag.name() + " is for a sheet, and -o is missing");
            }
        }
    }

    private static void write(String named, WholeFile target, Asked asked, Surroundings here)
            throws WrongUse, BadInput, IOException {
        boolean html = Printed.isHtml(target.target(), "a rule sheet");
        Path template = here.template(asked.value(Flag.TEMPLATE_OF_RULES).orElse(USUAL_TEMPLATE));
        target.check();
        RuleSheetJob sheet = new RuleSheetJob(RulesOnDisk.load(named, here));
        try {
            target.write(
                    html
                            ? sheet.html(template, Printed.issued(asked))
                            : sheet.pdf(template, Printed.paper(asked), Printed.issued(asked)));
        } catch (LayoutTrouble e) {
            throw new BadInput("the template", List.of(String.valueOf(e.getMessage())));
        }
        here.messages().println("written: " + target.target());
    }
}
