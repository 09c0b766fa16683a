package eavesproof.check.drools;

import java.util.SortedMap;

/** Makes classes of a layer. */
interface LayerCompiler {
    /**
     * @throws eavesproof.check.Engine.EngineFault if that cannot be done
     */
    Compiled compile(LayerText text);

    /**
     * @param modelClass name of the class that holds the rules
     * @param classes path to content
     */
    record Compiled(String modelClass, SortedMap<String, byte[]> classes) {}
}
