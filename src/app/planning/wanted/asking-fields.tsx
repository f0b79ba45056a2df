import type { Signal } from '@preact/signals';
import { Choice } from '#app/parts/field.tsx';
import { StepField } from '#app/parts/step-field.tsx';
import type { Tube } from '#app/planning/carry/tube-of-plan.ts';
import { pieceName } from '#app/planning/wall/wall-words.ts';
import { type Asking, variable } from './wanted-input.ts';

interface Props {
  tube: Tube;
  asking: Signal<Asking>;
  wrong: Signal<ReadonlySet<string>>;
}

function Instead({ tube, asking }: Pick<Props, 'tube' | 'asking'>) {
  const { piece, instead } = asking.value;
  const others = tube.wall.pieces.flatMap((p, i) => (p.kind === 'cloth' && i !== piece ? [i] : []));
  if (others.length === 0) return null;
  const toggle = (i: number) => {
    const next = instead.includes(i) ? instead.filter((k) => k !== i) : [...instead, i];
    asking.value = { ...asking.value, instead: next };
  };
  return (
    <fieldset class="choice">
      <legend>In the place of</legend>
      <div class="choice-row">
        {others.map((i) => (
          <button key={i} type="button" aria-pressed={instead.includes(i)} onClick={() => toggle(i)}>
            {pieceName(tube.wall.pieces[i], i)}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

/** Which piece gets other plies, what gives way to it, and between which numbers. */
export function AskingFields({ tube, asking, wrong }: Props) {
  const now = asking.value;
  const whole = variable(tube);
  const plies = { quantity: 'count', step: 1, wrong } as const;
  return (
    <>
      {whole.length > 1 && (
        <Choice
          label="Plies of"
          value={String(now.piece)}
          options={whole.map((i) => ({ value: String(i), label: pieceName(tube.wall.pieces[i], i) }))}
          onChange={(i) => {
            const piece = Number(i);
            asking.value = { ...now, piece, instead: now.instead.filter((k) => k !== piece) };
          }}
        />
      )}
      <Instead tube={tube} asking={asking} />
      <StepField
        {...plies}
        label="No fewer than"
        value={now.least}
        min={1}
        max={now.most}
        hint="one alone only butts at its seam"
        onSet={(least) => (asking.value = { ...now, least: Math.round(least) })}
      />
      <StepField
        {...plies}
        label="No more than"
        value={now.most}
        min={now.least}
        max={60}
        onSet={(most) => (asking.value = { ...now, most: Math.round(most) })}
      />
    </>
  );
}
