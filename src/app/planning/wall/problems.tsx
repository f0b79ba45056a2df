import { Warning } from '#app/parts/warning.tsx';
import type { WallCaution } from './wall-cautions.ts';
import type { WallProblem } from './wall-words.ts';

/** What stops the wall from being rolled; the pictures below are of the last that could be. */
export function Problem({ problem }: { problem: WallProblem | undefined }) {
  if (!problem) return null;
  return (
    <Warning kind="stop" title="This cannot be rolled" announce>
      {problem.says} The pictures still show the last wall that could be.
    </Warning>
  );
}

/** What to look at before cutting. */
export function Cautions({ cautions }: { cautions: readonly WallCaution[] }) {
  return (
    <>
      {cautions.map((c) => (
        <Warning key={c.title + c.says} kind={c.stops ? 'stop' : 'amber'} title={c.title}>
          {c.says}
        </Warning>
      ))}
    </>
  );
}
