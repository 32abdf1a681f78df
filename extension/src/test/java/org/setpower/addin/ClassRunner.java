package org.setpower.addin;

import static org.junit.platform.engine.discovery.DiscoverySelectors.selectClass;
import static org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder.request;

import java.io.PrintWriter;
import java.util.Arrays;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.launcher.LauncherDiscoveryRequest;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.core.LauncherFactory;
import org.junit.platform.launcher.listeners.SummaryGeneratingListener;
import org.junit.platform.launcher.listeners.TestExecutionSummary;

/** Runs test classes by name, without Maven: extension/bin/try-office. */
final class ClassRunner implements TestExecutionListener {
  private static final int LINES_OF_A_TRACE = 12;

  private ClassRunner() {}

  /** Arguments: names of classes. The status is 1 when a test fails, or none is found. */
  public static void main(String[] arguments) {
    LauncherDiscoveryRequest request =
        request()
            .selectors(Arrays.stream(arguments).map(name -> selectClass(name)).toList())
            .build();
    SummaryGeneratingListener listener = new SummaryGeneratingListener();
    LauncherFactory.create().execute(request, listener, new ClassRunner());
    TestExecutionSummary summary = listener.getSummary();
    summary.printFailuresTo(new PrintWriter(System.out), LINES_OF_A_TRACE);
    long failed = summary.getTotalFailureCount();
    System.out.printf(
        "%d passed, %d failed, %d skipped%n",
        summary.getTestsSucceededCount(),
        failed,
        summary.getTestsSkippedCount() + summary.getTestsAbortedCount());
    System.exit(failed == 0 && summary.getTestsFoundCount() > 0 ? 0 : 1);
  }

  @Override
  public void executionFinished(TestIdentifier test, TestExecutionResult result) {
    if (test.isTest()) {
      System.out.println("  " + result.getStatus() + "  " + test.getDisplayName());
    }
  }
}
