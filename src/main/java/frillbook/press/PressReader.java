package frillbook.press;

import frillbook.measure.Customary;
import frillbook.measure.LengthUnit;
import frillbook.source.Position;
import frillbook.template.CheckLevel;
import frillbook.template.Form;
import frillbook.template.InputKind;
import frillbook.template.InputTemplate;
import frillbook.template.InputUse;
import frillbook.template.Phrase;
import frillbook.template.Phrases;
import frillbook.template.PresetWords;
import frillbook.template.Range;
import frillbook.template.ValueFormat;
import frillbook.wording.CodeFlag;
import frillbook.wording.CodeWord;
import frillbook.wording.CodeWords;
import frillbook.wording.MeasureStyle;
import frillbook.wording.NumberStyle;
import frillbook.wording.RowWording;
import frillbook.wording.Sentence;
import frillbook.wording.Vocabulary;
import frillbook.wording.Wording;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads what {@link PressWriter} has written. */
final class PressReader {
  private static final Slot.Kind[] SLOT_KINDS = Slot.Kind.values();

  private final ByteBuffer in;

  private final List<String> names = new ArrayList<>();

  private PressReader(byte[] file) {
    this.in = ByteBuffer.wrap(file);
  }

  static Press read(byte[] file) {
    return new PressReader(file).press();
  }

  private Press press() {
    LengthUnit unit = LengthUnit.valueOf(text());
    Form form = form();
    int cells = in.getInt();
    List<CellSource> sources = new ArrayList<>(cells);
    for (int index = 0; index < cells; index++) {
      sources.add(cell(form));
    }
    int count = in.getInt();
    List<Part> parts = new ArrayList<>(count);
    for (int index = 0; index < count; index++) {
      parts.add(part());
    }
    return new Press(unit, form, sources, parts);
  }

  private Form form() {
    List<InputTemplate> inputs = new ArrayList<>();
    for (int left = in.getInt(); left > 0; left--) {
      inputs.add(input());
    }
    List<InputTemplate> checked = new ArrayList<>();
    for (int index = 0; index < inputs.size(); index++) {
      checked.add(inputs.get(in.getInt()));
    }
    List<Form.Check> checks = new ArrayList<>();
    for (int left = in.getInt(); left > 0; left--) {
      checks.add(new Form.Check(text(), CheckLevel.valueOf(text()), wording(), textIfAny()));
    }
    Vocabulary vocabulary = vocabulary();
    Map<Phrase, String> phrases = new EnumMap<>(Phrase.class);
    for (Phrase phrase : Phrase.values()) {
      phrases.put(phrase, text());
    }
    List<Form.Headline> headlines = new ArrayList<>();
    for (int left = in.getInt(); left > 0; left--) {
      headlines.add(
          new Form.Headline(text(), text(), text(), ValueFormat.valueOf(text()), truth()));
    }
    return new Form(
        inputs, checked, checks, vocabulary, new Phrases(phrases), headlines, textIfAny());
  }

  private Vocabulary vocabulary() {
    Map<String, Sentence> texts = new LinkedHashMap<>();
    for (int left = in.getInt(); left > 0; left--) {
      texts.put(text(), sentence());
    }
    Map<String, RowWording> columns = new LinkedHashMap<>();
    for (int left = in.getInt(); left > 0; left--) {
      columns.put(text(), new RowWording(wording(), text()));
    }
    Map<String, List<CodeWord>> words = new LinkedHashMap<>();
    for (int left = in.getInt(); left > 0; left--) {
      words.put(text(), words());
    }
    Map<String, CodeFlag> flags = new LinkedHashMap<>();
    for (int left = in.getInt(); left > 0; left--) {
      flags.put(text(), new CodeFlag(text(), text()));
    }
    return new Vocabulary(texts, columns, new CodeWords(words), flags);
  }

  private List<CodeWord> words() {
    List<CodeWord> words = new ArrayList<>();
    for (int left = in.getInt(); left > 0; left--) {
      words.add(new CodeWord(text(), text(), texts()));
    }
    return words;
  }

  private InputTemplate input() {
    String name = text();
    List<String> was = texts();
    String label = text();
    InputUse use = InputUse.of(text(), textIfAny(), truth());
    InputKind kind = InputKind.valueOf(text());
    String unit = text();
    String prompt = text();
    Range inch = range();
    Range cm = range();
    List<CodeWord> choices = words();
    return new InputTemplate(
        name,
        was,
        label,
        use,
        kind,
        unit,
        prompt,
        inch,
        cm,
        choices,
        new PresetWords(text(), text()),
        position());
  }

  private List<String> texts() {
    List<String> texts = new ArrayList<>();
    for (int left = in.getInt(); left > 0; left--) {
      texts.add(text());
    }
    return texts;
  }

