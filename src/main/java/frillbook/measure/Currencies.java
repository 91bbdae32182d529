package frillbook.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The currencies of ISO 4217 that have coins to round to, by code: those of today and those that
 * have gone. Gold (XAU) and no currency (XXX) have none.
 *
 * <p>Not asked of the Java that runs: it would settle which codes a workbook takes, and each
 * version knows others.
 */
public final class Currencies {
  /** Told to whoever names none of them. */
  public static final String EXAMPLES = "EUR, GBP, JPY or USD";

  private static final Set<String> WITHOUT_PLACES =
      codes(
          "ADP BEF BIF BYB BYR CLP DJF ESP GNF GRD ISK ITL JPY KMF KRW LUF MGF PTE PYG ROL "
              + "RWF TPE TRL UGX UYI VND VUV XAF XOF XPF");

  private static final Set<String> OF_TWO_PLACES =
      codes(
          "AED AFA AFN ALL AMD ANG AOA ARS ATS AUD AWG AYM AZM AZN BAM BBD BDT BGL BGN BMD "
              + "BND BOB BOV BRL BSD BTN BWP BYN BZD CAD CDF CHE CHF CHW CNY COP COU CRC CSD CUC "
              + "CUP CVE CYP CZK DEM DKK DOP DZD EEK EGP ERN ETB EUR FIM FJD FKP FRF GBP GEL GHC "
              + "GHS GIP GMD GTQ GWP GYD HKD HNL HRK HTG HUF IDR IEP ILS INR IRR JMD KES KGS KHR "
              + "KPW KYD KZT LAK LBP LKR LRD LSL LTL LVL MAD MDL MGA MKD MMK MNT MOP MRO MRU MTL "
              + "MUR MVR MWK MXN MXV MYR MZM MZN NAD NGN NIO NLG NOK NPR NZD PAB PEN PGK PHP PKR "
              + "PLN QAR RON RSD RUB RUR SAR SBD SCR SDD SDG SEK SGD SHP SIT SKK SLE SLL SOS SRD "
              + "SRG SSP STD STN SVC SYP SZL THB TJS TMM TMT TOP TRY TTD TWD TZS UAH USD USN USS "
              + "UYU UZS VEB VED VEF VES WST XAD XCD XCG YER YUM ZAR ZMK ZMW ZWD ZWG ZWL ZWN ZWR");

  private static final Set<String> OF_THREE_PLACES = codes("BHD IQD JOD KWD LYD OMR TND");

  private static final Set<String> OF_FOUR_PLACES = codes("CLF");

  private Currencies() {}

  private static Set<String> codes(String codes) {
    return Set.copyOf(Arrays.asList(codes.split(" ")));
  }

  /** Every code, in the order of the alphabet. */
  public static List<String> codes() {
    return Stream.of(WITHOUT_PLACES, OF_TWO_PLACES, OF_THREE_PLACES, OF_FOUR_PLACES)
        .flatMap(Set::stream)
        .sorted()
        .toList();
  }

  /** Whether {@code code}, in capital letters, is one of them. */
  public static boolean has(String code) {
    return WITHOUT_PLACES.contains(code)
        || OF_TWO_PLACES.contains(code)
        || OF_THREE_PLACES.contains(code)
        || OF_FOUR_PLACES.contains(code);
  }

  /**
   * Decimal places of the smallest coin: JPY 0, EUR 2, KWD 3.
   *
   * @throws IllegalArgumentException for a code that is none of them
   */
  public static int places(String code) {
    if (!has(code)) {
      throw new IllegalArgumentException(code + " has no coins to round to; name one such as EUR");
    } else if (OF_THREE_PLACES.contains(code)) {
      return 3;
    } else if (OF_FOUR_PLACES.contains(code)) {
      return 4;
    }
    return WITHOUT_PLACES.contains(code) ? 0 : 2;
  }
}
