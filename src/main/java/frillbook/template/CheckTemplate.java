package frillbook.template;

import frillbook.formula.FormulaText;
import frillbook.source.Position;
import java.util.Optional;

/**
 * A condition that should hold, and what to say when it does not.
 *
 * @param name in the workbook: the cell that is 0 when all is well, else the level's code
 * @param formula TRUE when all is well
 * @param message what to say when it is not, in words that may follow the plan
 * @param change name of the input to change first, or of the line to mend; empty where the template
 *     names none
 * @param guard name of the line that must be 1 for the check to be made; empty for always
 */
public record CheckTemplate(
    String name,
    String label,
    CheckLevel level,
    FormulaText formula,
    WordingText message,
    Optional<String> change,
    Optional<String> guard,
    Position position)
    implements RowTemplate {}
