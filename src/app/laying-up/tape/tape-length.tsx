import { LinkButton } from '#app/parts/action.tsx';
import { Explain } from '#app/parts/explain.tsx';
import { BigFigure, Figures } from '#app/parts/figure.tsx';
import { show, showSplit } from '#app/state/show.ts';
import type { Tape } from '#shared/record/tape.ts';
import { rollsFor, spare, type Winding, type Wound } from './tape-figures.ts';
import type { TapeJob } from './tape-job.ts';

interface Props {
  job: TapeJob;
  tape: Tape;
  winding: Winding;
  figures: Wound;
}

const rollWords = (n: number) => `${n} ${n === 1 ? 'roll' : 'rolls'}`;
const layerWords = ({ least, most }: Wound['layers']) => (least === most ? `${most}` : `${least} to ${most}`);

function Rolls({ job, tape, ready }: { job: TapeJob; tape: Tape; ready: number }) {
  if (tape.rollLength === undefined) {
    return (
      <>
        <p>How many rolls that is shows when the length of a roll stands on the shelf.</p>
        {job.tapeDoc && <LinkButton to={`/shelf/tape/${job.tapeDoc}`}>Write down its roll</LinkButton>}
      </>
    );
  }
  const { rolls, left } = rollsFor(ready, tape.rollLength);
  return (
    <p>
      <strong>{rollWords(rolls)}</strong> of {show(tape.rollLength, 'reelLength', 0)},{' '}
      {show(left, 'reelLength', 0)} left over.
    </p>
  );
}

/** The length to have ready before anything is mixed, and what it is made of. */
export function TapeLength({ job, tape, winding, figures }: Props) {
  const { ready, net, turns, advance, layers } = figures;
  const { figure, unit } = showSplit(ready, 'reelLength', 0);
  const long = (job.outside.at(-1)?.at ?? 0) - (job.outside[0]?.at ?? 0);
  const sizes = job.outside.map((o) => o.diameter);
  const [thin, thick] = [Math.min(...sizes), Math.max(...sizes)];
  const round =
    thick - thin < 1e-5
      ? show(thick, 'diameter', 1)
      : `${show(thin, 'diameter', 1)} to ${show(thick, 'diameter', 1)}`;
  return (
    <>
      <BigFigure label={`${tape.name}: have ready`} figure={figure} unit={unit} />
      <Rolls job={job} tape={tape} ready={ready} />
      <Figures
        items={[
          { value: show(turns / winding.passes, 'number', 0), label: 'turns a pass' },
          { value: layerWords(layers), label: 'layers over any point' },
        ]}
      />
      <Explain
        of="Tape to have ready"
        formula="passes × L/p × √((π D)² + p²), and a tenth more; on a taper, added up along it"
        values={[
          ['D, outside of the wet wall', round],
          ['L, length of the tube', show(long, 'length', 0)],
          ['p, along for each turn', show(advance, 'length')],
          ['Passes', `${winding.passes}`],
          ['On the tube', show(net, 'reelLength')],
          ['A tenth for ends and slips', show(net * spare, 'reelLength')],
        ]}
        source="geometry of a helix; the tenth: common practice, no source"
        sure="Good to a few percent as long as the overlap is kept. A wall that is wetter and thicker than planned takes a little more."
      />
    </>
  );
}
