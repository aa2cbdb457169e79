package insidelift.engine.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.advice.Advice;
import insidelift.shared.situation.Situation;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Many consultations at once on one rule base: each has the answer it has alone, and nothing of it
 * stays behind. {@code -Dconsultations=1000000} is the long run.
 */
class ConsultationsAtOnceTest {

  private static final int CONSULTATIONS = Integer.getInteger("consultations", 20_000);
  private static final int THREADS = 8;
  private static final int SITUATIONS = 400;

  /** A leaked session keeps some 20 kB; a thousandth of those of the short run would show. */
  private static final long MOST_GROWTH = 4L << 20;

  private final Advisor advisor = Advisor.load();
  private final List<Situation> situations =
      new Situations(advisor.vocabulary(), 20261125).some(SITUATIONS);
  private final List<String> alone =
      situations.stream().map(situation -> advisor.advise(situation).toString()).toList();
  private final List<Advice> outlines = situations.stream().map(advisor::outline).toList();

  @Test
  void eightThreadsGetEveryAnswerThatOneGetsAndTheHeapStaysFlat() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    try {
      assertThat(wrong(threads, 1_000, this::wording)).isZero();
      assertThat(wrong(threads, 1_000, this::outline)).isZero();
      long before = used();
      assertThat(wrong(threads, CONSULTATIONS, this::outline)).isZero();
      long after = used();
      System.out.printf(
          "%d consultations on %d threads: heap in use %d kB before, %d kB after%n",
          CONSULTATIONS, THREADS, before >> 10, after >> 10);
      assertThat(after - before).isLessThan(MOST_GROWTH);
    } finally {
      threads.shutdownNow();
    }
  }

  /** Whether the whole advice, word by word, is what one thread got. */
  private boolean wording(int which) {
    return advisor.advise(situations.get(which)).toString().equals(alone.get(which));
  }

  /** Whether what the rules conclude is what one thread got; the words are left out. */
  private boolean outline(int which) {
    return advisor.outline(situations.get(which)).equals(outlines.get(which));
  }

  /** How many of so many answers differ from those that one thread got. */
  private static int wrong(ExecutorService threads, int consultations, IntPredicate right)
      throws Exception {
    AtomicInteger next = new AtomicInteger();
    Callable<Integer> consulting =
        () -> {
          int wrong = 0;
          for (int i = next.getAndIncrement(); i < consultations; i = next.getAndIncrement()) {
            wrong += right.test(Math.floorMod(i * 7, SITUATIONS)) ? 0 : 1;
          }
          return wrong;
        };
    List<Callable<Integer>> all =
        IntStream.range(0, THREADS).<Callable<Integer>>mapToObj(thread -> consulting).toList();
    int wrong = 0;
    for (Future<Integer> found : threads.invokeAll(all)) {
      wrong += found.get();
    }
    return wrong;
  }

  /** Bytes in use after garbage was collected a few times: the least that was seen. */
  private static long used() throws InterruptedException {
    long least = Long.MAX_VALUE;
    for (int i = 0; i < 4; i++) {
      System.gc();
      Thread.sleep(50);
      Runtime runtime = Runtime.getRuntime();
      least = Math.min(least, runtime.totalMemory() - runtime.freeMemory());
    }
    return least;
  }
}
