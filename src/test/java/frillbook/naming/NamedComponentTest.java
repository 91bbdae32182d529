package frillbook.naming;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import frillbook.naming.NamedComponent.Holds;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class NamedComponentTest {
  private record Strap(double strapLength) {}

  private record Bag(
      int pocketCount, Strap strap, @Prefixed("spare") Optional<Strap> other, List<Strap> loops) {}

  private static final Strap STRAP = new Strap(24);

  private final List<NamedComponent> components = NamedComponent.read(Bag.class);

  @Test
  void everyComponentHasItsNameAndWhatStandsBeforeThoseWithin() {
    assertEquals(
        List.of("pocket_count", "strap", "other", "loops"),
        components.stream().map(NamedComponent::name).toList());
    assertEquals(
        List.of("", "", "spare_", ""), components.stream().map(NamedComponent::prefix).toList());
  }

  @Test
  void everyComponentSaysWhatItHolds() {
    assertEquals(
        List.of(Holds.VALUE, Holds.RECORD, Holds.OPTIONAL_RECORD, Holds.ROWS),
        components.stream().map(NamedComponent::holds).toList());
    assertEquals(
        List.<Class<?>>of(int.class, Strap.class, Strap.class, Strap.class),
        components.stream().map(NamedComponent::within).toList());
  }

  @Test
  void whatIsInAComponentIsRead() {
    Bag bag = new Bag(2, STRAP, Optional.of(STRAP), List.of(STRAP, STRAP));
    assertEquals(
        List.<Object>of(2, STRAP, STRAP, List.of(STRAP, STRAP)),
        components.stream().map(component -> component.of(bag)).toList());
  }

  private record Hook(OptionalDouble width) {}

  @Test
  void aNumberThatMayBeMissingIsReadAsANumber() {
    NamedComponent width = NamedComponent.read(Hook.class).get(0);
    assertEquals(Holds.VALUE, width.holds());
    assertEquals(2.5, width.of(new Hook(OptionalDouble.of(2.5))));
    assertNull(width.of(new Hook(OptionalDouble.empty())));
  }

  private record Rack(@Prefixed("peg") @Indexed(3) List<Strap> pegs, Strap strap) {}

  @Test
  void eachOfAListOfFixedLengthHasItsNumber() {
    List<NamedComponent> rack = NamedComponent.read(Rack.class);
    assertEquals(Holds.INDEXED, rack.get(0).holds());
    assertEquals(List.of("peg_1_", "peg_2_", "peg_3_"), rack.get(0).prefixes());
    assertEquals(List.of(""), rack.get(1).prefixes());
  }

  @Test
  void whatIsNotThereIsNothing() {
    assertNull(components.get(2).of(new Bag(0, STRAP, Optional.empty(), List.of())));
    assertNull(components.get(0).of((Object) null));
  }
}
