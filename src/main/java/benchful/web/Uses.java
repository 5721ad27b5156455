package benchful.web;

import io.quarkus.qute.TemplateData;
import java.util.List;

/** Asked before something is removed: each feature that refers to things of others answers for its own. */
public interface Uses {

    /**
     * Where something is used.
     *
     * @param kind the entity's class
     * @param id its identifier
     * @param name by which sheets refer to it
     */
    List<Use> of(Class<?> kind, Object id, String name);

    /**
     * @param words what uses it: "the project Knotted strand"
     * @param address the page where that can be changed
     */
    @TemplateData
    record Use(String words, String address) {}
}
