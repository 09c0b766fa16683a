package eavesproof.app.cli;

import eavesproof.app.AdaptRules;
import eavesproof.app.cli.Page.Look;
import eavesproof.rules.RefusedRules;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Begins a rule set of somebody's own. */
final class RulesAdaptCommand implements Command {
    private static final Flag TO =
            new Flag("o", "out", "FOLDER", "the folder to make; its name is the rule set's name");
    private static final Flag REPLACE =
            new Flag(
                    "",
                    "replace",
                    "RULE,RULE",
                    "rules to have in it ready to be changed, by name, with commas between");

    @Override
    public String name() {
        return "rules adapt";
    }

    @Override
    public String takes() {
        return "NAME -o FOLDER";
    }

    @Override
    public String does() {
        return "begins a rule set of your own, laid over one that there is";
    }

    @Override
    public List<String> more() {
        return List.of(
                "It holds only what is different; all else follows the rule set below. As it is made"
                        + " it asks for nothing new, so that every change in it is yours. Edit its"
                        + " files, then ask for rules verify, rules compare and rules show.");
    }

    @Override
    public List<Flag> flags() {
        return List.of(TO, REPLACE);
    }

    @Override
    public int run(Asked asked, Surroundings here) throws WrongUse, BadInput, IOException {
        String base = asked.one("NAME");
        Path folder = asked.file(TO);
        List<String> replaced =
                asked.value(REPLACE).stream()
                        .flatMap(names -> Arrays.stream(names.split(",", -1)))
                        .map(String::strip)
                        .distinct()
                        .toList();
        RulesOnDisk.of(() -> begun(base, folder, replaced, here));
        here.messages().println("written: " + folder);
        here.messages()
                .print(
                        next(folder, base, replaced.isEmpty())
                                .map(line -> new Page(false).say(2, 4, Look.PLAIN, line).text())
                                .collect(Collectors.joining()));
        return 0;
    }

    private static Path begun(String base, Path folder, List<String> replaced, Surroundings here)
            throws RefusedRules, IOException {
        try {
            AdaptRules.begin(base, folder, replaced, here.shippedRules());
            return folder;
        } catch (FileAlreadyExistsException e) {
            throw new FileSystemException(
                    folder.toString(), null, "is there already, and is left as it is");
        }
    }

    private static Stream<String> next(Path folder, String base, boolean empty) {
        String rules =
                empty
                        ? "its rules, none yet; eavesproof rules show "
                                + base
                                + " --brief names those below"
                        : "its rules: change limit, words and source";
        return Stream.of(
                "edit " + folder.resolve("own.drl") + ": " + rules,
                "edit " + folder.resolve("rule-set.json") + ": its title, and what it cites",
                "then: eavesproof rules verify " + folder,
                "rules/README.md has a finished example");
    }
}
