import { curedByWeight, wetShare } from '#app/made/results/by-weight.ts';
import { Absent } from '#app/parts/absent.tsx';
import { Action, Beside, LinkButton } from '#app/parts/action.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { go, type Params } from '#app/router.ts';
import { partMasses } from '#app/state/masses.ts';
import { show } from '#app/state/show.ts';
import { useBuild } from '#app/state/use-journal.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { formatRatio } from '#shared/units/ratio.ts';
import { Laminate, plannedShare, ResinRule } from './laminate.tsx';
import { nextWeighing, offcutsMissing, weighingOf, weighings } from './weights.ts';

/** While it is wet: the share of resin between the films, against the one planned. */
function WetCloth({ state }: { state: BuildState }) {
  const share = wetShare(state);
  if (share === 'notWeighed') return null;
  if (share === 'lighterThanCloth') {
    return (
      <Warning kind="amber" title="Lighter than its cloth and films">
        Is the scale zeroed? Weigh it again.
      </Warning>
    );
  }
  const { header, weights } = state;
  // What is applied is more than what stays: the tape still squeezes its part out.
  const kept = plannedShare(state);
  const applied = kept / (1 - header.goal.squeezeOut);
  const planned = applied / (applied + 1 - kept);
  const off = share - planned;
  const { cloth, wetFilms = 0 } = partMasses(state);
  const wanted = show(cloth / (1 - planned) + wetFilms, 'mass', 0);
  const until = weights.has('wetFilms') ? `until it weighs ${wanted} with its films` : 'and weigh again';
  return (
    <>
      <h2>Resin between the films, before the tape</h2>
      <ResinRule
        share={share}
        planned={planned}
        fiberDensity={header.cloth.fiberDensity}
        resinDensity={header.resin.curedDensity}
      />
      <p>
        <strong>{formatRatio(share)}</strong> resin to fabric. Wanted {formatRatio(planned)} before the tape
        squeezes.
      </p>
      {!weights.has('wetFilms') && <p class="quiet">The films are still counted as resin: weigh them too.</p>}
      {Math.abs(off) > 0.03 && (
        <Warning kind="amber" title={off > 0 ? 'Too much resin on it' : 'Too little resin on it'}>
          {off > 0
            ? `It can still be put right: squeegee more out, from the middle, ${until}.`
            : `It can still be put right: let it soak with a little more resin on it, ${until}.`}
        </Warning>
      )}
    </>
  );
}

/** What does it weigh, and how much of that is resin? */
export function WeighScreen({ params }: { params: Params }) {
  const state = useBuild(params.id);
  if (state === undefined) return null;
  if (state === 'absent') return <Absent what="tube" />;
  const { header } = state;
  const result = curedByWeight(state);
  const next = weighingOf(nextWeighing(state));
  const toRoute = () => go(`/build/${header.id}`);
  return (
    <Screen
      kicker={`${header.name} no. ${header.number}`}
      title={result.ok ? `Weighed: ${show(result.value.tube + result.value.filmLeft, 'mass', 0)}` : 'Weights'}
      back={{ to: `/build/${header.id}`, label: 'Route' }}
      actions={
        <>
          <Beside>
            <LinkButton to={`/measure/${header.id}`}>Measure the wall</LinkButton>
            {next && <LinkButton to={`/build/${header.id}`}>Back to the route</LinkButton>}
          </Beside>
          {next ? (
            <Action onPress={() => go(`/weigh/${header.id}/${next.what}`)}>
              Weigh: {next.title.toLowerCase()}
            </Action>
          ) : (
            <Action onPress={toRoute}>On with the route</Action>
          )}
        </>
      }
    >
      {result.ok || (!result.ok && result.why === 'lighterThanCloth') ? (
        <Laminate state={state} />
      ) : offcutsMissing(state) ? (
        <Warning kind="amber" title="Its offcuts are not weighed">
          How much resin is in it cannot be told while cloth of it lies elsewhere. Weigh both ends together;
          type 0 if nothing was cut off.
        </Warning>
      ) : (
        <WetCloth state={state} />
      )}
      <Rows label="Weights">
        {weighings.map((w) => {
          const entry = state.weights.get(w.what)?.entry;
          const begun = w.what === 'cutCloth' && `begun with ${show(header.clothMass, 'mass')}`;
          return (
            <Row
              key={w.what}
              to={`/weigh/${header.id}/${w.what}`}
              title={w.title}
              {...(begun && !entry && { about: begun })}
              value={entry ? show(entry.mass, 'mass') : 'weigh'}
            />
          );
        })}
      </Rows>
    </Screen>
  );
}
