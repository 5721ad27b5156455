package benchful.plans.stored;

import benchful.core.quantity.Quantity;
import java.util.Collection;
import java.util.Map;

/** Asked before something is bought: a feature that has goods on their way tells how much. */
public interface Incoming {
    /**
     * What is written on orders and has not come yet.
     *
     * @param classIds  classes it was ordered for; goods ordered for no class in particular are for any
     * @param materials identifiers of those that are asked for
     * @return by the material's identifier, more than nothing
     */
    Map<Long, Quantity> towards(Collection<Long> classIds, Collection<Long> materials);
}
