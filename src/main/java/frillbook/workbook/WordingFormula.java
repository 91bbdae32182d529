package frillbook.workbook;

import frillbook.look.WorkbookSetting;
import frillbook.wording.CodeWords;
import frillbook.wording.NumberStyle;
import frillbook.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Turns a sentence of a template into the formula that puts it together. */
final class WordingFormula {
  private static final String EMPTY = "\"\"";

  private final WorkbookSetting setting;
  private final CodeWords words;
  private final UnaryOperator<String> cells;

  WordingFormula(WorkbookSetting setting, CodeWords words) {
    this(setting, words, name -> name);
  }

  /**
   * @param cells what a formula calls an input or a line
   */
  WordingFormula(WorkbookSetting setting, CodeWords words, UnaryOperator<String> cells) {
    this.setting = setting;
    this.words = words;
    this.cells = cells;
  }

  /** A formula whose value is always a text. */
  String of(Wording wording) {
    List<String> parts = new ArrayList<>();
    wording.parts().forEach(part -> parts.add(part(part)));
    if (parts.isEmpty()) {
      return EMPTY;
    }
    boolean isText = parts.size() > 1 || !(wording.parts().get(0) instanceof Wording.Text);
    return isText ? String.join("&", parts) : parts.get(0) + "&" + EMPTY;
  }

  private String part(Wording.Part part) {
    if (part instanceof Wording.Words words) {
      return FormulaTranslation.text(setting.say(words.text()));
    } else if (part instanceof Wording.Text text) {
      return cells.apply(text.name());
    } else if (part instanceof Wording.Number number) {
      return number(cells.apply(number.name()), number.style());
    }
    return part instanceof Wording.Measure measure ? measure.cell() : choice((Wording.Choice) part);
  }

  /**
   * Made a whole number of tenths, hundredths and so on, so that every program rounds a half alike.
   * A number with decimals that is simply joined to a text is written by each program in its own
   * way, as 33.130000000000000001 by one; FIXED gives as many decimals as it is told, and so it is
   * told how many are not 0.
   */
  private static String number(String name, NumberStyle style) {
    String value = style.percent() ? "(100*" + name + ")" : name;
    String sign = style.percent() ? "&\"%\"" : "";
    if (style.money()) {
      String coins = "ROUND(ROUND(" + value + "*10^money_places,4),0)";
      return "FIXED(" + coins + "/10^money_places,money_places,FALSE)";
    } else if (style.most() == 0) {
      return "ROUND(ROUND(" + value + ",4),0)" + sign;
    }
    String parts = "ROUND(ROUND(" + value + "*" + tens(style.most()) + ",4),0)";
    StringBuilder places = new StringBuilder().append(style.most());
    for (int zeros = 1; zeros <= style.most() - style.least(); zeros++) {
      places.append("-(MOD(").append(parts).append(",").append(tens(zeros)).append(")=0)");
    }
    return "FIXED(" + parts + "/" + tens(style.most()) + "," + places + ",TRUE)" + sign;
  }

  private static String tens(int zeros) {
    return "1" + "0".repeat(zeros);
  }

  private String choice(Wording.Choice choice) {
    StringBuilder formula = new StringBuilder();
    for (Wording.Case each : choice.cases()) {
      formula
          .append("IF(")
          .append(cells.apply(choice.name()))
          .append("=")
          .append(value(choice.name(), each));
      formula.append(",").append(of(each.wording())).append(",");
    }
    return formula.append(of(choice.other())).append(")".repeat(choice.cases().size())).toString();
  }

  /** Cells hold words where the sentence speaks of codes. */
  private String value(String name, Wording.Case each) {
    Object value = words.has(name) ? words.shown(name, each.code()) : each.value();
    return value instanceof Double number
        ? FormulaTranslation.number(number)
        : FormulaTranslation.text(value.toString());
  }
}
