import { starterCores } from './starter-cores.ts';
import { starterReleases } from './starter-releases.ts';
import { starterResins } from './starter-resins.ts';
import { starterTapes } from './starter-tapes.ts';

const practice = 'Common practice, no source.';

/** Where the starter shelf's highest temperatures come from, by what they are of. */
const ofReleases: Record<keyof typeof starterReleases, string> = {
  'starter-release-polyester-sleeve': `${practice} Heat, time and amine make polyester film brittle well before it melts.`,
  'starter-release-nylon-sleeve': 'FAA AC 43.13-1B (1998), page 3-6: nylon film.',
  'starter-release-wax-pva': `${practice} The higher figure of FAA AC 43.13-1B is for PVA film, not for this coat.`,
  'starter-release-semi-permanent': `${practice} Far above the cure of any hand layup.`,
};
const ofCores = 'Common practice, no source: where such foams are commonly said to soften.';

const starters: readonly { body: { name: string; highestTemperature?: number }; source: string }[] = [
  ...Object.entries(ofReleases).map(([id, source]) => ({
    body: starterReleases[id as keyof typeof starterReleases],
    source,
  })),
  ...Object.values(starterCores).map((body) => ({ body, source: ofCores })),
  ...Object.values(starterResins).map((body) => ({ body, source: practice })),
  ...Object.values(starterTapes).map((body) => ({ body, source: practice })),
];

const asEntered = 'As entered on your shelf: its data sheet has the last word.';

/** Where the highest temperature of a thing on the shelf comes from. */
export function limitSource({
  name,
  highestTemperature,
  typical,
}: {
  name: string;
  highestTemperature?: number | undefined;
  typical?: boolean | undefined;
}): string {
  const starter = starters.find(
    ({ body }) => body.name === name && body.highestTemperature === highestTemperature,
  );
  return starter?.source ?? (typical ? practice : asEntered);
}
