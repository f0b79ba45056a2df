import { hottestOf } from '#app/curing/oven/oven-schedule.ts';
import { Explain } from '#app/parts/explain.tsx';
import { Figures } from '#app/parts/figure.tsx';
import { Caution } from '#app/parts/warning.tsx';
import { show } from '#app/state/show.ts';
import type { Tape } from '#shared/record/tape.ts';
import { type Pull, pullAt, type Squeeze, squeezes, type Wound } from './tape-figures.ts';
import type { TapeJob } from './tape-job.ts';

interface Props {
  job: TapeJob;
  tape: Tape;
  layers: Wound['layers'];
}

type Hot = Exclude<Pull, { by: 'winding' }>;

/** Less than a quarter of what it can pull. */
function hardly({ shrinkForce = [] }: Tape, { most }: Hot): boolean {
  return most < Math.max(0, ...shrinkForce.map((p) => p.force)) / 4;
}

const range = (least: number, most: number, says: (n: number) => string) =>
  most - least <= 1e-3 * most ? says(most) : `${says(least).replace(/\s\D+$/, '')} to ${says(most)}`;
const pressure = ({ least, most }: Squeeze) => range(least, most, (n) => show(n, 'pressure'));

function where(places: readonly Squeeze[], i: number): string {
  const diameter = show(places[i]?.diameter ?? 0, 'diameter', 1);
  if (places.length === 1) return `on a tube of ${diameter}`;
  return i === 0 ? `at the thin end, ${diameter}` : `at the thick end, ${diameter}`;
}

function Pressed({
  places,
  pull,
  layers,
  tape,
  peak,
}: { places: Squeeze[]; pull: Hot; peak: number } & Omit<Props, 'job'>) {
  const pulls = range(pull.least, pull.most, (n) => show(n, 'pull'));
  return (
    <>
      <Figures items={places.map((p, i) => ({ value: pressure(p), label: where(places, i) }))} />
      <p>
        In air of {show(peak, 'temperature', 0)}, the hottest of this cure
        {hardly(tape, pull)
          ? ', tape has hardly begun to shrink: most of the squeeze is your winding. '
          : '. '}
        {pull.by === 'typical' &&
          'What such tapes usually pull: yours may do half or twice that. Measure it and write it on the shelf.'}
      </p>
      <Explain
        of="Pressure of the tape"
        formula="layers × pull / radius"
        values={[
          ['Pull for each width', pulls],
          ['Layers', layers.least === layers.most ? `${layers.most}` : `${layers.least} to ${layers.most}`],
          ...places.map((p, i) => [`Radius ${where(places, i)}`, show(p.diameter / 2, 'length')] as const),
          ['Begins to shrink at', show(tape.shrinksFrom, 'temperature', 0)],
        ]}
        source={
          pull.by === 'measured'
            ? 'thin-wall hoop, Gere and Timoshenko; pull: your own figures of this tape'
            : 'thin-wall hoop, Gere and Timoshenko; pull: 0.2 to 1 N for each mm of width, common practice, no source'
        }
        sure="At most this: every layer counts as pulling alone, and what is squeezed out slackens it. A thin tube is squeezed harder than a fat one."
      />
    </>
  );
}

/** How hard it squeezes at the hottest of the cure, where the tube is thin and where it is thick. */
export function SqueezeSection({ job, tape, layers }: Props) {
  const { schedule, outside } = job;
  if (!schedule) return null;
  const peak = hottestOf(schedule);
  const pull = pullAt(tape, peak);
  return (
    <section>
      <h2>How hard it squeezes</h2>
      {pull.by === 'winding' ? (
        <p>
          <strong>By winding tension only.</strong> This cure goes to {show(peak, 'temperature', 0)}, and the
          tape begins to shrink at {show(tape.shrinksFrom, 'temperature', 0)}. Wind it tight: what your hands
          give it is all it has.
        </p>
      ) : (
        <Pressed
          places={squeezes(outside, pull, layers)}
          pull={pull}
          layers={layers}
          tape={tape}
          peak={peak}
        />
      )}
      {job.hasCore && (
        <Caution>
          There is core in this wall: hot core softens, and tape crushes it. Try a short length first, at this
          heat.
        </Caution>
      )}
    </section>
  );
}
