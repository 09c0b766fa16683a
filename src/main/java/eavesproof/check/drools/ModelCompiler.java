package eavesproof.check.drools;

import eavesproof.check.Engine.EngineFault;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;

/**
 * Compiles with Drools itself, in memory. It is handed only what was printed from admitted rules.
 */
final class ModelCompiler implements LayerCompiler {
    private static final String LIST_OF_MODELS = "drools-model";

    @Override
    public Compiled compile(LayerText text) {
        try {
            InternalKieModule module = module(text);
            SortedMap<String, byte[]> classes = new TreeMap<>();
            String models = "";
            for (String file : module.getFileNames()) {
                if (file.startsWith(text.folder()) && file.endsWith(".class")) {
                    classes.put(file, module.getBytes(file));
                } else if (file.endsWith("/" + LIST_OF_MODELS)) {
                    models = new String(module.getBytes(file), StandardCharsets.UTF_8);
                }
            }
            return new Compiled(onlyModel(models), classes);
        } catch (RuntimeException | LinkageError e) {
            throw e instanceof EngineFault fault
                    ? fault
                    : new EngineFault("rules of the plain form did not compile", e);
        }
    }

    private static InternalKieModule module(LayerText text) {
        KieServices services = KieServices.get();
        KieFileSystem files = services.newKieFileSystem();
        files.write("src/main/resources/" + text.folder() + "layer.drl", text.drl());
        KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
        List<Message> errors = builder.getResults().getMessages(Message.Level.ERROR);
        if (!errors.isEmpty()) {
            throw new EngineFault("rules of the plain form did not compile: " + errors);
        }
        return (InternalKieModule) builder.getKieModule();
    }

    /** The list has a line for the version, with a colon in it, and one for each model. */
    private static String onlyModel(String list) {
        List<String> models =
                list.lines().filter(line -> !line.isBlank() && !line.contains(":")).toList();
        if (models.size() != 1) {
            throw new EngineFault("one layer became " + models.size() + " models");
        }
        return models.get(0).strip();
    }
}
