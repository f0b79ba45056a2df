import { Absent } from '#app/parts/absent.tsx';
import { Action } from '#app/parts/action.tsx';
import { Lines } from '#app/parts/figure.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Caution, Warning } from '#app/parts/warning.tsx';
import { go, type Params } from '#app/router.ts';
import { show } from '#app/state/show.ts';
import { useBuild } from '#app/state/use-journal.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import { dimension } from './dimensions.ts';
import { curedPlies, type EdgePlace, edgePlaces, edgeVerdict, markAt } from './edge-places.ts';
import { edgeSays, offWords } from './edge-words.ts';

function Verdict({ state, place }: { state: BuildState; place: EdgePlace }) {
  const mark = markAt(state, place);
  if (!mark) return null;
  const { look, plyThickness, error } = edgeVerdict(place, mark);
  const at = `${place.name} at ${dimension(place.station)}`;
  return (
    <>
      {look && (
        <Warning kind="amber" title={`${at}: ${offWords(mark.off)}. Look`} announce>
          More than 5 mm off is a wrong width, another mandrel or slack in the roll. Measure before the tape
          goes on.
        </Warning>
      )}
      {plyThickness !== undefined && (
        <p>
          {at}: a ply comes to <strong>{show(plyThickness, 'thickness')}</strong>, planned{' '}
          {show(place.plyThickness, 'thickness')}, read to {show(error, 'fraction', 0)}.
        </p>
      )}
    </>
  );
}

function Cured({ state }: { state: BuildState }) {
  const plies = curedPlies(state);
  if (plies.length === 0) {
    return (
      <Caution>
        With few wraps the edge hardly moves when a ply is thicker or thinner: ply thickness follows from the
        diameter once the tube is cured and measured.
      </Caution>
    );
  }
  return (
    <>
      <h2>A ply, by the cured diameter</h2>
      <Lines rows={plies.map((p) => [`At ${dimension(p.station)}`, show(p.plyThickness, 'thickness')])} />
    </>
  );
}

function Edges({ state, places }: { state: BuildState; places: readonly EdgePlace[] }) {
  const { header } = state;
  const next = places.find((p) => !markAt(state, p));
  const outer = places[0]?.index;
  const address = (p: EdgePlace) => `/edge/${header.id}/${p.piece}/${p.mark}`;
  const read = places.some((p) => markAt(state, p));
  const rows = (of: readonly EdgePlace[]) =>
    of.map((p) => (
      <Row
        key={address(p)}
        to={address(p)}
        title={`${p.name} at ${dimension(p.station)}`}
        about={`Mark ${dimension(p.round)} round from the line`}
        value={edgeSays(markAt(state, p))}
      />
    ));
  const under = places.filter((p) => p.index !== outer);
  return (
    <Screen
      kicker={`${header.name} no. ${header.number}`}
      title="Where the edge landed"
      back={{ to: `/build/${header.id}`, label: 'Route' }}
      actions={
        read || !next ? (
          <Action onPress={() => go(`/build/${header.id}`)}>On with the route</Action>
        ) : (
          <Action onPress={() => go(address(next))}>Read it at {dimension(next.station)}</Action>
        )
      }
    >
      {places.map((p) => (
        <Verdict key={address(p)} state={state} place={p} />
      ))}
      <Rows label="Outer edge">{rows(places.filter((p) => p.index === outer))}</Rows>
      {under.length > 0 && (
        <details class="more">
          <summary>Edges of the pieces under it</summary>
          <Rows label="Edges under it">{rows(under)}</Rows>
        </details>
      )}
      <Cured state={state} />
    </Screen>
  );
}

/** Did the outer edge land where the plan says? */
export function EdgeScreen({ params }: { params: Params }) {
  const state = useBuild(params.id);
  if (state === undefined) return null;
  if (state === 'absent') return <Absent what="tube" />;
  const places = edgePlaces(state);
  if (typeof places === 'string' || places.length === 0) {
    return (
      <Screen title="No edge to compare" back={{ to: `/build/${state.header.id}`, label: 'Route' }}>
        <p>{typeof places === 'string' ? places : 'The plan of this tube has no pieces.'}</p>
      </Screen>
    );
  }
  return <Edges state={state} places={places} />;
}
