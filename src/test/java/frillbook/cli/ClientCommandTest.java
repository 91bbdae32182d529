package frillbook.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClientCommandTest {
  @TempDir private Path folder;

  private Typed small() {
    return Typed.made(folder, Ran.SMALL);
  }

  @Test
  void thePageIsWrittenAndNamed() throws IOException {
    Typed plan = small();
    try (XSSFWorkbook page = plan.pageWritten()) {
      assertEquals("Client", page.getSheetAt(0).getSheetName());
    }
  }

  @Test
  void theSamePlanGivesTheSameBytes() throws IOException {
    Typed plan = small();
    plan.pageWritten().close();
    byte[] first = Files.readAllBytes(plan.page());
    plan.pageWritten("--force").close();
    assertArrayEquals(first, Files.readAllBytes(plan.page()));
  }

  @Test
  void aFileThatIsThereStaysAsItIs() throws IOException {
    Typed plan = small();
    Files.writeString(plan.page(), "kept");
    assertEquals(
        Ran.refusal(
            1,
            plan.page()
                + " already exists. Name another file with -o, or replace it with --force."),
        plan.client());
    assertEquals("kept", Files.readString(plan.page()));
  }

  @Test
  void thePlanIsNeverReplacedByThePage() throws IOException {
    Typed plan = small();
    byte[] before = Files.readAllBytes(plan.plan());
    String same = folder + "/./plan.xlsx";
    assertEquals(
        Ran.refusal(1, same + " is the plan itself. Name another file for the page with -o."),
        Ran.run("client", plan.plan().toString(), "--force", "-o", same));
    assertArrayEquals(before, Files.readAllBytes(plan.plan()));
  }

  /** Through a link to it, through a link to its folder, and through its second name on disk. */
  @Test
  void thePlanIsNotReplacedUnderAnotherName() throws IOException {
    Typed plan = small();
    isKept(plan, Files.createSymbolicLink(folder.resolve("link.xlsx"), plan.plan()));
    isKept(plan, Files.createSymbolicLink(folder.resolve("way"), folder).resolve("plan.xlsx"));
    isKept(plan, Files.createLink(folder.resolve("other.xlsx"), plan.plan()));
  }

  private static void isKept(Typed plan, Path otherName) throws IOException {
    byte[] before = Files.readAllBytes(plan.plan());
    assertEquals(
        Ran.refusal(1, otherName + " is the plan itself. Name another file for the page with -o."),
        Ran.run("client", plan.plan().toString(), "--force", "-o", otherName.toString()));
    assertArrayEquals(before, Files.readAllBytes(plan.plan()));
    assertTrue(Files.isSameFile(plan.plan(), otherName));
  }

  @Test
  void aPageReachedThroughALinkIsReplacedAndTheLinkStays() throws IOException {
    Typed plan = small();
    Path old = Files.writeString(folder.resolve("old.xlsx"), "old");
    Files.createSymbolicLink(plan.page(), old);
    plan.pageWritten("--force").close();
    assertTrue(Files.isSymbolicLink(plan.page()));
    assertArrayEquals(Files.readAllBytes(plan.page()), Files.readAllBytes(old));
  }

  @Test
  void thePaperIsThatOfThePlanUnlessAnotherIsAskedFor() throws IOException {
    Typed plan = small();
    assertEquals(PrintSetup.LETTER_PAPERSIZE, paper(plan));
    assertEquals(PrintSetup.A4_PAPERSIZE, paper(plan, "--paper=a4"));
    Files.delete(plan.plan());
    Ran.runSmall("make", "--paper=a4", "-o", plan.plan().toString());
    assertEquals(PrintSetup.A4_PAPERSIZE, paper(plan));
  }

  private static short paper(Typed plan, String... args) throws IOException {
    Files.deleteIfExists(plan.page());
    try (XSSFWorkbook page = plan.pageWritten(args)) {
      return page.getSheetAt(0).getPrintSetup().getPaperSize();
    }
  }

  @Test
  void aPlanThatStopsGivesNoPage() {
    // 4/2 − 1/2 − 1 leaves half an inch for rings an inch apart.
    Typed plan = small();
    Ran.runSmall("make", "--force", "-o", plan.plan().toString(), "--input=centre_gap=1");
    assertEquals(
        Ran.refusal(
            1,
            "No ring fits between the centre gap and the edge clearance. Make one of them, or the"
                + " ring spacing, smaller."),
        plan.client());
    assertTrue(Files.notExists(plan.page()));
  }

  @Test
  void whatWantsASecondLookIsToldBesideThePage() {
    // Twice full, the free edge of ring 2 could lie 1 1/2 in out, but the frill is 3/4 in high.
    Typed plan = small();
    Ran.runSmall("make", "--force", "-o", plan.plan().toString(), "--input=frill_height=0.75");
    assertEquals(
        new Ran(
            0,
            "page for the client  " + plan.page() + "\n",
            "The frill of ring 2 reaches out 3/4 in, less than to the next ring, so the base will show"
                + " between them. Make it higher or fuller.\n"),
        plan.client());
  }

  @Test
  void withoutAPlanTheCommandIsRefused() {
    assertEquals(
        Ran.refusal(
            2,
            "PLAN is missing: A workbook that frillbook made, as a spreadsheet program last saved it.",
            "'frillbook client --help' lists what can be given."),
        Ran.run("client"));
  }
}
