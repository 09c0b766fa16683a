package eavesproof.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eavesproof.job.Job;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class BlankRecordTest {
    private static final String BLANK = JobFile.blank("trade-practice");

    private static Job job() throws BadRecord {
        return JobFile.read(BLANK.getBytes(UTF_8));
    }

    @Test
    void itIsARecordOfTheRuleSetAskedFor() throws BadRecord {
        assertEquals("trade-practice", job().ruleSet());
    }

    @Test
    void nothingInItIsKnownButIdsAndTheRuleSet() throws Exception {
        Set<String> known = new TreeSet<>();
        collectKnown("", job(), known);
        known.remove("ruleSet");
        known.removeIf(component -> component.endsWith(".id") || component.equals("id"));
        assertEquals(Set.of(), known);
    }

    /** Names every component that holds a text or a number. */
    private static void collectKnown(String name, Object value, Set<String> known)
            throws ReflectiveOperationException {
        if (value instanceof Record record) {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                Object inside = component.getAccessor().invoke(record);
                collectKnown(
                        name.isEmpty() ? component.getName() : name + "." + component.getName(),
                        inside,
                        known);
            }
        } else if (value instanceof Collection<?> list) {
            for (Object element : list) {
                collectKnown(name, element, known);
            }
        } else if (value instanceof Map<?, ?> map) {
            collectKnown(name, map.values(), known);
        } else if (value != null) {
            known.add(name);
        }
    }

    @Test
    void everyKeyOfTheShapeStandsInIt() {
        Set<String> missing = new TreeSet<>();
        for (Shape.Thing thing : Shapes.things(JobShape.JOB)) {
            for (String key : thing.keys().keySet()) {
                if (!Pattern.compile('"' + key + "\": ").matcher(BLANK).find()) {
                    missing.add(thing.name() + "." + key);
                }
            }
        }
        assertEquals(Set.of(), missing);
    }

    @Test
    void theWayHasOnePartOfEachKind() throws BadRecord {
        List<String> ids = job().way().stream().map(part -> part.id()).toList();
        assertEquals(
                List.of("outlet-1", "branch-1", "downpipe-1", "drain-1", "tank-1", "discharge-1"),
                ids);
    }

    @Test
    void itsLinesFitOnAScreen() {
        assertTrue(BLANK.lines().allMatch(line -> line.length() <= 100));
    }
}
