package frillbook.money;

import frillbook.brief.MoneySpec;

/**
 * What the whole order costs the maker.
 *
 * @param labourTotal hours at the hourly rate
 * @param overheadTotal share of materials and labour
 * @param costTotal materials, labour and overhead: 10 + 10.50 + 4 = 24.50
 */
public record Costs(double labourTotal, double overheadTotal, double costTotal) {

  public static Costs of(Money money, MoneySpec spec, double materials, double hours) {
    double labour = money.round(hours * spec.hourlyRate());
    double overhead = money.round((materials + labour) * spec.overheadRate());
    return new Costs(labour, overhead, money.sum(materials, labour, overhead));
  }
}
