import type { AnyEntry } from '#shared/record/entry.ts';
import { type Channel, type OvenLoadHeader, ovenLoadVersion } from '#shared/record/oven-load.ts';
import type { Plan } from '#shared/record/plan.ts';
import { drawing, onMeter } from './draw.ts';
import { type Draft, device, type Ids, Journal } from './journal.ts';
import { materialsOf } from './materials.ts';
import { type Heat, heat, holdBegins, msAfter, type Runaway, turnedOff } from './oven.ts';
import { minute, shopZone } from './shop-time.ts';

export interface Firing {
  number: number;
  litAt: number;
  plan: Plan;
  tubes: readonly { build: string; name: string; lag: number }[];
  /** Nothing is known after this. */
  until: number;
  runaway?: Runaway;
  /** A logger ran along; its file was brought in when the load was out. */
  logger?: (header: OvenLoadHeader, litAt: number) => Draft;
  notes?: readonly { minutes: number; text: string }[];
}

export interface OvenLoad {
  header: OvenLoadHeader;
  entries: AnyEntry[];
  litAt: number;
  offAt: number;
  outAt: number;
}

function channelsOf(firing: Firing, ids: Ids): Channel[] {
  const at = firing.litAt - 20 * minute;
  return [
    { id: ids.at(at), sees: 'air', name: 'Air, middle shelf' },
    ...firing.tubes.map(({ build, name }) => ({ id: ids.at(at), sees: 'part' as const, build, name })),
  ];
}

function headerOf(firing: Firing, ids: Ids): OvenLoadHeader {
  const { release, tape, resin } = materialsOf(firing.plan);
  const startedAt = firing.litAt - 20 * minute;
  return {
    record: 'ovenLoad',
    v: ovenLoadVersion,
    id: ids.at(startedAt),
    number: firing.number,
    schedule: firing.plan.schedule,
    channels: channelsOf(firing, ids),
    limits: [
      { name: release.name, sees: 'part', highest: release.highestTemperature },
      { name: tape.name, sees: 'air', highest: tape.highestTemperature },
      ...(resin.highestTemperature === undefined
        ? []
        : [{ name: resin.name, sees: 'part' as const, highest: resin.highestTemperature }]),
    ],
    startedAt,
    zone: shopZone,
    device,
  };
}

/** One firing, as it was logged: joined, lit, read every 10 to 15 minutes, its hold, off and out. */
export function fire(firing: Firing, ids: Ids): OvenLoad {
  const header = headerOf(firing, ids);
  const journal = new Journal(header.id, ids);
  const { litAt, until, plan, tubes } = firing;
  const warmth = heat(
    plan.schedule,
    12 * 60,
    tubes.map((t) => t.lag),
    firing.runaway,
  );
  const begins = holdBegins(warmth, plan.schedule);
  const off = turnedOff(warmth, plan.schedule);
  const [offAt, outAt] = [msAfter(litAt, off), msAfter(litAt, off + 75)];
  join(firing, header, journal);
  journal.write(litAt, { kind: 'ovenStage', stage: 'lit' });
  read(firing, header, journal, warmth, off + 48);
  holdClock(journal, ids, msAfter(litAt, begins), plan, off - begins, until);
  for (const note of firing.notes ?? []) {
    journal.write(msAfter(litAt, note.minutes), { kind: 'note', text: note.text });
  }
  if (offAt <= until) journal.write(offAt, { kind: 'ovenStage', stage: 'off' });
  if (outAt <= until) {
    journal.write(outAt, { kind: 'ovenStage', stage: 'out' });
    if (firing.logger) journal.write(outAt + minute, firing.logger(header, litAt));
    journal.write(outAt + 2 * minute, { kind: 'closed' });
  }
  return { header, entries: journal.entries, litAt, offAt, outAt };
}

function join({ litAt, tubes }: Firing, header: OvenLoadHeader, journal: Journal): void {
  for (const [i, { build }] of tubes.entries()) {
    const channel = header.channels[i + 1]?.id;
    journal.write(litAt - (8 - i) * minute, {
      kind: 'joinedOvenLoad',
      build,
      ovenLoad: header.id,
      round: 1,
      ...(channel !== undefined && { channel }),
    });
  }
}

function read(firing: Firing, header: OvenLoadHeader, journal: Journal, warmth: Heat, last: number): void {
  const draw = drawing(firing.number * 97);
  for (let t = 2; t <= last; t += Math.round(draw(10, 15))) {
    const at = msAfter(firing.litAt, t) + Math.round(draw(0, 50)) * 1000;
    for (const [i, channel] of header.channels.entries()) {
      const kelvin = (i === 0 ? warmth.air : warmth.parts[i - 1])?.[t];
      const readAt = at + i * 9000;
      if (kelvin !== undefined && readAt <= firing.until) {
        journal.write(readAt, { kind: 'reading', channel: channel.id, ...onMeter(kelvin) });
      }
    }
  }
}

function holdClock(
  journal: Journal,
  ids: Ids,
  startedAt: number,
  plan: Plan,
  minutes: number,
  until: number,
): void {
  const hold = plan.schedule.stages.find((s) => s.kind === 'hold');
  if (!hold || startedAt > until) return;
  const clock = ids.at(startedAt);
  journal.write(startedAt, {
    kind: 'clockStarted',
    clock,
    purpose: 'hold',
    label: 'Hold',
    lasts: hold.lasts,
    warns: 300,
  });
  const answeredAt = msAfter(startedAt, minutes);
  if (answeredAt <= until) journal.write(answeredAt, { kind: 'clockAnswered', clock });
}
