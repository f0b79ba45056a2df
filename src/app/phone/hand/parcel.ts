import { fileStamp } from '#app/phone/data/file-words.ts';
import { zoneAt } from '#app/state/now.ts';
import { theStore } from '#app/state/shop.ts';
import type { Plan } from '#shared/record/plan.ts';
import { version } from '../../../../package.json';
import { codesOf } from './codes.ts';

/** What another phone gets. */
export interface Parcel {
  name: string;
  subjects: readonly string[];
  docs: readonly string[];
}

/** A plan with everything on the shelf that it is made with. */
export function parcelOfPlan(doc: string, plan: Plan): Parcel {
  const { name, cloth, resin, release, tape, mandrel, checklist, wall } = plan;
  const pieces = wall?.pieces.map((p) => p.material) ?? [];
  const all = [doc, cloth, resin, release, tape, mandrel, checklist, ...pieces];
  return { name, subjects: [], docs: [...new Set(all.filter((d) => d !== undefined))] };
}

/** A build with the oven loads it was in. What it was made of stands in it. */
export function parcelOfBuild(name: string, build: string, ovenLoads: readonly string[]): Parcel {
  return { name, subjects: [...new Set([build, ...ovenLoads])], docs: [] };
}

async function textFrom({ subjects, docs }: Parcel, photos: boolean, at: number): Promise<string> {
  const pieces: string[] = [];
  const only = { subjects, docs };
  for await (const piece of theStore().backup({ photos, app: version, at, only })) pieces.push(piece);
  return pieces.join('');
}

/** As a file, photos with it. The other phone merges it as it merges a backup. */
export async function fileOf(parcel: Parcel): Promise<File> {
  const at = Date.now();
  const text = await textFrom(parcel, true, at);
  const plain = parcel.name.toLowerCase().replace(/[^a-z0-9]+/g, '-');
  return new File([text], `tubewright-${plain}-${fileStamp(at, zoneAt(at))}.txt`, { type: 'text/plain' });
}

/** As codes for the other phone's camera, without photos; undefined when there would be too many. */
export const codesFor = async (parcel: Parcel): Promise<string[] | undefined> =>
  codesOf(await textFrom(parcel, false, Date.now()));
