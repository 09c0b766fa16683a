package eavesproof.check.drools;

import eavesproof.check.Engine.EngineFault;
import eavesproof.rules.Rule;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drools.model.Model;

/**
 * Finds the compiled classes of a layer, or has them made, and makes sure that they are what the
 * rules say: the note beside them must hold the same text, and the model the same rules.
 */
final class LayerLoader {
    private final ClassLoader classPath;
    private final LayerCompiler compiler;

    LayerLoader(ClassLoader classPath, LayerCompiler compiler) {
        this.classPath = classPath;
        this.compiler = compiler;
    }

    /**
     * @throws EngineFault if classes of the right name are of other rules
     */
    Model load(List<Rule> rules) {
        LayerText text = LayerText.of(rules);
        Optional<String> note = resource(LayerFiles.note(text));
        ClassLoader loader = classPath;
        if (note.isEmpty()) {
            Map<String, byte[]> files = LayerFiles.of(text, compiler);
            note = Optional.ofNullable(files.get(LayerFiles.note(text))).map(LayerLoader::ascii);
            loader = LayerFiles.loader(files, classPath);
        }
        String written = note.orElseThrow();
        int end = written.indexOf('\n');
        if (end < 0 || !written.substring(end + 1).equals(text.drl())) {
            throw new EngineFault("compiled rules of another text lie in " + text.packageName());
        }
        Model model = model(written.substring(0, end), loader);
        ModelCheck.holds(model, text.packageName(), rules);
        return model;
    }

    static Model model(String name, ClassLoader loader) {
        try {
            return (Model) loader.loadClass(name).getDeclaredConstructor().newInstance();
        } catch (ReflectiveOperationException | LinkageError | RuntimeException e) {
            throw new EngineFault("compiled rules cannot be loaded: " + name, e);
        }
    }

    private Optional<String> resource(String path) {
        try (InputStream in = classPath.getResourceAsStream(path)) {
            return in == null ? Optional.empty() : Optional.of(ascii(in.readAllBytes()));
        } catch (IOException e) {
            throw new EngineFault("cannot read " + path, e);
        }
    }

    private static String ascii(byte[] bytes) {
        return new String(bytes, StandardCharsets.US_ASCII);
    }
}
