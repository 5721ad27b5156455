package benchful.plans.materials;

import benchful.catalogue.CatalogueSpec;
import benchful.classes.ClassFile;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * Classes and kit batches that are bought for together.
 *
 * @param catalogue all materials with what is on hand for these parts, and those who sell them
 */
public record TermRequest(List<Part> parts, CatalogueSpec catalogue) {
    public TermRequest {
        parts = List.copyOf(parts);
        Objects.requireNonNull(catalogue, "catalogue");
    }

    /**
     * One class, or one batch of kits.
     *
     * @param title as it is named where its share is shown
     */
    public record Part(String title, ClassFile file) {
        LocalDate arriveBy() {
            return file.arriveBy();
        }
    }
}
