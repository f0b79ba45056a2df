import { at, gaveWayWords } from '#app/laying-up/proof/words.ts';
import { LinkButton } from '#app/parts/action.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { useAllSummaries } from '#app/state/all-summaries.ts';
import { now, zoneAt } from '#app/state/now.ts';
import { show } from '#app/state/show.ts';
import { formatDay } from '#shared/units/time.ts';

/** Tubes of this plan that gave way under a weight: what was seen goes before what is reckoned. */
export function GaveWayBefore({ doc }: { doc: string }) {
  const made = useAllSummaries()?.builds.filter(({ plan }) => plan === doc) ?? [];
  return made.map(({ subject, name, number, startedAt, gaveWay }) => {
    if (!gaveWay) return null;
    const seen = gaveWay.map(
      ({ how, mass, at: hung, place }) =>
        `${gaveWayWords[how]} under ${show(mass, 'hungMass')} hung at ${at(hung)}${place === undefined ? '' : `, at ${at(place)}`}.`,
    );
    return (
      <Warning key={subject} kind="amber" title={`${name} no. ${number} of this plan gave way`}>
        {seen.join(' ')} What was seen goes before what is reckoned. It was begun{' '}
        {formatDay(startedAt, zoneAt(startedAt), now.value)}: has the wall been changed since?
        <LinkButton to={`/record/build/${subject}`}>Its record</LinkButton>
      </Warning>
    );
  });
}
