package frillbook.plan;

import frillbook.money.Earning;
import frillbook.money.LookPrices;
import frillbook.money.Price;
import frillbook.naming.Prefixed;
import frillbook.picture.MoneyShare;
import java.util.List;

/**
 * What is asked for the order.
 *
 * @param looks about what is asked for others
 * @param money where the price goes
 * @param two the second choice as a client is shown it
 * @param three the third
 */
public record Asking(
    Price price,
    LookPrices looks,
    Earning earning,
    List<MoneyShare> money,
    MoneyShare.Largest largest,
    @Prefixed("two") ClientChoice two,
    @Prefixed("three") ClientChoice three) {}
