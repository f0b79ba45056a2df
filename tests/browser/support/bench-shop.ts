import type { BuildHeader } from '#shared/record/build.ts';
import type { OvenLoadHeader } from '#shared/record/oven-load.ts';
import type { Header } from '#shared/record/read.ts';
import { cupOf, type Event, entriesOf, ticksOf } from '../../app/shop-of.ts';
import { buildHeader, ovenLoadHeader } from '../../record/arbitraries.ts';
import { lowerMast, mastBuild, planRevision } from './walled.ts';

/** The minute at which this shop is looked at. */
export const seenAt = 30;

const dry = ['mandrelPrep', 'release', 'cut'];
const beforeMix = [...dry, 'setUp'];
const ticked = (stages: readonly string[]) => stages.flatMap((stage) => ticksOf(stage, 0));
const films = { minute: 1, kind: 'filmCount', direction: 'in', count: 2, round: 1 } as const;
const [started, resinIn, contact] = cupOf('b', 1, 20, 45) as [Event, Event, Event];

interface Tube {
  id: string;
  name: string;
  events: readonly Event[];
}

/** A tube at every place of the job where a thumb is wanted. */
const tubes: readonly Tube[] = [
  { id: 'dry', name: 'Yard', events: ticksOf('mandrelPrep', 0).slice(0, 2) },
  { id: 'set-up', name: 'Sprit', events: ticked(dry) },
  { id: 'plan', name: 'Boom', events: [...ticked(beforeMix), films] },
  { id: 'pour', name: 'Boom', events: [...ticked(beforeMix), started] },
  { id: 'contact', name: 'Boom', events: [...ticked(beforeMix), started, resinIn] },
  { id: 'hardener', name: 'Boom', events: [...ticked(beforeMix), started, resinIn, contact] },
  { id: 'mixed', name: 'Lower mast', events: [...ticked(beforeMix), ...cupOf('c', 2, 24, 30)] },
  {
    id: 'wet',
    name: 'Upper mast',
    events: [
      ...ticked([...beforeMix, 'mix']),
      films,
      ...cupOf('d', 1, 5, 40),
      { minute: 15, kind: 'cupEmpty', cup: 'd' },
    ],
  },
  { id: 'wrap', name: 'Gaff', events: [...ticked([...beforeMix, 'mix', 'wetOut']), films] },
  { id: 'taped', name: 'Gaff', events: [...ticked([...beforeMix, 'mix', 'wetOut', 'wrap']), films] },
  {
    id: 'cured',
    name: 'Mizzen',
    events: [
      ...ticked([...beforeMix, 'mix', 'wetOut', 'wrap', 'shrinkTape', 'cure', 'demold']),
      films,
      { ...films, direction: 'out' },
      { minute: 20, kind: 'weight', what: 'cured', mass: 0.262, typed: '262 g' },
    ],
  },
  {
    id: 'trimmed',
    name: 'Mizzen',
    events: [
      ...ticked([...beforeMix, 'mix', 'wetOut', 'wrap', 'shrinkTape', 'cure', 'demold', 'weigh', 'trim']),
      ...ticksOf('measure', 0).slice(0, -1),
    ],
  },
];

const oven: OvenLoadHeader = {
  ...ovenLoadHeader,
  channels: ovenLoadHeader.channels.map((c) => (c.sees === 'part' ? { ...c, build: 'cured' } : c)),
};
const reads = (minute: number, channel: string, degrees: number): Event => ({
  minute,
  kind: 'reading',
  channel,
  temperature: degrees + 273.15,
});

const buildOf = ({ id, name }: Tube, i: number): BuildHeader => ({
  ...buildHeader,
  id,
  name,
  number: i + 1,
  tubeLength: 1.5,
  mandrelDiameter: 0.038,
  plies: 6,
});

/** The shop of a busy day, as it is kept: headers, entries and the plan of a tube drawn piece by piece. */
export function busyShop(): object[] {
  const headers: Header[] = [...tubes.map(buildOf), { ...mastBuild, number: 2 }, oven];
  return [
    ...headers,
    planRevision('lower-mast', lowerMast),
    ...tubes.flatMap(({ id, events }) => entriesOf(id, events)),
    ...entriesOf(oven.id, [
      { minute: 0, kind: 'ovenStage', stage: 'lit' },
      reads(2, 'air', 30),
      reads(2, 'part-1', 24),
      reads(20, 'air', 58),
      reads(20, 'part-1', 44),
    ]),
  ];
}

/** Timers of the bench that end so many minutes after the shop is looked at. */
export function benchTimers(ends: readonly number[]): object[] {
  return entriesOf(
    'bench',
    ends.map((end, i) => ({
      minute: 0,
      kind: 'clockStarted',
      clock: `timer-${i}`,
      purpose: 'free',
      label: `Timer ${i + 1}`,
      lasts: (seenAt + end) * 60,
      warns: 60,
    })),
  );
}
