package eavesproof.check.drools;

import eavesproof.check.Engine.EngineFault;
import eavesproof.rules.Rule;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.jspecify.annotations.Nullable;

/**
 * The compiled classes of one layer as files, and beside them a note of what they were made from.
 */
public final class LayerFiles {
    private static final String NOTE = "layer.txt";

    private LayerFiles() {}

    /**
     * What the build puts on the class path for a layer with these rules: path to content.
     *
     * @throws EngineFault if Drools does not compile what was admitted
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

    /**
     * Puts them into a folder of classes, unless what already lies there can be loaded as it is.
     *
     * @return the folder within it that holds them
     */
    public static Path writeTo(Path classes, List<Rule> rules) throws IOException {
        LayerText text = LayerText.of(rules);
        Path folder = classes.resolve(text.folder());
        if (!areGood(filesIn(classes, folder), rules)) {
            for (Map.Entry<String, byte[]> file : of(rules).entrySet()) {
                Path path = classes.resolve(file.getKey());
                Files.createDirectories(Objects.requireNonNull(path.getParent()));
                Files.write(path, file.getValue());
            }
        }
        return folder;
    }

    private static boolean areGood(Map<String, byte[]> files, List<Rule> rules) {
        LayerCompiler none =
                text -> {
                    throw new EngineFault("not compiled yet: " + text.packageName());
                };
        try {
            ClassLoader loader = loader(files, LayerFiles.class.getClassLoader());
            Model model = new LayerLoader(loader, none).load(rules);
            return KieBaseBuilder.createKieBaseFromModel(List.of(model)) != null;
        } catch (RuntimeException | LinkageError e) {
            return false;
        }
    }

    private static Map<String, byte[]> filesIn(Path classes, Path folder) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> paths = Files.walk(folder)) {
                for (Path path : paths.filter(Files::isRegularFile).toList()) {
                    String name = classes.relativize(path).toString().replace('\\', '/');
                    files.put(name, Files.readAllBytes(path));
                }
            }
        }
        return files;
    }

    /** A class loader over files in memory; what it has goes before what its parent has. */
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

            @Override
            public @Nullable InputStream getResourceAsStream(String path) {
                byte[] bytes = files.get(path);
                return bytes == null
                        ? super.getResourceAsStream(path)
                        : new ByteArrayInputStream(bytes);
            }
        };
    }
}
