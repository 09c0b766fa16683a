package eavesproof.report;

import freemarker.template.ObjectWrapper;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A record as a template sees it: its components by name, and nothing else that Java knows of it.
 */
final class RecordModel implements TemplateHashModel {
    private final Record record;
    private final ObjectWrapper wrapper;

    RecordModel(Record record, ObjectWrapper wrapper) {
        this.record = record;
        this.wrapper = wrapper;
    }

    @Override
    public @Nullable TemplateModel get(String name) throws TemplateModelException {
        Map<String, RecordComponent> components = new LinkedHashMap<>();
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            components.put(component.getName(), component);
        }
        RecordComponent component = components.get(name);
        if (component == null) {
            // Also where the template has a default: a misspelt name must not read as "absent".
            throw new TemplateModelException(
                    record.getClass().getSimpleName()
                            + " has no \""
                            + name
                            + "\", expected one of "
                            + String.join(", ", components.keySet()));
        }
        try {
            component.getAccessor().setAccessible(true);
            return wrapper.wrap(component.getAccessor().invoke(record));
        } catch (ReflectiveOperationException e) {
            throw new TemplateModelException("\"" + name + "\" cannot be read", e);
        }
    }

    @Override
    public boolean isEmpty() {
        return false;
    }
}
