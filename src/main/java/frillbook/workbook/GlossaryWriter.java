package frillbook.workbook;

import frillbook.look.Look;
import frillbook.look.WorkbookSetting;
import frillbook.template.Phrase;
import frillbook.template.UnitText;
import java.util.List;

/** Writes the list of all names. */
final class GlossaryWriter {
  private static final List<Phrase> HEAD =
      List.of(
          Phrase.LABEL_HEAD,
          Phrase.NAME_HEAD,
          Phrase.UNIT_HEAD,
          Phrase.MEANING_HEAD,
          Phrase.SHEET_HEAD);

  private final Page page;

  GlossaryWriter(Page page) {
    this.page = page;
  }

  void glossary(int row, List<Glossary.Entry> entries) {
    for (int column = 0; column < HEAD.size(); column++) {
      String head = page.phrases().say(HEAD.get(column));
      page.text(row, column, head, page.styles().of(Look.WORD_HEADER));
    }
    int next = row + 1;
    for (Glossary.Entry entry : entries) {
      entry(next++, entry);
    }
  }

  private void entry(int row, Glossary.Entry entry) {
    WorkbookSetting setting = page.setting();
    column(row, 0, setting.say(entry.label()), Look.SENTENCE);
    column(row, 1, entry.name(), Look.SENTENCE);
    unit(row, entry.unit());
    column(row, 3, setting.say(entry.meaning()), Look.REMARK);
    column(row, 4, entry.sheet(), Look.REMARK);
  }

  private void unit(int row, String unit) {
    String usual = UnitText.of(unit).say(name -> "EUR", page.setting().unit());
    page.unit(row, SheetPlaces.GLOSSARY_UNIT, unit, page.styles().of(Look.REMARK));
    page.fit(row, usual, SheetPlaces.GLOSSARY_UNIT, SheetPlaces.GLOSSARY_UNIT, Look.REMARK);
  }

  private void column(int row, int column, String text, Look look) {
    page.text(row, column, text, page.styles().of(look));
    page.fit(row, text, column, column, look);
  }
}
