package eavesproof.app.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.DefaultParser;
import org.apache.commons.cli.MissingArgumentException;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.apache.commons.cli.ParseException;
import org.apache.commons.cli.UnrecognizedOptionException;

/** What was typed after the name of a command. */
final class Asked {
    private final CommandLine line;

    private Asked(CommandLine line) {
        this.line = line;
    }

    static Asked of(List<Flag> flags, List<String> typed) throws WrongUse {
        Options options = new Options();
        for (Flag flag : flags) {
            options.addOption(
                    Option.builder(flag.letter().isEmpty() ? null : flag.letter())
                            .longOpt(flag.name())
                            .hasArg(!flag.argument().isEmpty())
                            .argName(flag.argument())
                            .get());
        }
        try {
            Asked asked =
                    new Asked(
                            DefaultParser.builder()
                                    .setAllowPartialMatching(false)
                                    .get()
                                    .parse(options, typed.toArray(String[]::new)));
            asked.refuseRepeats(flags);
            return asked;
        } catch (UnrecognizedOptionException e) {
            throw new WrongUse("unknown option " + e.getOption());
        } catch (MissingArgumentException e) {
            Option option = e.getOption();
            throw new WrongUse("--" + option.getLongOpt() + " needs " + option.getArgName());
        } catch (ParseException e) {
            throw new WrongUse(String.valueOf(e.getMessage()));
        }
    }

    boolean has(Flag flag) {
        return line.hasOption(flag.name());
    }

    Optional<String> value(Flag flag) {
        return Optional.ofNullable(line.getOptionValue(flag.name()));
    }

    /** Of an option that may be given more than once. */
    List<String> values(Flag flag) {
        String[] values = line.getOptionValues(flag.name());
        return values == null ? List.of() : List.of(values);
    }

    /** The file that an option names, which may not be left out. */
    Path file(Flag flag) throws WrongUse {
        return path(value(flag).orElseThrow(() -> new WrongUse(flag.typed() + " is missing")));
    }

    static Path path(String name) throws WrongUse {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new WrongUse("no file can be called " + name);
        }
    }

    /** The one thing besides options that a command is about. */
    String one(String called) throws WrongUse {
        List<String> things = line.getArgList();
        if (things.isEmpty()) {
            throw new WrongUse(called + " is missing");
        }
        if (things.size() > 1) {
            throw new WrongUse("one " + called + " at a time, and not also " + things.get(1));
        }
        return things.get(0);
    }

    /** The one thing that a command may be about. */
    Optional<String> atMostOne(String called) throws WrongUse {
        return line.getArgList().isEmpty() ? Optional.empty() : Optional.of(one(called));
    }

    /** The two things that a command is about. */
    List<String> two(String called) throws WrongUse {
        List<String> things = line.getArgList();
        if (things.size() != 2) {
            throw new WrongUse(called + " are two, and not " + things.size());
        }
        return List.copyOf(things);
    }

    void nothingElse() throws WrongUse {
        if (!line.getArgList().isEmpty()) {
            throw new WrongUse("nothing is known to do with " + line.getArgList().get(0));
        }
    }

    /** Of two values for one option neither may win in silence. */
    private void refuseRepeats(List<Flag> flags) throws WrongUse {
        List<String> seen = new ArrayList<>();
        for (Option option : line.getOptions()) {
            boolean repeats =
                    flags.stream()
                            .anyMatch(it -> it.repeats() && it.name().equals(option.getLongOpt()));
            if (seen.contains(option.getLongOpt()) && !repeats) {
                throw new WrongUse("--" + option.getLongOpt() + " was given twice");
            }
            seen.add(option.getLongOpt());
        }
    }
}
