package frillbook.workbook;

import frillbook.calculation.CellFill;
import frillbook.look.Look;
import frillbook.look.NumberFormats;
import frillbook.look.Span;
import frillbook.measure.Customary;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import frillbook.template.LineTemplate;
import frillbook.template.ValueFormat;
import java.util.Optional;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;

/** Writes inputs and calculated lines: label, value, unit, other unit, note. */
final class LineWriter {
  private static final double LINE_HEIGHT = 15;
  private static final double HEADLINE_HEIGHT = 16.5;

  /** Of words in their frame. */
  private static final double TWO_LINES = 28;

  private final Page page;
  private final SheetPlaces places;
  private final FormulaTranslation formulas;
  private final InputFormulas judging;

  LineWriter(Page page, SheetPlaces places, FormulaTranslation formulas) {
    this.page = page;
    this.places = places;
    this.formulas = formulas;
    this.judging = new InputFormulas(page, formulas);
  }

  void input(int row, InputTemplate input) {
    label(row, input.label(), Look.LABEL);
    if (input.isFree()) {
      words(row, input);
    } else {
      CellFill.fill(page.cell(row, SheetPlaces.VALUE, style(Look.INPUT, input)), content(input));
      unit(row, input.name(), input.kind() == InputKind.PERCENT ? "-" : input.unit());
    }
    if (places.customary(input).isPresent()) {
      converted(row, SheetPlaces.OTHER_UNIT, input.name(), places.customary(input).get());
    }
    remark(row, input);
    InputRules.add(page, row, input);
    alarm(row, input);
  }

  /** In one cell from the value to the note, two lines high; a maker may make it higher. */
  private void words(int row, InputTemplate input) {
    XSSFCellStyle style = style(Look.INPUT_WORDS, input);
    for (int column = SheetPlaces.OTHER_UNIT; column >= SheetPlaces.VALUE; column--) {
      page.cell(row, column, style);
    }
    page.merge(row, SheetPlaces.VALUE, SheetPlaces.OTHER_UNIT);
    CellFill.fill(page.cell(row, SheetPlaces.VALUE, style), content(input));
    page.heighten(row, TWO_LINES);
  }

  private XSSFCellStyle style(Look look, InputTemplate input) {
    return page.styles().of(look, NumberFormats.of(input.kind(), page.setting().unit()));
  }

  /** A number that is left out leaves the cell blank: a text of no letters is none. */
  private Object content(InputTemplate input) {
    Object value = page.setting().value(input);
    return input.isWords() || value instanceof Double ? value : null;
  }

  /** The words beside an input stand out while it cannot be used. */
  private void alarm(int row, InputTemplate input) {
    CellRangeAddress words =
        new CellRangeAddress(row, row, places.noteColumn(input), page.lastColumn());
    String condition =
        places
            .faultPlace(input)
            .map(place -> "INDEX(input_fault,ROW()" + signed(place - row - 1) + ")=1")
            .orElseGet(() -> judging.fault(input, address(row)) + "=1");
    page.styles().emphasis().addAlarm(page.sheet(), condition, words);
  }

  /** The prompt, or what is allowed while the input cannot be used. */
  private void remark(int row, InputTemplate input) {
    String prompt = page.setting().say(input.prompt());
    Optional<Span> fault = places.fault(input);
    Optional<String> sheet = page.spokenOf(prompt);
    XSSFCellStyle style = page.styles().of(remark(sheet));
    int column = places.noteColumn(input);
    if (fault.isPresent()) {
      String refusal = FormulaTranslation.text(page.limits(input));
      page.formula(row, column, judging.remark(fault.get(), prompt, refusal), style);
    } else {
      page.text(row, column, prompt, style);
    }
    page.lead(row, column, sheet);
    endNote(row, column, prompt);
    page.fit(row, page.limits(input), column, page.lastColumn(), Look.REFUSAL);
  }

  void line(int row, LineTemplate line) {
    label(row, line.label(), line.headline() ? Look.HEADLINE_LABEL : Look.LABEL);
    if (line.customary().isPresent()) {
      customary(row, line, line.customary().get());
    } else {
      page.formula(row, SheetPlaces.VALUE, formulas.line(line), valueStyle(line));
      unit(row, line.name(), line.format() == ValueFormat.PERCENT ? "-" : line.unit());
      beside(row, line);
    }
    if (line.isVerdict()) {
      new VerdictWriter(page, places).first(row);
      page.styles().emphasis().addFlag(page.sheet(), row, line.words());
    } else {
      note(row, line);
    }
    page.heighten(row, line.headline() ? HEADLINE_HEIGHT : LINE_HEIGHT);
  }

