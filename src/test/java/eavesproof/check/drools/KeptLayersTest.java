package eavesproof.check.drools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import eavesproof.rules.RefusedRules;
import eavesproof.rules.Rule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.AclEntry;
import java.nio.file.attribute.AclEntryPermission;
import java.nio.file.attribute.AclEntryType;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserPrincipal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drools.model.Model;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Compiled layers between one run and the next; each loader here is a run. */
class KeptLayersTest {
    @TempDir Path temporary;
    private Path folder;
    private int compiled;

    @BeforeEach
    void nameAFolder() {
        folder = temporary.resolve("cache/layers");
    }

    @Test
    void theSecondRunNeedsNoCompiler() throws Exception {
        assertEquals(1, load(Plain.RULE).getRules().size());
        assertEquals(1, compiled);
        assertEquals(1, load(Plain.RULE).getRules().size());
        assertEquals(1, compiled);
    }

    @Test
    void anotherLimitNeedsNoCompilerAndAnotherConditionDoes() throws Exception {
        load(Plain.RULE);
        load(Plain.change("500", "450"));
        assertEquals(1, compiled);
        load(Plain.change("150.50", "150.51"));
        assertEquals(2, compiled);
        assertEquals(2, files().size());
    }

    @Test
    void nobodyElseMayLookIntoTheFolder() throws Exception {
        assumeTrue(isPosix());
        load(Plain.RULE);
        assertEquals("rwx------", permissions(folder));
        assertEquals("rwx------", permissions(temporary.resolve("cache")));
        assertEquals("rw-------", permissions(files().get(0)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"rwxrwx---", "rwx---rwx", "rwxr-xr-x"})
    void aFolderThatIsOpenToOthersIsNotUsed(String permissions) throws Exception {
        assumeTrue(isPosix());
        load(Plain.RULE);
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString(permissions));
        load(Plain.RULE);
        assertEquals(2, compiled);
    }

    @Test
    void aFolderThatOthersCouldPutAnotherInPlaceOfIsNotUsed() throws Exception {
        assumeTrue(isPosix());
        load(Plain.RULE);
        Path above = temporary.resolve("cache");
        Files.setPosixFilePermissions(above, PosixFilePermissions.fromString("rwxrwxrwx"));
        load(Plain.RULE);
        assertEquals(2, compiled);
    }

    @Test
    void aLinkIsNoFolderOfTheUsersOwn() throws Exception {
        assumeTrue(isPosix());
        load(Plain.RULE);
        Path link = Files.createSymbolicLink(temporary.resolve("link"), folder);
        folder = link;
        load(Plain.RULE);
        assertEquals(2, compiled);
    }

    @Test
    void aLinkInTheFolderIsNoEntry() throws Exception {
        assumeTrue(isPosix());
        load(Plain.RULE);
        Path entry = files().get(0);
        Path elsewhere = temporary.resolve("elsewhere");
        Files.move(entry, elsewhere);
        Files.createSymbolicLink(entry, elsewhere);
        load(Plain.RULE);
        assertEquals(2, compiled);
        assertFalse(Files.isSymbolicLink(entry), "it was written anew");
    }

    /** One letter of one class, somewhere in the middle. */
    @Test
    void aChangedClassIsNoticedAndMadeAnew() throws Exception {
        load(Plain.RULE);
        Path entry = files().get(0);
        byte[] good = Files.readAllBytes(entry);
        byte[] changed = good.clone();
        changed[changed.length / 2] ^= 1;
        Files.write(entry, changed);
        load(Plain.RULE);
        assertEquals(2, compiled);
        assertTrue(Arrays.equals(good, Files.readAllBytes(entry)));
    }

    @Test
    void aFileThatEndsTooEarlyIsMadeAnew() throws Exception {
        load(Plain.RULE);
        Path entry = files().get(0);
        byte[] good = Files.readAllBytes(entry);
        for (int length : new int[] {0, 10, 90, 200, good.length - 1}) {
            Files.write(entry, Arrays.copyOf(good, length));
            int before = compiled;
            load(Plain.RULE);
            assertEquals(before + 1, compiled);
        }
    }

    @Test
    void whatComesAfterTheEndIsNoticed() throws Exception {
        load(Plain.RULE);
        Path entry = files().get(0);
        byte[] good = Files.readAllBytes(entry);
        Files.write(entry, Arrays.copyOf(good, good.length + 1));
        load(Plain.RULE);
        assertEquals(2, compiled);
    }

