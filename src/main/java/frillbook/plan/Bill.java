package frillbook.plan;

import frillbook.brief.MoneySpec;
import frillbook.materials.Materials;
import frillbook.money.Bargain;
import frillbook.money.Costs;
import frillbook.money.FarOff;
import frillbook.money.LookCosts;
import java.util.Optional;

/**
 * What the order costs.
 *
 * @param grows what of it another look changes
 * @param asking what is asked for it; empty where the profit is no possible one
 */
public record Bill(
    Materials materials, Costs costs, Bargain bargain, LookCosts grows, Optional<Asking> asking) {

  /** True where nothing is asked. */
  boolean isPlausible(MoneySpec spec) {
    return asking
        .map(
            asked ->
                FarOff.isPlausible(spec, materials.materialsTotal(), costs, asked.price(), bargain))
        .orElse(true);
  }
}
