package eavesproof.check.drools;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.AclEntry;
import java.nio.file.attribute.AclEntryPermission;
import java.nio.file.attribute.AclEntryType;
import java.nio.file.attribute.AclFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserPrincipal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A folder to keep compiled rules in, used only where nobody but this user can have put anything
 * into it: compiled rules are code.
 *
 * @param user the name of the user who runs the program
 */
public record PrivateFolder(Path path, String user) {
    private static final Set<PosixFilePermission> ITS_OWNER_ALONE =
            PosixFilePermissions.fromString("rwx------");
    private static final int OTHERS_MAY_WRITE = 0022;
    private static final int ONLY_OWNERS_MAY_MOVE = 01000;
    private static final int ROOT = 0;
    private static final Set<AclEntryPermission> WRITING =
            EnumSet.of(
                    AclEntryPermission.WRITE_DATA,
                    AclEntryPermission.APPEND_DATA,
                    AclEntryPermission.DELETE,
                    AclEntryPermission.DELETE_CHILD,
                    AclEntryPermission.WRITE_ACL,
                    AclEntryPermission.WRITE_OWNER);
    private static final Set<String> THE_MACHINE =
            Set.of("NT AUTHORITY\\SYSTEM", "BUILTIN\\Administrators", "\\CREATOR OWNER");

    /**
     * The folder by its way without links, made if need be; nothing where it is not this user's
     * alone.
     */
    Optional<PrivateFolder> ready() {
        try {
            make();
            PrivateFolder real = new PrivateFolder(path.toRealPath(), user);
            boolean isPrivate =
                    Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)
                            && (isPosix() ? real.isPrivateOnUnix() : real.isPrivateByList());
            return isPrivate ? Optional.of(real) : Optional.empty();
        } catch (IOException | RuntimeException cannotTell) {
            return Optional.empty();
        }
    }

    /** Whether a file in it is a plain one of this user. */
    boolean holds(Path file) throws IOException {
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                && Files.getOwner(file, LinkOption.NOFOLLOW_LINKS).equals(owner());
    }

    /** Not in the home of another: a cache that root began there would be of no use to anybody. */
    private void make() throws IOException {
        Path there = path.toAbsolutePath();
        while (!Files.exists(there) && there.getParent() != null) {
            there = there.getParent();
        }
        if (isPosix()) {
            if (!isOfUserOrRoot(there)) {
                throw new IOException(there + " is another user's");
            }
            Files.createDirectories(path, PosixFilePermissions.asFileAttribute(ITS_OWNER_ALONE));
        } else {
            Files.createDirectories(path);
        }
    }

    private boolean isPosix() {
        return path.getFileSystem().supportedFileAttributeViews().contains("unix");
    }

    private UserPrincipal owner() throws IOException {
        return path.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByName(user);
    }

    /** Whoever can move a folder on the way to it could put another in its place. */
    private boolean isPrivateOnUnix() throws IOException {
        boolean own =
                Files.getOwner(path, LinkOption.NOFOLLOW_LINKS).equals(owner())
                        && Files.getPosixFilePermissions(path, LinkOption.NOFOLLOW_LINKS)
                                .equals(ITS_OWNER_ALONE);
        Path above = path.getParent();
        while (own && above != null) {
            int mode = (int) Files.getAttribute(above, "unix:mode");
            boolean open = (mode & OTHERS_MAY_WRITE) != 0 && (mode & ONLY_OWNERS_MAY_MOVE) == 0;
            own = isOfUserOrRoot(above) && !open;
            above = above.getParent();
        }
        return own;
    }

    private boolean isOfUserOrRoot(Path folder) throws IOException {
        return Files.getOwner(folder).equals(owner())
                || (int) Files.getAttribute(folder, "unix:uid") == ROOT;
    }

    private boolean isPrivateByList() throws IOException {
        AclFileAttributeView view = Files.getFileAttributeView(path, AclFileAttributeView.class);
        return view != null && isPrivate(view.getAcl(), owner());
    }

    static boolean isPrivate(List<AclEntry> entries, UserPrincipal user) {
        return entries.stream()
                .filter(entry -> entry.type() == AclEntryType.ALLOW)
                .filter(entry -> entry.permissions().stream().anyMatch(WRITING::contains))
                .map(AclEntry::principal)
                .allMatch(who -> who.equals(user) || THE_MACHINE.contains(who.getName()));
    }
}
