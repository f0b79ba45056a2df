import { useSignal } from '@preact/signals';
import { Lines } from '#app/parts/figure.tsx';
import { StepField, stepIn } from '#app/parts/step-field.tsx';
import { show } from '#app/state/show.ts';
import { type FlatPiece, type Offset, offsetsFromDatum } from '#calc';

const inch = 0.0254;
const same = 1e-6;

/** Offsets every so far, and at the stations, in order and each once. */
function offsetsOf({ outline, marks }: FlatPiece, every: number): Offset[] {
  const even = offsetsFromDatum({ outline, every });
  const stations = marks.map((m) => ({ x: m.edge.x, from: 0, to: m.edge.y }));
  const all = [...even, ...stations].sort((a, b) => a.x - b.x);
  return all.filter((o, i) => {
    const before = all[i - 1];
    return !before || o.x - before.x > same || Math.abs(o.to - before.to) > same;
  });
}

/** The same piece to be marked out with a rule: how far from the datum edge, every so far along it. */
export function OffsetTable({ flat }: { flat: FlatPiece }) {
  const every = useSignal(stepIn(0.2, 6 * inch));
  const offsets = offsetsOf(flat, every.value);
  return (
    <details class="more">
      <summary>Mark it out with a rule</summary>
      <StepField
        label="Every"
        quantity="length"
        value={every.value}
        step={stepIn(0.05, inch)}
        min={0.01}
        max={Math.max(0.02, flat.length)}
        onSet={(m) => (every.value = m)}
      />
      <Lines
        head={['Along the datum edge', 'Square from it']}
        rows={offsets.map((o) => [
          show(o.x, 'length'),
          o.from > same ? `${show(o.from, 'length')} to ${show(o.to, 'length')}` : show(o.to, 'length'),
        ])}
      />
      <p class="picture-words">Between these marks the edge is straight to {show(0.0002, 'length')}.</p>
    </details>
  );
}
