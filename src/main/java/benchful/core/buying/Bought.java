package benchful.core.buying;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.util.List;
import org.joda.money.Money;

/**
 * What becomes of one want.
 *
 * @param missing what stock does not cover
 * @param bought in all packs
 * @param leftover of stock and packs, once the need is met; zero where it is not
 * @param leftoverValue of what is left of the packs, at cost before VAT
 * @param unmet what no offer covers; zero where all is covered
 */
public record Bought(
        String material, Quantity need, Quantity onHand, Quantity missing, Quantity bought, Quantity leftover,
        Money leftoverValue, Quantity unmet,
        List<Sentence> reasons) {

    public Bought {
        reasons = List.copyOf(reasons);
    }
}