  /** A metric amount; in an inch workbook it stands behind what is shown. */
  private void customary(int row, LineTemplate line, Customary unit) {
    Look look = line.headline() ? Look.HEADLINE : Look.VALUE;
    if (places.column(line) == SheetPlaces.VALUE) {
      page.formula(row, SheetPlaces.VALUE, formulas.line(line), valueStyle(line));
      unit(row, line.name(), line.unit());
      converted(row, SheetPlaces.OTHER_UNIT, line.name(), unit);
    } else {
      String shown = FormulaTranslation.converted(line.name(), unit);
      page.formula(row, SheetPlaces.VALUE, shown, page.styles().of(look, NumberFormats.TENTHS));
      unit(row, line.name(), unit.symbol());
      String format = NumberFormats.with("0", unit.metric());
      page.formula(
          row, SheetPlaces.OTHER_UNIT, formulas.line(line), page.styles().of(Look.VALUE, format));
    }
  }

  private void converted(int row, int column, String name, Customary unit) {
    String format = NumberFormats.with(NumberFormats.TENTHS, unit.symbol());
    String shown = FormulaTranslation.converted(name, unit);
    page.formula(row, column, shown, page.styles().of(Look.VALUE, format));
  }

  private void beside(int row, LineTemplate line) {
    if (line.also()) {
      String format = NumberFormats.inOther(page.setting().unit());
      page.formula(
          row,
          SheetPlaces.OTHER_UNIT,
          formulas.inOtherUnit(line),
          page.styles().of(Look.VALUE, format));
    } else if (!page.printed() && page.template().listed()) {
      page.text(row, SheetPlaces.OTHER_UNIT, line.name(), page.styles().of(Look.ASIDE));
    }
  }

  private XSSFCellStyle valueStyle(LineTemplate line) {
    Look look = line.headline() ? Look.HEADLINE : Look.VALUE;
    String format =
        line.isOnTape(page.setting().unit())
            ? page.format(ValueFormat.LENGTH)
            : page.format(line.format());
    return line.format().isWords()
        ? page.styles().of(look, format, HorizontalAlignment.LEFT)
        : page.styles().of(look, format);
  }

  private static String signed(int number) {
    return number < 0 ? String.valueOf(number) : "+" + number;
  }

  private void label(int row, String label, Look look) {
    page.text(row, SheetPlaces.LABEL, page.setting().say(label), page.styles().of(look));
    page.heighten(row, LINE_HEIGHT);
    page.fit(row, label, SheetPlaces.LABEL, SheetPlaces.LABEL, look);
  }

  private void unit(int row, String name, String unit) {
    if (page.printed() || !unit.equals("-")) {
      page.unit(row, name, unit, page.styles().of(Look.UNIT));
    }
  }

  /** In the background, which has hundreds of them, a note runs on without a cell of its own. */
  private void note(int row, LineTemplate line) {
    String note = page.setting().say(line.note());
    if (page.printed()) {
      int column = line.also() ? SheetPlaces.NOTE : SheetPlaces.OTHER_UNIT;
      Optional<String> sheet = page.spokenOfInOneLine(note, column, Look.REMARK);
      page.text(row, column, note, page.styles().of(remark(sheet)));
      page.lead(row, column, sheet);
      endNote(row, column, note);
    } else {
      page.text(row, SheetPlaces.NOTE, note, page.styles().of(Look.ASIDE));
      page.lead(row, SheetPlaces.NOTE, page.spokenOf(note));
    }
  }

  /** One that leads to another sheet looks like it. */
  private static Look remark(Optional<String> sheet) {
    return sheet.isPresent() ? Look.LEADING_REMARK : Look.REMARK;
  }

  private void endNote(int row, int from, String note) {
    page.mergeToEnd(row, from, Look.REMARK);
    page.fit(row, note, from, page.lastColumn(), Look.REMARK);
  }

  /** The absolute address of an input's own cell on its sheet. */
  static String address(int row) {
    return new CellReference(row, SheetPlaces.VALUE, true, true).formatAsString();
  }
}