    /** Whole in itself, and with a digest that is right; but made from other rules. */
    @Test
    void theEntryOfAnotherLayerUnderThisNameIsNoticed() throws Exception {
        load(Plain.RULE);
        Path entry = files().get(0);
        load(Plain.change("\"eaves\"", "\"box\""));
        Path other = files().stream().filter(file -> !file.equals(entry)).findFirst().orElseThrow();
        Files.copy(other, entry, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        assertEquals(1, load(Plain.RULE).getRules().size());
        assertEquals(3, compiled);
    }

    /** Classes that hold other rules than their text says are not used, whatever the digest is. */
    @Test
    void classesOfOtherRulesWithTheRightTextAreNotUsed() throws Exception {
        LayerText right = LayerText.of(Plain.read(Plain.RULE));
        LayerText other = LayerText.of(Plain.read(Plain.change("150.50", "150.51")));
        LayerText wrong =
                new LayerText(
                        right.packageName(),
                        other.drl().replace(other.packageName(), right.packageName()));
        new KeptLayers(Optional.of(own())).keep(right, new ModelCompiler().compile(wrong));
        assertEquals(1, load(Plain.RULE).getRules().size());
        assertEquals(1, compiled);
        load(Plain.RULE);
        assertEquals(1, compiled, "the good one has taken its place");
    }

    @Test
    void theFolderOfAnotherUserIsNotUsed() throws Exception {
        load(Plain.RULE);
        assertEquals(Optional.empty(), new PrivateFolder(folder, "nobody").ready());
        assertEquals(Optional.empty(), new PrivateFolder(folder, "no such user at all").ready());
    }

    @Test
    void whereNothingCanBeWrittenTheRulesAreCompiledEachTime() throws Exception {
        Files.writeString(temporary.resolve("cache"), "no folder");
        load(Plain.RULE);
        load(Plain.RULE);
        assertEquals(2, compiled);
    }

    @Test
    void whereNoFolderIsNamedNothingIsKept() throws Exception {
        LayerText text = LayerText.of(Plain.read(Plain.RULE));
        KeptLayers none = new KeptLayers(Optional.empty());
        none.keep(text, new ModelCompiler().compile(text));
        assertEquals(Optional.empty(), none.find(text));
        assertFalse(Files.exists(folder));
    }

    @Test
    void theOldestMakeRoom() throws Exception {
        LayerText text = LayerText.of(Plain.read(Plain.RULE));
        LayerCompiler.Compiled any = new LayerCompiler.Compiled("m", new TreeMap<>());
        KeptLayers kept = new KeptLayers(Optional.of(own()));
        for (int i = 0; i < 100; i++) {
            kept.keep(new LayerText("p.h" + i, text.drl()), any);
        }
        assertEquals(80, files().size());
    }

    @Test
    void nothingHalfWrittenStays() throws Exception {
        load(Plain.RULE);
        assertTrue(files().stream().allMatch(file -> file.toString().endsWith(".layer")));
        assertNotEquals(0, Files.size(files().get(0)));
    }

    @Test
    void byAnAccessListOnlyTheUserAndTheMachineMayWrite() {
        UserPrincipal me = () -> "PC\\me";
        UserPrincipal system = () -> "NT AUTHORITY\\SYSTEM";
        UserPrincipal users = () -> "BUILTIN\\Users";
        AclEntry mine = entry(me, AclEntryPermission.WRITE_DATA);
        AclEntry machine = entry(system, AclEntryPermission.WRITE_ACL);
        AclEntry readers = entry(users, AclEntryPermission.READ_DATA);
        AclEntry writers = entry(users, AclEntryPermission.READ_DATA, AclEntryPermission.DELETE);
        assertTrue(PrivateFolder.isPrivate(List.of(mine, machine, readers), me));
        assertFalse(PrivateFolder.isPrivate(List.of(mine, machine, writers), me));
    }

    private static AclEntry entry(UserPrincipal who, AclEntryPermission... may) {
        return AclEntry.newBuilder()
                .setType(AclEntryType.ALLOW)
                .setPrincipal(who)
                .setPermissions(may)
                .build();
    }

    private Model load(String rules) throws RefusedRules {
        List<Rule> read = Plain.read(rules);
        LayerCompiler counting =
                text -> {
                    compiled++;
                    return new ModelCompiler().compile(text);
                };
        ClassLoader classPath = KeptLayersTest.class.getClassLoader();
        return new LayerLoader(classPath, counting, () -> new KeptLayers(Optional.of(own())))
                .load(read);
    }

    private PrivateFolder own() {
        return new PrivateFolder(folder, System.getProperty("user.name"));
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    private boolean isPosix() {
        return temporary.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    private static String permissions(Path path) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
    }
}
