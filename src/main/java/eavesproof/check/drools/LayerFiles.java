package eavesproof.check.drools;

import eavesproof.rules.Rule;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The compiled classes of one layer as files, and beside them a note of what they were made from.
 */
public final class LayerFiles {
    private static final String NOTE = "layer.txt";

    private LayerFiles() {}

    /**
     * What the build puts on the class path for a layer with these rules: path to content.
     *
     * @throws eavesproof.check.Engine.EngineFault if Drools does not compile what was admitted
     */
    public static SortedMap<String, byte[]> of(List<Rule> rules) {
        return of(LayerText.of(rules), new ModelCompiler());
    }

    static SortedMap<String, byte[]> of(LayerText text, LayerCompiler compiler) {
        LayerCompiler.Compiled compiled = compiler.compile(text);
        SortedMap<String, byte[]> files = new TreeMap<>(compiled.classes());
        files.put(note(text), noteOf(text, compiled.modelClass()));
        return files;
    }

    /** Where the note of a layer lies. */
    static String note(LayerText text) {
        return text.folder() + NOTE;
    }

    /** The class to begin with, and all that the classes were made from. */
    private static byte[] noteOf(LayerText text, String modelClass) {
        return (modelClass + "\n" + text.drl()).getBytes(StandardCharsets.US_ASCII);
    }

    /** A class loader over files in memory. */
    static ClassLoader loader(Map<String, byte[]> files, ClassLoader parent) {
        return new ClassLoader(parent) {
            @Override
            protected Class<?> findClass(String name) throws ClassNotFoundException {
                byte[] bytes = files.get(name.replace('.', '/') + ".class");
                if (bytes == null) {
                    throw new ClassNotFoundException(name);
                }
                return defineClass(name, bytes, 0, bytes.length);
            }
        };
    }
}
