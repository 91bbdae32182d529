package frillbook.brief;

import frillbook.naming.Prefixed;

/**
 * What is bought, at what price, and how it is charged.
 *
 * @param interfaced which discs are interfaced
 * @param interfacingWidth edge to edge
 * @param chargeAs which amount goes into the cost
 */
public record MaterialSpec(
    @Prefixed("price") PriceSpec prices,
    @Prefixed("extra_one") ExtraSpec extraOne,
    @Prefixed("extra_two") ExtraSpec extraTwo,
    @Prefixed("extra_three") ExtraSpec extraThree,
    Interfaced interfaced,
    double interfacingWidth,
    ChargeAs chargeAs,
    WeightSpec weights) {}
