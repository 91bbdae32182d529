package frillbook.press;

import frillbook.formula.FormulaText;
import frillbook.source.Position;
import frillbook.template.Form;
import frillbook.template.InputTemplate;
import frillbook.template.Phrase;
import frillbook.template.Range;
import frillbook.wording.CodeWord;
import frillbook.wording.NumberStyle;
import frillbook.wording.Sentence;
import frillbook.wording.Vocabulary;
import frillbook.wording.Wording;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes a press into a file that {@link PressReader} reads: big-endian, texts in UTF-8. */
final class PressWriter {
  private final DataOutputStream out;
  private final Map<String, Integer> names = new HashMap<>();

  private PressWriter(OutputStream out) {
    this.out = new DataOutputStream(out);
  }

  static void write(Press press, OutputStream out) throws IOException {
    PressWriter writer = new PressWriter(out);
    writer.text(press.unit().name());
    writer.form(press.form());
    writer.count(press.cells());
    for (CellSource cell : press.cells()) {
      writer.cell(cell, press.form());
    }
    writer.count(press.parts());
    for (Part part : press.parts()) {
      writer.part(part);
    }
    writer.out.flush();
  }

  private void form(Form form) throws IOException {
    count(form.inputs());
    for (InputTemplate input : form.inputs()) {
      input(input);
    }
    for (InputTemplate input : form.checkedInputs()) {
      out.writeInt(form.inputs().indexOf(input));
    }
    count(form.checks());
    for (Form.Check check : form.checks()) {
      text(check.name());
      text(check.level().name());
      wording(check.message());
      text(check.guard());
    }
    vocabulary(form.vocabulary());
    for (Phrase phrase : Phrase.values()) {
      text(form.phrases().texts().get(phrase));
    }
    count(form.headlines());
    for (Form.Headline line : form.headlines()) {
      text(line.name());
      text(line.label());
      text(line.unit());
      text(line.format().name());
      out.writeBoolean(line.also());
    }
    text(form.clientSheet());
  }

  private void vocabulary(Vocabulary vocabulary) throws IOException {
    count(vocabulary.texts().entrySet());
    for (var line : vocabulary.texts().entrySet()) {
      text(line.getKey());
      sentence(line.getValue());
    }
    count(vocabulary.columns().entrySet());
    for (var column : vocabulary.columns().entrySet()) {
      text(column.getKey());
      wording(column.getValue().wording());
      text(column.getValue().along());
    }
    count(vocabulary.words().byName().entrySet());
    for (var each : vocabulary.words().byName().entrySet()) {
      text(each.getKey());
      words(each.getValue());
    }
    count(vocabulary.flags().entrySet());
    for (var each : vocabulary.flags().entrySet()) {
      text(each.getKey());
      text(each.getValue().input());
      text(each.getValue().code());
    }
  }

  private void words(List<CodeWord> words) throws IOException {
    count(words);
    for (CodeWord each : words) {
      text(each.code());
      text(each.word());
      texts(each.was());
    }
  }

  private void texts(List<String> texts) throws IOException {
    count(texts);
    for (String text : texts) {
      text(text);
    }
  }

  private void input(InputTemplate input) throws IOException {
    text(input.name());
    texts(input.was());
    text(input.label());
    text(input.use().part());
    text(input.use().when().map(FormulaText::toString));
    out.writeBoolean(input.use().optional());
    text(input.kind().name());
    text(input.unit());
    text(input.prompt());
    range(input.inch());
    range(input.cm());
    words(input.choices());
    text(input.preset().inch());
    text(input.preset().cm());
    position(input.position());
  }

  private void range(Range range) throws IOException {
    out.writeDouble(range.preset());
    out.writeDouble(range.from());
    out.writeDouble(range.to());
  }

  private void position(Position position) throws IOException {
    text(position.file());
    out.writeInt(position.line());
    out.writeInt(position.column());
  }

  private void sentence(Sentence sentence) throws IOException {
    wording(sentence.wording());
    text(sentence.guard());
  }

  private void wording(Wording wording) throws IOException {
    count(wording.parts());
    for (Wording.Part part : wording.parts()) {
      part(part);
    }
  }

  private void part(Wording.Part part) throws IOException {
    if (part instanceof Wording.Words words) {
      out.writeByte(PressTag.WORDS);
      text(words.text());
    } else if (part instanceof Wording.Text text) {
      out.writeByte(PressTag.TEXT);
      text(text.name());
    } else if (part instanceof Wording.Number number) {
      out.writeByte(PressTag.NUMBER);
      text(number.name());
      style(number.style());
    } else if (part instanceof Wording.Measure measure) {
      out.writeByte(PressTag.MEASURE);
      measure(measure);
    } else if (part instanceof Wording.Choice choice) {
      out.writeByte(PressTag.CHOICE);
      text(choice.name());
      count(choice.cases());
      for (Wording.Case each : choice.cases()) {
        value(each.value());
        wording(each.wording());
      }
      wording(choice.other());
    }
  }

