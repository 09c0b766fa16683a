package eavesproof.check.drools;

import eavesproof.check.Engine.EngineFault;
import eavesproof.check.drools.LayerCompiler.Compiled;
import eavesproof.rules.Rule;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.drools.model.Model;

/**
 * Finds the compiled classes of a layer, on the class path or among those kept from an earlier run,
 * or has them made; and makes sure that they are what the rules say: they must be of the same text,
 * and the model must hold the same rules.
 */
final class LayerLoader {
    private final ClassLoader classPath;
    private final LayerCompiler compiler;
    private final Supplier<KeptLayers> keeping;

    /** Keeps nothing. */
    LayerLoader(ClassLoader classPath, LayerCompiler compiler) {
        this(classPath, compiler, () -> new KeptLayers(Optional.empty()));
    }

    /**
     * @param keeping asked only for a layer that is not on the class path
     */
    LayerLoader(ClassLoader classPath, LayerCompiler compiler, Supplier<KeptLayers> keeping) {
        this.classPath = classPath;
        this.compiler = compiler;
        this.keeping = keeping;
    }

    /**
     * @throws EngineFault if classes of the right name on the class path are of other rules
     */
    Model load(List<Rule> rules) {
        LayerText text = LayerText.of(rules);
        Optional<String> note = resource(LayerFiles.note(text));
        if (note.isPresent()) {
            String written = note.get();
            int end = written.indexOf('\n');
            if (end < 0 || !written.substring(end + 1).equals(text.drl())) {
                throw new EngineFault(
                        "compiled rules of another text lie in " + text.packageName());
            }
            return held(written.substring(0, end), classPath, text, rules);
        }
        KeptLayers kept = keeping.get();
        return kept.find(text)
                .flatMap(before -> stillGood(before, text, rules))
                .orElseGet(() -> madeNow(kept, text, rules));
    }

    /** Classes that another Java made may be none for this one; they are then made anew. */
    private Optional<Model> stillGood(Compiled before, LayerText text, List<Rule> rules) {
        try {
            return Optional.of(held(before, text, rules));
        } catch (EngineFault | LinkageError noLonger) {
            return Optional.empty();
        }
    }

    private Model madeNow(KeptLayers kept, LayerText text, List<Rule> rules) {
        Compiled compiled = compiler.compile(text);
        Model model = held(compiled, text, rules);
        kept.keep(text, compiled);
        return model;
    }

    private Model held(Compiled compiled, LayerText text, List<Rule> rules) {
        ClassLoader loader = LayerFiles.loader(compiled.classes(), classPath);
        return held(compiled.modelClass(), loader, text, rules);
    }

    private static Model held(String name, ClassLoader loader, LayerText text, List<Rule> rules) {
        Model model = model(name, loader);
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
            return in == null
                    ? Optional.empty()
                    : Optional.of(new String(in.readAllBytes(), StandardCharsets.US_ASCII));
        } catch (IOException e) {
            throw new EngineFault("cannot read " + path, e);
        }
    }
}
