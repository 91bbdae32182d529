package frillbook.plan;

import frillbook.money.Earning;
import frillbook.money.Price;
import frillbook.picture.MoneyShare;
import java.util.List;

/**
 * What is asked for the order.
 *
 * @param money where the price goes
 * @param clientChoices all three choices as a client is shown them
 */
public record Asking(
    Price price,
    Earning earning,
    List<MoneyShare> money,
    MoneyShare.Largest largest,
    List<ClientChoice> clientChoices) {}
