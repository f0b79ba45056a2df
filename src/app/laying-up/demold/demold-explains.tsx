import { Explain } from '#app/parts/explain.tsx';
import { show } from '#app/state/show.ts';
import { expansionSource } from '#shared/reference/mandrel-expansions.ts';
import { clearanceAt, type Fit } from './demold-fit.ts';
import { materialWords, setWords, showGrowth, showRoom, wallWords } from './demold-words.ts';

const lamina = 'ply figures typical of wet hand layup at 45 % fiber, not for design';
const source = `${expansionSource}; classical lamination theory, Kaw; ${lamina}; shrinkage: common practice, no source`;
const sure =
  'Good to about 10 °C (20 °F) of the temperature it comes loose at: cure shrinkage and the ply figures are typical, and a dented or waxed mandrel has its own mind.';

function shared(fit: Fit): (readonly [string, string])[] {
  return [
    [`am, mandrel of ${materialWords[fit.material]}`, showGrowth(fit.mandrelExpansion)],
    ['al, wall around the hoop', showGrowth(fit.growth.hoop)],
    ['Ts, set at', show(fit.set.temperature, 'temperature')],
    ['es, shrinks after gel', show(fit.growth.shrinkage, 'fraction', 2)],
  ];
}

function Assumed({ fit }: { fit: Fit }) {
  return (
    <>
      <p>{setWords(fit.set)}</p>
      <p>Wall: {wallWords(fit)}.</p>
    </>
  );
}

export function ExplainRoom({ fit, now }: { fit: Fit; now: number }) {
  return (
    <Explain
      of="Room on the diameter"
      formula="D × ((am − al) × (Ts − T) − es)"
      values={[
        ['D, mandrel', show(fit.diameter, 'diameter')],
        ...shared(fit),
        ['T, part now', show(now, 'temperature')],
        ['Room', showRoom(clearanceAt(fit, now))],
      ]}
      source={source}
      sure={sure}
    >
      <Assumed fit={fit} />
    </Explain>
  );
}

export function ExplainLoose({ fit }: { fit: Fit }) {
  if (fit.loose === null) return null;
  return (
    <Explain
      of="Loose below"
      formula="Ts − es / (am − al)"
      values={[...shared(fit), ['Loose below', show(fit.loose, 'temperature')]]}
      source={source}
      sure={sure}
    >
      <Assumed fit={fit} />
    </Explain>
  );
}
