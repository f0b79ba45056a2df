import { Warning } from '#app/parts/warning.tsx';
import { at, gaveWayWords } from '#app/proof/words.ts';
import { useAllSummaries } from '#app/state/all-summaries.ts';
import { show } from '#app/state/show.ts';

/** Tubes of this plan that gave way under a weight: what was seen goes before what is reckoned. */
export function GaveWayBefore({ doc }: { doc: string }) {
  const made = useAllSummaries()?.builds.filter(({ plan }) => plan === doc) ?? [];
  const gave = made.flatMap((build) => (build.gaveWay ?? []).map((how) => ({ build, ...how })));
  return gave.map(({ build, how, mass, at: hung, place }) => (
    <Warning
      key={`${build.subject} ${mass} ${hung}`}
      kind="stop"
      title={`${build.name} no. ${build.number} of this plan gave way`}
    >
      {gaveWayWords[how]} under {show(mass, 'hungMass')} hung at {at(hung)}
      {place !== undefined && `, at ${at(place)}`}. What was seen goes before what is reckoned here.
    </Warning>
  ));
}
