import type { Reporter, TestCase, TestModule } from 'vitest/node';

/** Prints `N passed, N failed, N skipped` as the last line; a file that cannot be loaded counts as failed. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const count = { passed: 0, failed: 0, skipped: 0 };
    for (const module of modules) {
      const tests: TestCase[] = [...module.children.allTests()];
      for (const test of tests) {
        const { state } = test.result();
        count[state === 'pending' ? 'skipped' : state]++;
      }
      if (module.state() === 'failed' && !tests.some((test) => test.result().state === 'failed')) count.failed++;
    }
    // Vitest prints its own summary from the same event; this one has to come after it.
    process.once('exit', () => process.stdout.write(`\n${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped\n`));
  }
}
