package benchful.packing;

import benchful.core.quantity.Quantity;
import io.quarkus.qute.TemplateData;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A kit, or what is packed for all.
 *
 * @param key by which its ticks are kept, whatever kits come before it
 * @param title whom it is for
 * @param size null where it is for all
 */
@TemplateData
public record Box(String key, String title, String size, List<Item> items) {
    public Box {
        items = List.copyOf(items);
    }

    public int ticked() {
        return (int) items.stream().filter(Item::ticked).count();
    }

    /** Materials that are ticked, a line each. */
    public String was() {
        return items.stream().filter(Item::ticked).map(Item::material).collect(Collectors.joining("\n"));
    }

    public boolean packed() {
        return ticked() == items.size();
    }

    /**
     * One material in the box.
     *
     * @param words how much, as it is counted or cut out
     * @param amount in the material's unit
     * @param packed what was packed; null where it is not ticked
     * @param lent whether it comes back, so that packing takes nothing from the shelf
     */
    @TemplateData
    public record Item(String material, String words, Quantity amount, Quantity packed, boolean lent) {
        public boolean ticked() {
            return packed != null;
        }

        /** True where the plan has changed since it was packed. */
        public boolean changed() {
            return packed != null && !packed.measurable().equals(amount.measurable());
        }
    }
}
