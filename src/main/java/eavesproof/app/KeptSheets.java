package eavesproof.app;

import eavesproof.check.drools.KeptFiles;
import eavesproof.check.drools.PrivateFolder;
import eavesproof.exchange.RuleSheet;
import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import eavesproof.rules.Sha256;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The sheets of rule files that did not come with the program, so that the next run need not read
 * them again. A sheet goes by the digest of the file and of the program that read it: another
 * program may admit something else. Only what is admitted gets one.
 */
final class KeptSheets {
    private final KeptFiles files;
    private final String program;

    /**
     * @param program the digest of the program
     */
    KeptSheets(Optional<PrivateFolder> folder, String program) {
        this.files = new KeptFiles(folder, ".sheet");
        this.program = program;
    }

    /**
     * The rules of a file, from its sheet if there is one.
     *
     * @param reader of the file itself
     */
    List<Rule> rules(String file, byte[] bytes, RuleFolder.RuleReader reader) throws RefusedRules {
        String name = Sha256.of(program + " " + Sha256.of(bytes));
        Optional<List<Rule>> kept = files.find(name).flatMap(sheet -> read(file, sheet, name));
        if (kept.isPresent()) {
            return kept.get();
        }
        List<Rule> rules = reader.read(file, bytes);
        byte[] sheet = sheet(name, rules);
        if (read(file, sheet, name).equals(Optional.of(rules))) {
            files.keep(name, sheet);
        }
        return rules;
    }

    /** With the name in it, so that the sheet of another file under this name is none. */
    private static byte[] sheet(String name, List<Rule> rules) {
        byte[] rest = RuleSheet.write(rules);
        byte[] whole = Arrays.copyOf(ascii(name), name.length() + rest.length);
        System.arraycopy(rest, 0, whole, name.length(), rest.length);
        return whole;
    }

    private static Optional<List<Rule>> read(String file, byte[] sheet, String name) {
        int start = name.length();
        if (sheet.length < start || !Arrays.equals(Arrays.copyOf(sheet, start), ascii(name))) {
            return Optional.empty();
        }
        try {
            byte[] rest = Arrays.copyOfRange(sheet, start, sheet.length);
            return Optional.of(RuleSheet.read(file, rest));
        } catch (RuntimeException noSheet) {
            return Optional.empty();
        }
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
