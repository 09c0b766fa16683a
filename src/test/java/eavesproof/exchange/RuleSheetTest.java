package eavesproof.exchange;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** That every rule comes back from its sheet is shown beside the reader of the plain form. */
class RuleSheetTest {

    @ParameterizedTest
    @ValueSource(strings = {"", "{}", "[{}]", "[{\"name\": \"a\"}]", "[7]", "[", "null"})
    void aBrokenSheetIsAFaultAndNotAnEmptyOne(String text) {
        assertThrows(
                IllegalStateException.class,
                () -> RuleSheet.read("a.drl", text.getBytes(StandardCharsets.UTF_8)));
    }
}
