package frillbook.measure;

import java.util.Arrays;
import java.util.Optional;

/**
 * What a quantity that a plan keeps in grams or metres is shown in beside inches. Units are exact
 * (NIST SP 811).
 */
public enum Customary {
  OUNCE("g", "oz", 1 / Scales.GRAMS_PER_OUNCE),
  YARD("m", "yd", 1 / 0.9144),
  /** One of them is 33.9057 g/m². */
  OUNCE_A_SQUARE_YARD("g/m²", "oz/yd²", 0.9144 * 0.9144 / Scales.GRAMS_PER_OUNCE),
  /** The minutes that a yard takes, where a metre takes so many. */
  MINUTES_A_YARD("min/m", "min/yd", 0.9144);

  private final String metric;
  private final String symbol;
  private final double times;

  Customary(String metric, String symbol, double times) {
    this.metric = metric;
    this.symbol = symbol;
    this.times = times;
  }

  /** What stands in place of the unit {@code metric}; empty for one that is shown as it is. */
  public static Optional<Customary> of(String metric) {
    return Arrays.stream(values()).filter(each -> each.metric.equals(metric)).findFirst();
  }

  /** The unit that a plan keeps. */
  public String metric() {
    return metric;
  }

  /** The unit shown. */
  public String symbol() {
    return symbol;
  }

  /** Of one metric unit; a gram is 0.03527 oz. */
  public double times() {
    return times;
  }

  /** {@code amount} of the metric unit in this one; 100 g are 3.527 oz. */
  public double of(double amount) {
    return amount * times;
  }
}
