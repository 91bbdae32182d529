package frillbook.plan;

import frillbook.brief.MoneySpec;
import frillbook.materials.Materials;
import frillbook.money.Bargain;
import frillbook.money.Costs;
import frillbook.money.FarOff;
import frillbook.picture.LeaningPrices;
import java.util.Optional;

/**
 * What the order costs.
 *
 * @param asking what is asked for it; empty where the profit is no possible one
 */
public record Bill(
    Materials materials,
    Costs costs,
    Bargain bargain,
    LeaningPrices leanings,
    Optional<Asking> asking) {

  /** True where nothing is asked. */
  boolean isPlausible(MoneySpec spec) {
    return asking
        .map(
            asked ->
                FarOff.isPlausible(spec, materials.materialsTotal(), costs, asked.price(), bargain))
        .orElse(true);
  }
}
