package frillbook.cli;

import frillbook.measure.Currencies;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A currency as it is typed: capitals and small letters are alike. */
final class CurrencyCode implements ITypeConverter<String> {
  @Override
  public String convert(String typed) {
    String code = capitals(typed);
    if (!Currencies.has(code)) {
      throw new TypeConversionException(
          "found \""
              + typed
              + "\". Write the ISO 4217 code of money in use, such as "
              + Currencies.EXAMPLES);
    }
    return code;
  }

  static String capitals(String typed) {
    return typed.toUpperCase(Locale.ROOT);
  }
}
