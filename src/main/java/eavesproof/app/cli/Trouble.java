package eavesproof.app.cli;

import eavesproof.app.cli.Page.Look;
import eavesproof.findings.InWords;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** Why nothing came of it, in words for whoever asked, and the exit code that says so. */
final class Trouble {
    static final int WRONG_USE = 64;
    static final int BAD_INPUT = 65;
    static final int FAULT = 70;
    static final int FILES = 74;

    private static final int DEEP = 4;

    private final PrintStream messages;

    Trouble(PrintStream messages) {
        this.messages = messages;
    }

    int wrongUse(WrongUse trouble, String usage) {
        say("eavesproof: " + trouble.getMessage());
        say(usage);
        return WRONG_USE;
    }

    int badInput(BadInput trouble) {
        trouble.problems().forEach(this::say);
        say(
                InWords.count(trouble.problems().size(), "mistake")
                        + " in "
                        + trouble.getMessage()
                        + "; nothing was done");
        return BAD_INPUT;
    }

    int files(IOException trouble) {
        say("eavesproof: " + words(trouble));
        return FILES;
    }

    /** Never mixed with findings: what the program cannot do says nothing about the job. */
    int fault(Throwable fault, boolean trace) {
        String said = fault.getMessage() == null ? "" : ": " + fault.getMessage();
        say("eavesproof: a fault of the program, and not of the job" + said);
        if (trace) {
            fault.printStackTrace(messages);
        } else {
            say("No verdict was reached. With --trace it says where it failed.");
        }
        return FAULT;
    }

    private void say(String text) {
        messages.print(new Page(false).say(0, DEEP, Look.PLAIN, text).text());
        messages.flush();
    }

    private static String words(IOException trouble) {
        if (!(trouble instanceof FileSystemException file) || file.getFile() == null) {
            return String.valueOf(trouble.getMessage());
        }
        String name = file.getFile() + ": ";
        if (trouble instanceof NoSuchFileException) {
            return name + "there is no such file or folder";
        }
        if (trouble instanceof FileAlreadyExistsException) {
            return name + "is there already; --force replaces it";
        }
        if (trouble instanceof AccessDeniedException) {
            return name + "may not be read or written";
        }
        if (trouble instanceof NotDirectoryException) {
            return name + "is no folder";
        }
        String reason = file.getReason();
        return name + (reason == null ? "cannot be read or written" : reason);
    }
}
