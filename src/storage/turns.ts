/** Longest stretch of work between two turns of the screen, ms */
const stretch = 12;

interface Scheduler {
  yield?(): Promise<void>;
}

/** Lets the screen have its turn in the middle of long work, and ends the work when it is told to stop. */
export class Turns {
  private since = performance.now();

  constructor(private readonly stop?: AbortSignal | undefined) {}

  /** Whether the screen has waited long enough: asked once a record, so it must cost nothing. */
  due(): boolean {
    return performance.now() - this.since > stretch;
  }

  /** Throws the signal's reason when the work was stopped. */
  async give(): Promise<void> {
    this.stop?.throwIfAborted();
    const { scheduler } = globalThis as { scheduler?: Scheduler };
    if (scheduler?.yield) await scheduler.yield();
    else await new Promise((resolve) => setTimeout(resolve));
    this.stop?.throwIfAborted();
    this.since = performance.now();
  }
}
