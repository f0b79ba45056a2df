import { resinShare } from '#app/laying-up/mix/recipe.ts';
import { fiberVolumeByThickness, wallsMeasured } from '#app/made/results/by-thickness.ts';
import { curedByWeight, type LaminateByWeight } from '#app/made/results/by-weight.ts';
import { leanOver, richUnder, tellDifferentStories, verdict } from '#app/made/results/verdict.ts';
import { Lines } from '#app/parts/figure.tsx';
import { Rule } from '#app/parts/rule.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { show } from '#app/state/show.ts';
import './weigh.css';
import { fiberMassFraction, resinForCloth } from '#calc';
import type { BuildState } from '#shared/record/build-state.ts';
import { formatRatio } from '#shared/units/ratio.ts';

interface RuleProps {
  share: number;
  planned: number;
  fiberDensity: number;
  resinDensity: number;
}

/** Resin in the laminate on the rule, the rich and the lean end hatched as they lie for this fiber. */
export function ResinRule({ share, planned, fiberDensity, resinDensity }: RuleProps) {
  const shareAt = (fiberVolumeFraction: number) =>
    100 * (1 - fiberMassFraction({ fiberVolumeFraction, fiberDensity, resinDensity }));
  const lean = shareAt(leanOver);
  const rich = shareAt(richUnder);
  const from = Math.floor((Math.min(lean, 100 * share) - 6) / 5) * 5;
  const to = Math.ceil((Math.max(rich, 100 * share) + 6) / 5) * 5;
  return (
    <Rule
      label={`Resin in the laminate ${show(share, 'fraction')}, planned ${show(planned, 'fraction')}`}
      from={from}
      to={to}
      value={100 * share}
      target={100 * planned}
      zones={[
        { from, to: lean, kind: 'amber' },
        { from: rich, to, kind: 'amber' },
      ]}
      unit="%"
    />
  );
}

export function plannedShare({ header }: BuildState): number {
  return resinShare(header.goal.fiberVolumeFraction, header.cloth, header.resin);
}

function plannedLines(
  state: BuildState,
  made: LaminateByWeight,
  byThickness: number | undefined,
): string[][] {
  const { header } = state;
  const share = plannedShare(state);
  // Without a plan the weight at the start is all that was planned, and the cloth weighed after cutting corrects it.
  const cloth = header.plan ? header.clothMass : made.cloth;
  const kept = resinForCloth({ clothMass: cloth, resinMassFraction: share });
  const volume = (v: number | undefined) => (v === undefined ? '–' : show(v, 'fraction', 0));
  return [
    ['Cloth', show(cloth, 'mass', 0), show(made.cloth, 'mass', 0)],
    ['Resin kept', show(kept, 'mass', 0), show(made.resin, 'mass', 0)],
    ['Film left inside', '0', made.filmLeft > 0 ? show(made.filmLeft, 'mass', 1) : '0'],
    [
      made.filmLeft > 0 ? 'Tube without it' : 'Tube',
      show(cloth + kept, 'mass', 0),
      show(made.tube, 'mass', 0),
    ],
    ['Fiber volume, by weight', volume(header.goal.fiberVolumeFraction), volume(made.fiberVolume)],
    ['by thickness', '', volume(byThickness)],
  ];
}

/** What the weighed tube is made of, against its plan, by weight and by thickness side by side. */
export function Laminate({ state }: { state: BuildState }) {
  const result = curedByWeight(state);
  if (!result.ok) {
    return result.why === 'lighterThanCloth' ? (
      <Warning kind="amber" title="Lighter than its cloth and film">
        One of the weights is a slip. Weigh again, or correct the one that is wrong.
      </Warning>
    ) : null;
  }
  const made = result.value;
  const { header } = state;
  const share = plannedShare(state);
  const word = verdict(made.fiberVolume);
  const byThickness = fiberVolumeByThickness(wallsMeasured(state));
  return (
    <>
      <h2>Resin in the laminate</h2>
      <ResinRule
        share={made.resinShare}
        planned={share}
        fiberDensity={header.cloth.fiberDensity}
        resinDensity={header.resin.curedDensity}
      />
      <p class="laminate-says">
        <strong>{formatRatio(made.resinShare)}</strong> resin to fabric, planned {formatRatio(share)}
      </p>
      {word.word === 'good' ? (
        <p>{word.says}</p>
      ) : (
        <Warning kind="amber" title={word.word === 'lean' ? 'Lean' : 'Rich'}>
          {word.says}
        </Warning>
      )}
      <Lines head={['', 'plan', `no. ${header.number}`]} rows={plannedLines(state, made, byThickness)} />
      {byThickness !== undefined && tellDifferentStories(made.fiberVolume, byThickness) && (
        <Warning kind="amber" title="Weight and thickness tell different stories">
          More than a tenth apart: voids, ridges under the tape, or a slip in weighing, measuring or counting
          plies.
        </Warning>
      )}
    </>
  );
}
