package eavesproof.app;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;
import eavesproof.job.Instrument;
import eavesproof.job.Job;
import eavesproof.job.WayPart;
import java.io.File;
import java.io.IOException;

/**
 * The least that any program does with a record: binds it to the records of {@code eavesproof.job},
 * every key of it, and checks nothing. What {@code check} is measured against.
 */
public final class BindOnly {
    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = WayPart.Outlet.class, name = "outlet"),
        @JsonSubTypes.Type(value = WayPart.Branch.class, name = "branch"),
        @JsonSubTypes.Type(value = WayPart.Downpipe.class, name = "downpipe"),
        @JsonSubTypes.Type(value = WayPart.Drain.class, name = "drain"),
        @JsonSubTypes.Type(value = WayPart.Tank.class, name = "tank"),
        @JsonSubTypes.Type(value = WayPart.Discharge.class, name = "discharge"),
    })
    private interface ByKind {}

    private abstract static class TapeClass {
        @JsonProperty("class")
        abstract String tapeClass();
    }

    private BindOnly() {}

    public static void main(String[] record) throws IOException {
        Job job =
                JsonMapper.builder()
                        .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
                        .addMixIn(WayPart.class, ByKind.class)
                        .addMixIn(Instrument.class, TapeClass.class)
                        .build()
                        .readValue(new File(record[0]), Job.class);
        System.out.println(job.id() + ": " + job.runs().size() + " runs");
    }
}
