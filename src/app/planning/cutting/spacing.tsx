import { Choice } from '#app/parts/field.tsx';
import { settings } from '#app/state/settings.ts';
import { evenDimension, spacings, unitWord } from './dimensions.ts';

/** More lines than this nobody marks, unless asked to. */
const mostLines = 14;

/** An even spacing that marks a piece in a dozen places or so, and its neighbors, m */
export function spacingsFor(length: number): { usual: number; choices: readonly number[] } {
  const all = spacings[settings.value.units];
  const found = all.findIndex((every) => length / every <= mostLines);
  const i = found < 0 ? all.length - 1 : found;
  const from = Math.min(Math.max(0, i - 1), all.length - 3);
  return { usual: all[i] ?? length, choices: all.slice(from, from + 3) };
}

interface Props {
  /** Of the longest piece, m */
  length: number;
  every: number;
  onChange: (every: number) => void;
}

/** How far apart the marks stand. */
export function Spacing({ length, every, onChange }: Props) {
  return (
    <Choice
      label={`A mark every so many ${unitWord()}`}
      value={String(every)}
      options={spacingsFor(length).choices.map((m) => ({ value: String(m), label: evenDimension(m) }))}
      onChange={(value) => onChange(Number(value))}
    />
  );
}
