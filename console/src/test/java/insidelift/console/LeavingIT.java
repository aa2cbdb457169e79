package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.Visitor.Point;
import java.nio.file.Path;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every key that leaves, at every point of the consultation. */
@Execution(ExecutionMode.CONCURRENT)
class LeavingIT {

  /** The points, each with the quickest way there. */
  enum State {
    GREETING,
    RESUME_OFFER,
    SAFETY_SCREEN,
    CHOICE,
    NUMBER,
    REVIEW,
    ADVICE;

    /** A consultation that waits at this point. */
    Paddock reached(Path data) {
      if (this != GREETING && this != SAFETY_SCREEN) {
        Kept.in(data, this == CHOICE ? Kept.BEGUN : Kept.ALL_BUT_THE_SETTINGS);
      }
      Paddock paddock = Paddock.in(data).start();
      Visitor visitor = new Visitor(paddock);
      switch (this) {
        case GREETING -> visitor.goOnTo(Point.BEGIN);
        case RESUME_OFFER -> visitor.goOnTo(Point.RESUME);
        case SAFETY_SCREEN -> visitor.goOnTo(Point.SAFETY);
        case CHOICE -> visitor.goOnTo(Point.QUESTION);
        case NUMBER -> visitor.goOnTo("camber left");
        case REVIEW -> visitor.goOnTo(Point.REVIEW);
        case ADVICE -> visitor.goOnTo(Point.ANSWER);
      }
      return paddock;
    }
  }

  @TempDir private Path data;

  @ParameterizedTest
  @EnumSource
  void controlCLeavesAtOnceWithOneLineAndExit130(State state) {
    try (Paddock paddock = state.reached(data)) {
      paddock.type(Paddock.CTRL_C);
      assertThat(paddock.exit()).isEqualTo(130);
      assertLeftWithOneLine(paddock);
    }
  }

  @ParameterizedTest
  @EnumSource
  void controlDLeavesWithOneLineAndExit0(State state) {
    try (Paddock paddock = state.reached(data)) {
      paddock.type(Paddock.CTRL_D);
      assertThat(paddock.exit()).isZero();
      assertLeftWithOneLine(paddock);
    }
  }

  @RepeatedTest(8)
  void controlCLeavesWithOneLineBeforeTheTerminalIsOpenToo() {
    try (Paddock paddock = Paddock.in(data).start()) {
      paddock.waitForTheFirst("Insidelift").type(Paddock.CTRL_C);
      assertThat(paddock.exit()).isEqualTo(130);
      assertLeftWithOneLine(paddock);
    }
  }

  private static void assertLeftWithOneLine(Paddock paddock) {
    assertThat(paddock.all()).last().isEqualTo("Left. Your answers are kept.");
    assertThat(paddock.all()).filteredOn(line -> line.startsWith("Left.")).hasSize(1);
    assertThat(paddock.raw()).doesNotContain("Exception");
  }
}
