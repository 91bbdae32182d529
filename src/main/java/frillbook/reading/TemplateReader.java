package frillbook.reading;

import frillbook.proofreading.TemplateChecks;
import frillbook.source.Mistakes;
import frillbook.source.Position;
import frillbook.source.SourceFile;
import frillbook.source.SourceText;
import frillbook.source.TemplateException;
import frillbook.source.TemplateFileException;
import frillbook.source.TemplateSource;
import frillbook.template.Phrases;
import frillbook.template.SheetTemplate;
import frillbook.template.WorkbookTemplate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Reads a template: its first file, then a file for each sheet. */
public final class TemplateReader {
  /** Ten times as many as the built-in templates have. */
  private static final int MOST_SHEETS = 250;

  private final TemplateSource source;
  private final Optional<TemplateSource> texts;
  private final List<Catalogue> catalogues = new ArrayList<>();
  private final Mistakes mistakes = new Mistakes();
  private final Extent extent = new Extent();

  private TemplateReader(TemplateSource source, Optional<TemplateSource> texts) {
    this.source = source;
    this.texts = texts;
  }

  /**
   * Reads and checks a whole template.
   *
   * @throws TemplateException with every mistake, when there is any
   */
  public static WorkbookTemplate read(TemplateSource source) {
    return new TemplateReader(source, Optional.empty()).workbook();
  }

  /**
   * Reads a template in another language.
   *
   * @param texts a file for each of the template, of the same name: what is said in place of its
   *     texts
   * @throws TemplateException with every mistake, when there is any
   */
  public static WorkbookTemplate read(TemplateSource source, TemplateSource texts) {
    return new TemplateReader(source, Optional.of(texts)).workbook();
  }

  private WorkbookTemplate workbook() {
    Position start = new Position(TemplateSource.FIRST_FILE, 1, 1);
    Optional<Block> first = block(SourceText.at(start, TemplateSource.FIRST_FILE), "workbook");
    String title = first.map(block -> block.requiredText("title")).orElse("");
    List<SourceText> named = first.map(block -> block.texts("sheets")).orElse(List.of());
    first.ifPresent(Block::done);
    List<SourceText> files = few(named);
    List<SheetTemplate> sheets = new ArrayList<>();
    files.forEach(file -> block(file, "sheet").map(SheetReader::read).ifPresent(sheets::add));
    Phrases phrases = phrases();
    WorkbookTemplate template = new WorkbookTemplate(title, phrases, sheets);
    if (sheets.size() == files.size()) {
      // Without every sheet, half the names would seem unknown.
      TemplateChecks.check(template, mistakes);
      catalogues.forEach(texts -> texts.tellUnused(mistakes));
    }
    mistakes.refuse();
    return template;
  }

  private List<SourceText> few(List<SourceText> files) {
    if (files.size() <= MOST_SHEETS) {
      return files;
    }
    mistakes.add(
        files.get(MOST_SHEETS).position(),
        files.size() + " sheets",
        "at most " + MOST_SHEETS,
        "take some out of sheets");
    return files.subList(0, MOST_SHEETS);
  }

  /** A folder that does not say them leaves them as they are built in. */
  private Phrases phrases() {
    mistakes.opening(Phrases.FILE);
    return found(source, Phrases.FILE, Phrases.FILE)
        .or(() -> TemplateSource.packaged().text(Phrases.FILE))
        .flatMap(text -> block(Phrases.FILE, text, "phrases"))
        .map(PhraseReader::read)
        .orElse(new Phrases(Map.of()));
  }

  /** The keys of the file that {@code name} names. */
  private Optional<Block> block(SourceText name, String subject) {
    mistakes.opening(name.value());
    return text(name).flatMap(text -> block(name.value(), text, subject));
  }

  private Optional<Block> block(String name, String text, String subject) {
    SourceFile file = new SourceFile(name, text);
    Catalogue said = texts.map(of -> catalogue(name, of)).orElse(Catalogue.NONE);
    Scope scope = new Scope(file, Map.of(), said, mistakes, extent, 0);
    return file.compose(mistakes).map(node -> new Block(node, scope, subject));
  }

  /** The text of a file that must be there. */
  private Optional<String> text(SourceText name) {
    try {
      Optional<String> text = source.text(name.value());
      if (text.isEmpty()) {
        mistakes.add(
            name.position(),
            "the file " + name + ", which was not found",
            "a file of that name among the templates",
            "add the file or correct the name");
      }
      return text;
    } catch (TemplateFileException e) {
      e.tell(name.position(), mistakes);
      return Optional.empty();
    }
  }

  /** The text of a file that may be missing. */
  private Optional<String> found(TemplateSource of, String name, String shown) {
    try {
      return of.text(name);
    } catch (TemplateFileException e) {
      e.tell(new Position(shown, 1, 1), mistakes);
      return Optional.empty();
    }
  }

  /** A file that is not there has no twin for any text. */
  private Catalogue catalogue(String name, TemplateSource of) {
    String shown = Catalogue.FOLDER + name;
    mistakes.opening(shown);
    SourceFile file = new SourceFile(shown, found(of, name, shown).orElse("[]"));
    Scope scope = new Scope(file, Map.of(), Catalogue.NONE, mistakes, extent, 0);
    List<Node> entries = file.compose(mistakes).map(root -> entries(root, scope)).orElse(List.of());
    Catalogue catalogue = Catalogue.read(shown, entries, scope);
    catalogues.add(catalogue);
    return catalogue;
  }

  private static List<Node> entries(Node root, Scope scope) {
    if (root instanceof SequenceNode list) {
      return list.getValue();
    }
    scope.tell(
        scope.file().position(root),
        "texts without a list",
        "a list",
        "write - text: … and says: …");
    return List.of();
  }
}
