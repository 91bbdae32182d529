package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CurrencyOptionTest {
  /** ISO 4217 gives gold, the test code and no currency no minor unit; ZZZ is none of its codes. */
  @ParameterizedTest
  @ValueSource(strings = {"ZZZ", "euro", "", "€", "XAU", "XTS", "xxx"})
  void whatHasNoCoinsIsRefused(String code) {
    assertEquals(
        Ran.refusal(
            2,
            "--currency: found \""
                + code
                + "\". Write the ISO 4217 code of money in use, such as EUR, GBP, JPY or USD.",
            "'frillbook inputs --help' lists what can be given."),
        Ran.run("inputs", "--currency=" + code));
  }

  @ParameterizedTest
  @CsvSource({"gbp,GBP", "Inr,INR", "KWD,KWD"})
  void capitalsAndSmallLettersAreAlike(String typed, String code) {
    assertEquals("min " + code, unitOfRate("--currency=" + typed));
  }

  @Test
  void itIsAnInputLikeAnyOther() {
    assertEquals(
        Ran.run("plan", "--currency=JPY", "--json").out(),
        Ran.run("plan", "--input=currency_code=jpy", "--json").out());
  }

  @Test
  void whatHasNoCoinsIsRefusedAsAnInputToo() {
    assertEquals(
        Ran.refusal(
            2,
            "currency_code: found \"gold\". “Currency” must be an ISO 4217 code in capitals, such as"
                + " EUR, GBP, JPY or USD."),
        Ran.run("plan", "--input=currency_code=gold"));
  }

  @Test
  void itIsGivenOnce() {
    assertEquals(
        Ran.refusal(2, "currency_code: found \"EUR\" and \"USD\". Give it once."),
        Ran.run("plan", "--currency=EUR", "--input=currency_code=USD"));
  }

  @Test
  void withoutItInchesGoWithDollarsAndCentimetresWithEuros() {
    assertEquals("min USD", unitOfRate("--unit=inch"));
    assertEquals("min EUR", unitOfRate("--unit=cm"));
  }

  /** The unit of two inputs, without what it is for. */
  private static String unitOfRate(String option) {
    String list = Ran.run("inputs", option).out();
    return unit(list, "gather_setup") + " " + unit(list, "price_zip").replace(" per zip", "");
  }

  private static String unit(String list, String name) {
    return list.lines()
        .filter(line -> line.startsWith(name + " "))
        .map(line -> line.split(" {2,}")[1])
        .findFirst()
        .orElseThrow();
  }
}
