package eavesproof.app.cli;

import java.io.IOException;
import java.util.List;

/** One thing that can be asked of the program. */
interface Command {
    /** As it is typed. */
    String name();

    /** What else is typed, as the manual shows it. */
    String takes();

    /** What it does, in a line. */
    String does();

    /** What else there is to know, in paragraphs. */
    List<String> more();

    /** Its own options. */
    List<Flag> flags();

    /**
     * Does it.
     *
     * @return the exit code
     */
    int run(Asked asked, Surroundings here) throws WrongUse, BadInput, IOException;
}