  private Range range() {
    return new Range(in.getDouble(), in.getDouble(), in.getDouble());
  }

  private Position position() {
    return new Position(text(), in.getInt(), in.getInt());
  }

  private Sentence sentence() {
    return new Sentence(wording(), textIfAny());
  }

  private Wording wording() {
    List<Wording.Part> parts = new ArrayList<>();
    for (int left = in.getInt(); left > 0; left--) {
      parts.add(wordingPart());
    }
    return new Wording(parts);
  }

  private Wording.Part wordingPart() {
    int tag = in.get();
    return switch (tag) {
      case PressTag.WORDS -> new Wording.Words(text());
      case PressTag.TEXT -> new Wording.Text(text());
      case PressTag.NUMBER ->
          new Wording.Number(text(), new NumberStyle(in.get(), in.get(), truth(), truth()));
      case PressTag.MEASURE -> measure();
      case PressTag.CHOICE -> new Wording.Choice(text(), cases(), wording());
      default -> throw unknown(tag);
    };
  }

  private Wording.Measure measure() {
    return new Wording.Measure(text(), MeasureStyle.of(text()).orElseThrow());
  }

  private List<Wording.Case> cases() {
    List<Wording.Case> cases = new ArrayList<>();
    for (int left = in.getInt(); left > 0; left--) {
      Object value = truth() ? (Object) in.getDouble() : text();
      cases.add(new Wording.Case(value, wording()));
    }
    return cases;
  }

  private CellSource cell(Form form) {
    int tag = in.get();
    return switch (tag) {
      case PressTag.LINE -> new CellSource.Line(text());
      case PressTag.OTHER_UNIT -> new CellSource.OtherUnit(text());
      case PressTag.ENTRY -> new CellSource.Entry(name(), in.getInt());
      case PressTag.EXCERPT -> new CellSource.Excerpt(name(), in.getInt(), name());
      case PressTag.FAULT -> new CellSource.Fault(form.checks().get(in.getInt()));
      case PressTag.FAULT_SENTENCE -> faultSentence(form);
      case PressTag.INPUT_FAULT -> new CellSource.InputFault(form.inputs().get(in.getInt()));
      case PressTag.REMARK -> new CellSource.Remark(form.inputs().get(in.getInt()), text(), text());
      case PressTag.SAID -> new CellSource.Said(sentence());
      case PressTag.VERDICT -> new CellSource.Verdict(in.getInt(), checks(form));
      case PressTag.FIRST_VERDICT -> new CellSource.FirstVerdict(checks(form));
      case PressTag.FAILING -> new CellSource.Failing(in.getInt(), checks(form), in.getInt());
      case PressTag.CONVERTED -> new CellSource.Converted(text(), Customary.valueOf(text()));
      case PressTag.PARTS -> new CellSource.Parts(measure());
      case PressTag.LONG_UNIT -> new CellSource.LongUnit(measure());
      default -> throw unknown(tag);
    };
  }

  private List<CellSource.FaultSentence> checks(Form form) {
    List<CellSource.FaultSentence> checks = new ArrayList<>();
    for (int left = in.getInt(); left > 0; left--) {
      checks.add(faultSentence(form));
    }
    return checks;
  }

  private CellSource.FaultSentence faultSentence(Form form) {
    return new CellSource.FaultSentence(form.checks().get(in.getInt()), text());
  }

  private Part part() {
    String name = text();
    if (truth()) {
      return new Part.Finished(name, in.getInt(), in.getLong(), bytes());
    }
    byte[] text = bytes();
    int count = in.getInt();
    List<Slot> slots = new ArrayList<>(count);
    for (int index = 0; index < count; index++) {
      slots.add(new Slot(SLOT_KINDS[in.get()], in.getInt(), in.getInt(), in.getInt()));
    }
    return new Part.Slotted(name, text, slots);
  }

  private static IllegalStateException unknown(int tag) {
    return new IllegalStateException("a press cannot hold " + tag);
  }

  private boolean truth() {
    return in.get() != 0;
  }

  private Optional<String> textIfAny() {
    boolean there = truth();
    String text = text();
    return there ? Optional.of(text) : Optional.empty();
  }

  private String name() {
    int number = in.getInt();
    if (number == names.size()) {
      names.add(text());
    }
    return names.get(number);
  }

  private String text() {
    int length = in.getInt();
    String text = new String(in.array(), in.position(), length, StandardCharsets.UTF_8);
    in.position(in.position() + length);
    return text;
  }

  private byte[] bytes() {
    byte[] bytes = new byte[in.getInt()];
    in.get(bytes);
    return bytes;
  }
}
