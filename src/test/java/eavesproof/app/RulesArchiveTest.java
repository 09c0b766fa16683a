package eavesproof.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RulesArchiveTest {
    @TempDir Path folder;

    @Test
    void anArchiveThatLeadsOutOfItsFolderIsNone() throws Exception {
        for (String name : List.of("../x.drl", "a/../../x.drl", "/etc/x.drl", "a/b/x.drl")) {
            byte[] zip =
                    RulesArchive.pack(new TreeMap<>(Map.of(name, new byte[] {1}))).orElseThrow();
            assertThrows(
                    RulesArchive.NoRules.class,
                    () -> RulesArchive.unpack(zip, folder.resolve("nowhere")),
                    name);
        }
    }

    @Test
    void theZoneOfTheMachineIsNotInIt() {
        TimeZone here = TimeZone.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("UTC"));
            byte[] one = packed();
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
            assertArrayEquals(one, packed());
        } finally {
            TimeZone.setDefault(here);
        }
    }

    private static byte[] packed() {
        return RulesArchive.pack(new TreeMap<>(Map.of("mine/a.drl", new byte[] {1}))).orElseThrow();
    }
}
