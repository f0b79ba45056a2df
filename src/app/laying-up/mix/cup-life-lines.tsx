import { Ask } from '#app/parts/ask.tsx';
import { Explain } from '#app/parts/explain.tsx';
import { Caution, Warning } from '#app/parts/warning.tsx';
import { show } from '#app/state/show.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { formatNumber } from '#shared/units/format.ts';
import { formatDuration } from '#shared/units/time.ts';
import { heatAdvice, heatWords, shopWords } from './cup-heat-words.ts';
import type { CupLife } from './cup-life.ts';
import { lifeEnergy } from './resin-energy.ts';

interface Props {
  resin: ResinSystem;
  life: CupLife;
}

const endWords = {
  gel: 'gel, of which 0.65 can be worked',
  peakExotherm: 'peak exotherm, of which 0.65 can be worked',
  viscosityDoubled: 'viscosity doubled',
};

/** Where the life of a cup comes from. */
export function ExplainLife({ resin, life }: Props) {
  const { mass, resin: warm, air, energy } = life.basis;
  const { potLife } = resin;
  const { points } = lifeEnergy(resin);
  return (
    <Explain
      of="Pot life now"
      formula="dT/dt = (H/c) dα/dt − (U A/m c)(T − shop)"
      values={[
        ['Data sheet', `${formatDuration(potLife.time)}, ${show(potLife.mass, 'mass', 0)}`],
        ['at', show(potLife.temperature, 'temperature', 0)],
        ['to', endWords[potLife.ends]],
        ['This cup', show(mass, 'mass', 0)],
        ['Resin, shop', `${show(warm, 'temperature', 0)}, ${show(air, 'temperature', 0)}`],
        [
          'Activation energy',
          `${formatNumber(energy / 1000, 0)} kJ/mol${points < 2 ? ', assumed' : `, ${points} points`}`,
        ],
        ['Can be worked', formatDuration(life.usable)],
      ]}
      source="Horie and others 1970, from memory, for the reaction; common practice, no source, for the cup"
      sure="One temperature for the whole cup, fitted to the data sheet’s own point: good for which cup lasts longer and by about how much, not for degrees. The sample you keep knows better."
    />
  );
}

/** How long such a cup can be worked, how it ends when it stands, and what to do about it. */
export function CupLifeLines({ resin, life }: Props) {
  const { mass, resin: warm, assumed } = life.basis;
  const advice = heatAdvice(resin, life);
  const shop = shopWords(life);
  const title = `A cup of ${show(mass, 'mass', 0)} ${heatWords[life.heat]}`;
  return (
    <>
      <p>
        <strong>{formatDuration(60 * Math.max(1, Math.round(life.usable / 60)))}</strong> to work a cup of{' '}
        {show(mass, 'mass', 0)} at {show(warm, 'temperature', 0)}
        {assumed ? ', which is the data sheet’s: no temperature was entered' : ''}.
        {life.heat === 'staysCool' && ' It stays cool.'}
        {life.bySheetAlone && ' By the data sheet and temperature alone: its pot life fits no cup.'}
      </p>
      {shop && <Caution>{shop}</Caution>}
      {advice && life.heat === 'runsAway' && (
        <Warning kind="stop" title={title}>
          {advice}
        </Warning>
      )}
      {advice && life.heat === 'getsHot' && (
        <Warning kind="amber" title={title}>
          {advice}
        </Warning>
      )}
      <ExplainLife resin={resin} life={life} />
      <Ask term="pot-life" asks="What is pot life?" line />
    </>
  );
}
