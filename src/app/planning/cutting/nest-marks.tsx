import { Lines } from '#app/parts/figure.tsx';
import { bareDimension, unitWord } from './dimensions.ts';
import type { PlacedCut, RollMark } from './marks-on-roll.ts';

const edgeWords = { datum: 'Datum edge', free: 'Free edge' } as const;

const rowOf = ({ edge, at, along, across }: RollMark, i: number) => [
  edge === 'corner' ? `Corner ${i + 1}` : `${edgeWords[edge]} at ${bareDimension(at)}`,
  bareDimension(along),
  bareDimension(across),
];

function title({ cut, placement }: PlacedCut, tubes: number): string {
  const strip = cut.id === cut.of.id ? '' : ', one strip of it';
  const tube = tubes > 1 ? `, tube ${placement.copy + 1}` : '';
  return `${cut.label}  ${cut.of.name}${strip}${tube}${placement.flipped ? ', turned end for end' : ''}`;
}

/** What to measure for every mark: along the roll from its cut end, and across it from the left selvage. */
export function NestMarks({ placed, tubes }: { placed: readonly PlacedCut[]; tubes: number }) {
  return (
    <details class="more">
      <summary>Every mark, along and across</summary>
      <p class="quiet">
        Stand at the cut end, inside face up. Along is from the cut end, across from the selvage on your left,
        in {unitWord()}.
      </p>
      {placed.map((one) => (
        <section key={`${one.placement.id} ${one.placement.copy}`} class="nest-marks">
          <h3>{title(one, tubes)}</h3>
          <Lines head={['', 'along', 'across']} rows={one.marks.map(rowOf)} />
        </section>
      ))}
    </details>
  );
}
