package eavesproof.check.drools;

import java.util.List;
import java.util.Set;
import org.drools.model.EntryPoint;
import org.drools.model.Global;
import org.drools.model.Model;
import org.drools.model.Query;
import org.drools.model.Rule;
import org.drools.model.TypeMetaData;

/** A layer without those of its rules that a higher one replaces or drops. */
record PartOfModel(Model whole, Set<String> inForce) implements Model {
    PartOfModel {
        inForce = Set.copyOf(inForce);
    }

    @Override
    public String getName() {
        return whole.getName();
    }

    @Override
    public String getPackageName() {
        return whole.getPackageName();
    }

    /** Raw, as the interface has it. */
    @Override
    @SuppressWarnings("rawtypes")
    public List<Global> getGlobals() {
        return whole.getGlobals();
    }

    @Override
    public List<Rule> getRules() {
        return whole.getRules().stream().filter(rule -> inForce.contains(rule.getName())).toList();
    }

    @Override
    public List<Query> getQueries() {
        return whole.getQueries();
    }

    @Override
    public List<TypeMetaData> getTypeMetaDatas() {
        return whole.getTypeMetaDatas();
    }

    @Override
    public List<EntryPoint> getEntryPoints() {
        return whole.getEntryPoints();
    }
}
