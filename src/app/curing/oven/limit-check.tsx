import { Explain } from '#app/parts/explain.tsx';
import { Lines } from '#app/parts/figure.tsx';
import { Caution } from '#app/parts/warning.tsx';
import { show } from '#app/state/show.ts';
import type { OvenLimit } from '#shared/record/oven-load.ts';
import { cutoffOf } from './oven-limits.ts';

const feels: Record<OvenLimit['sees'], string> = { air: 'air', part: 'part', element: 'element' };

const unknownSource = 'Written down before this app kept where limits come from.';

/** What everything in there bears, where it is felt, and where the figure comes from. */
export function LimitList({ limits }: { limits: readonly OvenLimit[] }) {
  if (limits.length === 0) return null;
  return (
    <section>
      <h2>What is in there is good to</h2>
      <Lines
        rows={limits.map((l) => [
          `${l.name}, felt by the ${feels[l.sees]}`,
          show(l.highest, 'temperature', 0),
        ])}
      />
      <Explain
        of="The limits"
        formula="reading − what its sensor reads too high + unevenness of the oven ≤ limit"
        values={limits.map((l) => [l.name, show(l.highest, 'temperature')])}
        source="each its own, as above"
        sure="A data sheet goes before all of these. Tape, masking and plugs feel the air and the element, release, core and resin the part."
      >
        {limits.map((l) => (
          <p key={l.name}>
            <strong>{l.name}:</strong> {l.source ?? unknownSource}
          </p>
        ))}
      </Explain>
    </section>
  );
}

export function OvenCautions({ limits }: { limits: readonly OvenLimit[] }) {
  const cutoff = cutoffOf(limits);
  return (
    <Caution>
      Cutoff of the oven, one of its own{cutoff !== undefined && `, at ${show(cutoff, 'temperature', 0)}`}: it
      guards against fire, not the tube. The limits of the tube are watched here by what you log. Before heat
      the solvent has flashed off, a smoke alarm and an extinguisher are there. Never leave it alone without
      the cutoff.
    </Caution>
  );
}
