import { Secondary } from '#app/parts/action.tsx';
import { QuantityField } from '#app/parts/field.tsx';
import { BigFigure, Figures } from '#app/parts/figure.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import type { Unplaced } from '#calc';
import { formatNumber } from '#shared/units/format.ts';
import { unitFor } from '#shared/units/quantity.ts';
import type { ClothGroup } from './cloth-groups.ts';
import type { CutPiece } from './cut-pieces.ts';
import { type CuttingDraft, rollInput, setSpliced } from './cutting-draft.ts';
import { bareDimension, dimension, unitWord } from './dimensions.ts';
import { cutOf } from './lay-out.ts';
import { placeCut } from './marks-on-roll.ts';
import { NestMarks } from './nest-marks.tsx';
import { NestPicture } from './nest-picture.tsx';
import { type Laid, useLaidOut } from './use-laid-out.ts';

interface WideProps {
  piece: CutPiece;
  unplaced: Unplaced;
  draft: CuttingDraft;
}

/** A piece that is wider than the roll: how much, and where it could be spliced. Nothing is cut smaller by itself. */
function TooWide({ piece, unplaced, draft }: WideProps) {
  const { across, room, splice } = unplaced;
  const isSpliced = draft.spliced.value.has(piece.id);
  const strips = splice.at.length + 1;
  const places = splice.at.map(bareDimension).join(', ');
  return (
    <>
      <Warning
        kind="amber"
        title={
          isSpliced ? `${piece.name}: spliced of ${strips} strips` : `${piece.name} does not fit on this roll`
        }
      >
        It lies {dimension(across)} across and the roll has {dimension(room)} to cut from. A splice: cut along
        the warp at {places} {unitWord()} from its lowest point, each strip lapping the one before by{' '}
        {dimension(splice.overlap)}. A lap is a ply more along its line; keep it off the place of the load.
      </Warning>
      <Secondary onPress={() => setSpliced(draft, piece.id, !isSpliced)}>
        {isSpliced ? `Leave ${piece.name} whole` : `Splice ${piece.name} of ${strips} strips`}
      </Secondary>
    </>
  );
}

function figuresOf(group: ClothGroup, { out, settings: { rollWidth } }: Laid) {
  const { placements, length, share } = out.nest;
  const { price } = group.cloth;
  return [
    { value: show(share, 'fraction', 0), label: 'of it used' },
    { value: String(placements.length), label: placements.length === 1 ? 'piece' : 'pieces' },
    { value: show(length * rollWidth, 'area'), label: 'off the roll' },
    ...(price === undefined
      ? []
      : [{ value: formatNumber(length * rollWidth * price, 2), label: 'its cost' }]),
  ];
}

/** One cloth: how much of it to take off the roll, and where each piece lies on it. */
export function ClothSection({ group, draft }: { group: ClothGroup; draft: CuttingDraft }) {
  const laying = useLaidOut(group, draft);
  const laid = laying.laid.value;
  const problem = laying.problem.value;
  const roll = rollInput(draft, group.doc, group.cloth);
  const nest = laid?.out.nest;
  const placed = laid
    ? laid.out.nest.placements.flatMap((p) => {
        const cut = cutOf(laid.out, p);
        return cut ? placeCut(cut, p) : [];
      })
    : [];
  return (
    <section class="cloth-section" aria-label={group.cloth.name}>
      <h2>{group.cloth.name}</h2>
      {nest && nest.length > 0 && (
        <BigFigure
          figure={bareDimension(nest.length)}
          unit={unitFor('length', settings.value.units)}
          label="Cloth off the roll"
        />
      )}
      <QuantityField
        label="Width of the roll"
        input={roll}
        hint={
          group.cloth.rollWidth === undefined ? 'The shelf does not say: measure it' : 'Selvage to selvage'
        }
      />
      {problem && <Warning kind="amber" title={problem.says} announce />}
      {laying.busy.value && <p class="quiet">Laying out…</p>}
      {laid?.out.tooWide.map(({ piece, unplaced }) => (
        <TooWide key={piece.id} piece={piece} unplaced={unplaced} draft={draft} />
      ))}
      {laid && nest && nest.length > 0 && (
        <>
          <Figures items={figuresOf(group, laid)} />
          <NestPicture
            placed={placed}
            rollWidth={laid.settings.rollWidth}
            selvage={laid.settings.selvage}
            length={nest.length}
            label={`${placed.length} pieces on the roll, ${dimension(nest.length)} long`}
          />
          <NestMarks placed={placed} tubes={laid.settings.tubes} />
        </>
      )}
    </section>
  );
}
