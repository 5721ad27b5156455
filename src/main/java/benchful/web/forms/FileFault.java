package benchful.web.forms;

import benchful.core.Fault;
import com.fasterxml.jackson.annotation.JsonInclude;
import io.quarkus.qute.TemplateData;
import java.util.List;

/** Something to mend in a file that was sent, with its line where that can be told (else 0). */
@TemplateData
public record FileFault(String detail, @JsonInclude String pointer, @JsonInclude(JsonInclude.Include.NON_DEFAULT) int line) {
    /** A sentence about the file as a whole. */
    public static List<FileFault> of(String sentence) {
        return List.of(new FileFault(sentence, "", 0));
    }

    /** Faults in what the file says, which have no line any more. */
    public static List<FileFault> of(List<Fault> faults) {
        return faults.stream().map(fault -> new FileFault(fault.detail(), fault.pointer(), 0)).toList();
    }

    public static List<FileFault> of(SpecReader.Faulty<?> reading) {
        return reading.faults().stream().map(fault -> new FileFault(fault.detail(), fault.pointer(), reading.line(fault.pointer()).orElse(0))).toList();
    }
}
