import { Screen } from '#app/parts/screen.tsx';

/** What is on the bench now, and what to do next. */
export function BenchScreen() {
  return <Screen title="Bench" />;
}