  private void measure(Wording.Measure measure) throws IOException {
    text(measure.name());
    text(measure.style().word());
  }

  private void style(NumberStyle style) throws IOException {
    out.writeByte(style.least());
    out.writeByte(style.most());
    out.writeBoolean(style.percent());
    out.writeBoolean(style.money());
  }

  private void value(Object value) throws IOException {
    out.writeBoolean(value instanceof Double);
    if (value instanceof Double number) {
      out.writeDouble(number);
    } else {
      text((String) value);
    }
  }

  private void cell(CellSource cell, Form form) throws IOException {
    if (cell instanceof CellSource.Line line) {
      out.writeByte(PressTag.LINE);
      text(line.line());
    } else if (cell instanceof CellSource.OtherUnit other) {
      out.writeByte(PressTag.OTHER_UNIT);
      text(other.line());
    } else if (cell instanceof CellSource.Entry entry) {
      out.writeByte(PressTag.ENTRY);
      name(entry.column());
      out.writeInt(entry.row());
    } else if (cell instanceof CellSource.Excerpt excerpt) {
      out.writeByte(PressTag.EXCERPT);
      name(excerpt.column());
      out.writeInt(excerpt.row());
      name(excerpt.closeUp());
    } else if (cell instanceof CellSource.Fault fault) {
      out.writeByte(PressTag.FAULT);
      out.writeInt(form.checks().indexOf(fault.check()));
    } else if (cell instanceof CellSource.FaultSentence sentence) {
      out.writeByte(PressTag.FAULT_SENTENCE);
      faultSentence(sentence, form);
    } else if (cell instanceof CellSource.InputFault fault) {
      out.writeByte(PressTag.INPUT_FAULT);
      out.writeInt(form.inputs().indexOf(fault.input()));
    } else if (cell instanceof CellSource.Remark remark) {
      out.writeByte(PressTag.REMARK);
      out.writeInt(form.inputs().indexOf(remark.input()));
      text(remark.good());
      text(remark.place());
    } else if (cell instanceof CellSource.Said said) {
      out.writeByte(PressTag.SAID);
      sentence(said.sentence());
    } else if (cell instanceof CellSource.Converted converted) {
      out.writeByte(PressTag.CONVERTED);
      text(converted.of());
      text(converted.unit().name());
    } else if (cell instanceof CellSource.LongUnit length) {
      out.writeByte(PressTag.LONG_UNIT);
      measure(length.measure());
    } else if (cell instanceof CellSource.Parts parts) {
      out.writeByte(PressTag.PARTS);
      measure(parts.measure());
    } else if (cell instanceof CellSource.Verdict verdict) {
      out.writeByte(PressTag.VERDICT);
      out.writeInt(verdict.rank());
      checks(verdict.checks(), form);
    } else if (cell instanceof CellSource.FirstVerdict first) {
      out.writeByte(PressTag.FIRST_VERDICT);
      checks(first.checks(), form);
    } else if (cell instanceof CellSource.Failing failing) {
      out.writeByte(PressTag.FAILING);
      out.writeInt(failing.rank());
      checks(failing.checks(), form);
      out.writeInt(failing.before());
    }
  }

  private void checks(List<CellSource.FaultSentence> checks, Form form) throws IOException {
    count(checks);
    for (CellSource.FaultSentence check : checks) {
      faultSentence(check, form);
    }
  }

  private void faultSentence(CellSource.FaultSentence said, Form form) throws IOException {
    out.writeInt(form.checks().indexOf(said.check()));
    text(said.place());
  }

  private void part(Part part) throws IOException {
    text(part.name());
    out.writeBoolean(part instanceof Part.Finished);
    if (part instanceof Part.Finished finished) {
      out.writeInt(finished.size());
      out.writeLong(finished.crc());
      bytes(finished.deflated());
    } else if (part instanceof Part.Slotted slotted) {
      bytes(slotted.text());
      count(slotted.slots());
      for (Slot slot : slotted.slots()) {
        out.writeByte(slot.kind().ordinal());
        out.writeInt(slot.open());
        out.writeInt(slot.close());
        out.writeInt(slot.which());
      }
    }
  }

  private void count(Collection<?> many) throws IOException {
    out.writeInt(many.size());
  }

  private void text(Optional<String> text) throws IOException {
    out.writeBoolean(text.isPresent());
    text(text.orElse(""));
  }

  /** One that comes again and again, as those of columns do: its number, the first time itself. */
  private void name(String name) throws IOException {
    int next = names.size();
    int number = names.computeIfAbsent(name, first -> next);
    out.writeInt(number);
    if (number == next) {
      text(name);
    }
  }

  private void text(String text) throws IOException {
    bytes(text.getBytes(StandardCharsets.UTF_8));
  }

  private void bytes(byte[] bytes) throws IOException {
    out.writeInt(bytes.length);
    out.write(bytes);
  }
}
