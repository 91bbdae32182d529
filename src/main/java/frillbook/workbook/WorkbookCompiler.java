package frillbook.workbook;

import frillbook.calculation.WorkbookValues;
import frillbook.look.WorkbookSetting;
import frillbook.press.Version;
import frillbook.template.Form;
import frillbook.template.InputTemplate;
import frillbook.template.SheetTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.poi.ooxml.POIXMLProperties.CoreProperties;
import org.apache.poi.ooxml.POIXMLProperties.CustomProperties;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes a template's sheets into a workbook. */
public final class WorkbookCompiler {
  /**
   * Adds the template's sheets and names behind those that {@code target} already has. Formulas are
   * written without values; {@link WorkbookValues} calculates.
   *
   * @throws IllegalArgumentException when the setting names an input the template does not have, or
   *     the target already has one of the sheets or names; nothing is written then
   */
  public void compileInto(XSSFWorkbook target, WorkbookTemplate template, WorkbookSetting setting) {
    SheetPlaces places = new SheetPlaces(template, setting.unit());
    refuseUnknownInputs(template, setting);
    refuseTaken(target, template, places);
    if (target.getNumberOfSheets() == 0) {
      Styles.setDefaultFont(target);
    }
    // The template reader has tried every formula; trying each cell's again takes longest of all.
    boolean validates = target.getCellFormulaValidation();
    target.setCellFormulaValidation(false);
    Styles styles = new Styles(target);
    template.sheets().forEach(sheet -> target.createSheet(sheet.name()));
    writeNames(target, places);
    FormulaTranslation formulas = new FormulaTranslation(setting, Form.of(template), places);
    for (SheetTemplate sheet : template.sheets()) {
      Page page = new Page(target.getSheet(sheet.name()), sheet, styles, setting, template);
      SheetWriter.write(template, places, formulas, page);
    }
    target.setCellFormulaValidation(validates);
    setTitle(target, template.title());
    setVersion(target);
  }

  private static void setVersion(XSSFWorkbook target) {
    CustomProperties own = target.getProperties().getCustomProperties();
    if (!own.contains(Version.PROPERTY)) {
      own.addProperty(Version.PROPERTY, Version.NUMBER);
    }
  }

  private static void writeNames(XSSFWorkbook target, SheetPlaces places) {
    places
        .names()
        .forEach(
            (text, span) -> {
              Name name = target.createName();
              name.setNameName(text);
              name.setRefersToFormula(span.reference());
            });
  }

  private static void setTitle(XSSFWorkbook target, String title) {
    CoreProperties properties = target.getProperties().getCoreProperties();
    if (properties.getTitle() == null) {
      properties.setTitle(title);
    }
  }

  private static void refuseUnknownInputs(WorkbookTemplate template, WorkbookSetting setting) {
    Set<String> unknown = new TreeSet<>(setting.inputs().keySet());
    template.inputs().stream().map(InputTemplate::name).forEach(unknown::remove);
    if (!unknown.isEmpty()) {
      throw new IllegalArgumentException(
          "the template has no input named " + String.join(", ", unknown));
    }
  }

  private static void refuseTaken(
      XSSFWorkbook target, WorkbookTemplate template, SheetPlaces places) {
    List<String> taken = new ArrayList<>();
    template.sheets().stream()
        .map(SheetTemplate::name)
        .filter(name -> target.getSheet(name) != null)
        .forEach(name -> taken.add("the sheet " + name));
    places.names().keySet().stream()
        .filter(name -> !target.getNames(name).isEmpty())
        .forEach(name -> taken.add("the name " + name));
    if (!taken.isEmpty()) {
      throw new IllegalArgumentException(
          taken.stream().collect(Collectors.joining(", ", "the workbook already has ", "")));
    }
  }
}
