package frillbook.press;

import java.util.List;

/** A part of the package. */
public sealed interface Part {
  /** Its name in the package, without a slash in front. */
  String name();

  /**
   * A part that is the same whatever the plan.
   *
   * @param size of its bytes before they were deflated
   * @param crc of these (ISO/IEC 21320-1)
   * @param deflated without the header of a stream of its own
   */
  record Finished(String name, int size, long crc, byte[] deflated) implements Part {}

  /**
   * A part that differs from plan to plan.
   *
   * @param text its XML, in UTF-8
   * @param slots in the order in which they stand
   */
  record Slotted(String name, byte[] text, List<Slot> slots) implements Part {
    public Slotted {
      slots = List.copyOf(slots);
    }
  }
}
