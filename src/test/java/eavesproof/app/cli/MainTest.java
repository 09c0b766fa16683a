package eavesproof.app.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class MainTest {
    private static final Flag DEPTH = new Flag("d", "depth", "MM", "how deep");

    /** What a command does once it was understood. */
    private interface Deed {
        int run(Asked asked, Surroundings here) throws WrongUse, BadInput, IOException;
    }

    private static final Deed BREAKS = fails(new IllegalStateException("broken"));

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void whatACommandReturnsIsTheExitCodeAndItsResultStandsAlone() {
        Deed digs =
                (asked, here) -> {
                    here.show("dug " + asked.value(DEPTH).orElse("nothing") + "\n");
                    return 2;
                };

        assertEquals(2, run(digs, "dig", "-d", "300", "HERE"));
        assertEquals("dug 300\n", out());
        assertEquals("", err());
    }

    @Test
    void eachKindOfTroubleHasItsOwnExitCodeAndNoResult() {
        assertEquals(64, run(fails(new WrongUse("how?")), "dig"));
        assertEquals(65, run(fails(new BadInput("x.json", List.of("x.json:1:2: bad"))), "dig"));
        assertEquals(74, run(fails(new NoSuchFileException("x.json")), "dig"));
        assertEquals(70, run(BREAKS, "dig"));
        assertEquals(70, run(fails(new StackOverflowError()), "dig"));
        assertEquals("", out());
    }

    @Test
    void everyMistakeIsALineAndTheyAreCounted() {
        run(fails(new BadInput("x.json", List.of("x.json:1:2: one", "x.json:3:4: two"))), "dig");

        assertEquals(
                "x.json:1:2: one\nx.json:3:4: two\n2 mistakes in x.json; nothing was done\n",
                err());
    }

    @Test
    void aFaultOfTheProgramIsSaidPlainlyAndItsTraceOnlyWhenAsked() {
        run(BREAKS, "dig");
        assertTrue(err().contains("a fault of the program, and not of the job: broken"), err());
        assertFalse(err().contains("\tat "), err());

        run(BREAKS, "dig", "--trace");
        assertTrue(err().contains("\tat "), err());
    }

    @Test
    void theVariableForTracesCounts() {
        Surroundings here = here(Map.of("EAVESPROOF_TRACE", "1"), out);

        new Main(List.of(command(BREAKS)), here).run(List.of("dig"));

        assertTrue(err().contains("\tat "), err());
    }

    @Test
    void whatIsNotUnderstoodIsNamed() {
        assertEquals(64, run(BREAKS, "dig", "--deep"));
        assertTrue(err().contains("unknown option --deep"), err());
        assertEquals(64, run(BREAKS, "dig", "--depth"));
        assertTrue(err().contains("--depth needs MM"), err());
        assertEquals(64, run(BREAKS, "dig", "-d", "1", "-d", "2"));
        assertTrue(err().contains("--depth was given twice"), err());
        assertEquals(64, run(BREAKS, "dog"));
        assertTrue(err().contains("there is no command dog; there are dig"), err());
        assertEquals(64, run(BREAKS));
        assertTrue(err().contains("nothing was asked"), err());
        assertEquals("", out());
    }

    @Test
    void anOptionIsNeverGuessedFromItsBeginning() {
        assertEquals(64, run(BREAKS, "dig", "--dep", "5"));
    }

    @Test
    void helpIsAResult() {
        assertEquals(0, run(BREAKS, "--help"));
        assertTrue(out().contains("eavesproof dig HERE"), out());
        assertEquals(0, run(BREAKS, "help", "dig"));
        assertTrue(out().contains("-d, --depth MM"), out());
        assertEquals(0, run(BREAKS, "dig", "--help"));
        assertTrue(out().contains("Makes a hole."), out());
        assertEquals("", err());
    }

    @Test
    void aResultThatDidNotArriveIsNoResult() {
        OutputStream full =
                new OutputStream() {
                    @Override
                    public void write(int b) throws IOException {
                        throw new IOException("full");
                    }
                };
        Deed shows =
                (asked, here) -> {
                    here.show("complies\n");
                    return 0;
                };
        Main main = new Main(List.of(command(shows)), here(Map.of(), full));

        assertEquals(74, main.run(List.of("dig")));
    }

    private static Deed fails(Throwable trouble) {
        return (asked, here) -> {
            if (trouble instanceof WrongUse e) {
                throw e;
            } else if (trouble instanceof BadInput e) {
                throw e;
            } else if (trouble instanceof IOException e) {
                throw e;
            } else if (trouble instanceof Error e) {
                throw e;
            }
            throw (RuntimeException) trouble;
        };
    }

    private int run(Deed deed, String... typed) {
        out.reset();
        err.reset();
        return new Main(List.of(command(deed)), here(Map.of(), out)).run(List.of(typed));
    }

    private Surroundings here(Map<String, String> environment, OutputStream results) {
        return Surroundings.of(
                new PrintStream(results, false, StandardCharsets.UTF_8),
                new PrintStream(err, false, StandardCharsets.UTF_8),
                environment,
                Path.of("."));
    }

    private static Command command(Deed deed) {
        return new Command() {
            @Override
            public String name() {
                return "dig";
            }

            @Override
            public String takes() {
                return "HERE";
            }

            @Override
            public String does() {
                return "makes a hole";
            }

            @Override
            public List<String> more() {
                return List.of("With a spade.");
            }

            @Override
            public List<Flag> flags() {
                return List.of(DEPTH);
            }

            @Override
            public int run(Asked asked, Surroundings here) throws WrongUse, BadInput, IOException {
                return deed.run(asked, here);
            }
        };
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }
}
