package eavesproof.app;

import eavesproof.job.Said;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** The record of a job as a tree of named parts, so that a law can speak of every one of them. */
final class RecordTree {
    private RecordTree() {}

    /** Of every value, list and map that is recorded, ids left out: runs, 0, straights, 1, … */
    static List<List<Object>> paths(Object root) {
        List<List<Object>> paths = new ArrayList<>();
        collect(root, List.of(), paths);
        return paths;
    }

    private static void collect(Object node, List<Object> path, List<List<Object>> paths) {
        if (node instanceof Record record) {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                Object value = value(record, component);
                if (value != null && !component.getName().equals("id")) {
                    List<Object> here = and(path, component.getName());
                    paths.add(here);
                    collect(value, here, paths);
                }
            }
        } else if (node instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                collect(list.get(i), and(path, i), paths);
            }
        } else if (node instanceof Map<?, ?> map) {
            map.forEach((key, value) -> collect(value, and(path, key), paths));
        }
    }

    static List<Object> and(List<Object> path, Object... steps) {
        List<Object> longer = new ArrayList<>(path);
        longer.addAll(List.of(steps));
        return longer;
    }

    /** The same with one part not recorded. */
    static <R extends Record> R without(R root, List<Object> path) {
        return with(root, path, it -> it instanceof Said<?> ? Said.nothing() : null);
    }

    @SuppressWarnings("unchecked")
    static <R extends Record> R with(R root, List<Object> path, UnaryOperator<Object> edit) {
        return (R) edited(root, path, edit);
    }

    private static Object edited(Object node, List<Object> path, UnaryOperator<Object> edit) {
        if (path.isEmpty()) {
            return edit.apply(node);
        }
        Object step = path.get(0);
        List<Object> rest = path.subList(1, path.size());
        if (node instanceof List<?> list) {
            List<Object> copy = new ArrayList<>(list);
            copy.set((Integer) step, edited(list.get((Integer) step), rest, edit));
            return copy;
        }
        if (node instanceof Map<?, ?> map) {
            Map<Object, Object> copy = new LinkedHashMap<>(map);
            copy.put(step, edited(map.get(step), rest, edit));
            return copy;
        }
        Record record = (Record) node;
        RecordComponent[] components = record.getClass().getRecordComponents();
        Object[] values = new Object[components.length];
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            Object value = value(record, components[i]);
            values[i] = components[i].getName().equals(step) ? edited(value, rest, edit) : value;
            types[i] = components[i].getType();
        }
        try {
            var constructor = record.getClass().getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new LinkageError("a record that cannot be copied", e);
        }
    }

    /** The same with every list and map of it changed, from the leaves up. */
    static Object everywhere(Object node, UnaryOperator<Object> edit) {
        Object copy = node;
        if (node instanceof Record record) {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                Object value = value(record, component);
                if (value instanceof Record || value instanceof List || value instanceof Map) {
                    copy = edited(copy, List.of(component.getName()), it -> everywhere(it, edit));
                }
            }
        } else if (node instanceof List<?> list) {
            List<Object> all = new ArrayList<>();
            list.forEach(it -> all.add(everywhere(it, edit)));
            copy = all;
        } else if (node instanceof Map<?, ?> map) {
            Map<Object, Object> all = new LinkedHashMap<>();
            map.forEach((key, value) -> all.put(key, everywhere(value, edit)));
            copy = all;
        }
        return edit.apply(copy);
    }

    private static Object value(Record record, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new LinkageError("a record that cannot be read", e);
        }
    }
}
