package benchful.venues;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import benchful.web.Uses.Use;
import jakarta.persistence.Query;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Asked by the list of tools: each feature that names tools answers for its own. */
public interface ToolNaming {
    /** By the name of a tool, letter for letter, who has it or asks for it. */
    Map<String, List<Use>> tools();

    /**
     * @param query brings of each a tool's name, who names it in words, and its number
     * @param place the address before that number
     */
    static Map<String, List<Use>> tools(Query query, String place) {
        @SuppressWarnings("unchecked")
        Stream<Object[]> rows = query.getResultStream();
        return rows.collect(groupingBy(row -> (String) row[0], mapping(row -> new Use((String) row[1], place + row[2]), toList())));
    }
}
