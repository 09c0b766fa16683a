package eavesproof.app;

import java.util.Optional;

/** What this program calls itself on everything that it writes. */
public final class Program {
    private Program() {}

    /**
     * Name and version. The manifest of the jar carries the version; classes run from a folder have
     * none.
     */
    public static String nameAndVersion() {
        return "eavesproof "
                + Optional.ofNullable(Program.class.getPackage().getImplementationVersion())
                        .orElse("unpackaged");
    }
}
