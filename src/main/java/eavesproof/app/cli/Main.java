package eavesproof.app.cli;

import eavesproof.app.Program;
import eavesproof.app.RuleSets;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The door of the program: what was typed goes in, an exit code comes out. */
public final class Main {
    private static final int ALL_IS_WELL = 0;

    private final List<Command> commands;
    private final Manual manual;
    private final Surroundings here;

    Main(List<Command> commands, Surroundings here) {
        this.commands = commands;
        this.manual = new Manual(commands);
        this.here = here;
    }

    public static void main(String[] typed) {
        // Java's own streams may have another idea of how letters are written.
        PrintStream results =
                new PrintStream(
                        new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        PrintStream messages =
                new PrintStream(
                        new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        Path home = Path.of(System.getProperty("eavesproof.home", "."));
        keepWhatIsMadeOfRules(home);
        Surroundings here = Surroundings.of(results, messages, System.getenv(), home);
        System.exit(new Main(commands(), here).run(List.of(typed)));
    }

    /** Where the user's own cache is, and unless the user wants none. */
    static void keepWhatIsMadeOfRules(Path home) {
        System.setProperty(RuleSets.PROGRAM, home.resolve("lib/program.sha256").toString());
        CacheFolder.ofLayers(
                        System.getenv(),
                        System.getProperty("os.name"),
                        System.getProperty("user.home"))
                .ifPresent(folder -> System.setProperty(RuleSets.COMPILED, folder.toString()));
    }

    /** All that can be asked, in the order in which the manual has it. */
    static List<Command> commands() {
        return List.of(
                new RecordCommand(),
                new CheckCommand(),
                new ReportCommand(new Passphrase(System.getenv())),
                new ProveCommand(),
                new RulesListCommand(),
                new RulesShowCommand(),
                new RulesVerifyCommand(),
                new RulesCompareCommand(),
                new RulesAdaptCommand(),
                new RulesWordsCommand());
    }

    /** The one place where trouble ends. */
    int run(List<String> typed) {
        Trouble trouble = new Trouble(here.messages());
        String usage = "eavesproof help tells what can be asked";
        try {
            String first = typed.isEmpty() ? "" : typed.get(0);
            Optional<Command> named = named(typed);
            if (named.isPresent()) {
                usage = Manual.usage(named.get());
                return run(named.get(), typed.subList(words(named.get()).size(), typed.size()));
            }
            here.show(answer(first, typed));
            return ALL_IS_WELL;
        } catch (WrongUse e) {
            return trouble.wrongUse(e, usage);
        } catch (BadInput e) {
            return trouble.badInput(e);
        } catch (IOException e) {
            return trouble.files(e);
        } catch (RuntimeException | Error e) {
            return trouble.fault(e, here.trace() || typed.contains(Flag.TRACE.typed()));
        }
    }

    private int run(Command command, List<String> typed) throws WrongUse, BadInput, IOException {
        Asked asked = Asked.of(Manual.flags(command), typed);
        if (asked.has(Flag.HELP)) {
            here.show(manual.of(command));
            return ALL_IS_WELL;
        }
        return command.run(asked, here);
    }

    /** What is asked about the program itself. */
    private String answer(String first, List<String> typed) throws WrongUse {
        switch (first) {
            case "" -> throw new WrongUse("nothing was asked");
            case "--version" -> {
                return Program.nameAndVersion() + "\n";
            }
            case "help", "--help", "-h" -> {
                List<String> about = typed.subList(1, typed.size());
                return about.isEmpty() ? manual.all() : manual(about);
            }
            default -> throw noSuch(typed);
        }
    }

    private String manual(List<String> about) throws WrongUse {
        Optional<Command> named = named(about);
        if (named.isPresent()) {
            return manual.of(named.get());
        }
        List<Command> family = about.size() == 1 ? family(about.get(0)) : List.of();
        if (family.isEmpty()) {
            throw noSuch(about);
        }
        return new Manual(family).all();
    }

    /** A command's name is a word or two, and stands first. */
    private Optional<Command> named(List<String> typed) {
        return commands.stream().filter(command -> startsWith(typed, words(command))).findFirst();
    }

    private static boolean startsWith(List<String> typed, List<String> words) {
        return typed.size() >= words.size() && typed.subList(0, words.size()).equals(words);
    }

    private static List<String> words(Command command) {
        return List.of(command.name().split(" ", -1));
    }

    private WrongUse noSuch(List<String> typed) {
        List<Command> family = family(typed.get(0));
        int words = family.isEmpty() ? 1 : Math.min(2, typed.size());
        return new WrongUse(
                "there is no command "
                        + String.join(" ", typed.subList(0, words))
                        + "; there are "
                        + (family.isEmpty() ? commands : family)
                                .stream().map(Command::name).collect(Collectors.joining(", ")));
    }

    /** Commands of two words that begin with this one. */
    private List<Command> family(String word) {
        return commands.stream().filter(one -> one.name().startsWith(word + " ")).toList();
    }
}
