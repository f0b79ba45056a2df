import type { BuildHeader } from '#shared/record/build.ts';
import type { Lot, LotKind } from '#shared/record/lot.ts';
import { type Body, type DocType, type RevisionOf, revisionVersion } from '#shared/record/revision.ts';
import type { Structure } from '#shared/record/structure.ts';
import type { Build } from './build.ts';
import { device, type Journal } from './journal.ts';
import type { PlanRevision } from './plans.ts';
import { daysBack } from './shop-time.ts';

const month = 2_629_746;
const plain = 'starter-cloth-carbon-plain-193';
const twill = 'starter-cloth-carbon-twill-200';
const slow = 'starter-resin-laminating-slow';
const fast = 'starter-resin-laminating-fast';
const warm = 'starter-resin-warm-cure';
const tape = 'starter-tape-polyester-25';

/** Rolls, cans and reels: one roll used up to its end, one bottle open for too long. */
function lots(now: number): Record<string, Lot> {
  const came = (days: number) => daysBack(now, days, '17:30');
  return {
    'demo-lot-plain-2': {
      name: 'Roll 2',
      of: 'cloth',
      item: plain,
      received: 3,
      receivedAt: came(44),
      openedAt: came(41),
      price: 126,
    },
    'demo-lot-plain-3': {
      name: 'Roll 3',
      of: 'cloth',
      item: plain,
      received: 5,
      receivedAt: came(4),
      openedAt: came(3),
      price: 205,
    },
    'demo-lot-twill-1': {
      name: 'Twill roll 1',
      of: 'cloth',
      item: twill,
      received: 6,
      receivedAt: came(44),
      openedAt: came(24),
      price: 288,
    },
    'demo-lot-slow-3': {
      name: 'Can 3',
      of: 'resin',
      item: slow,
      received: 2,
      receivedAt: came(90),
      openedAt: came(60),
      expiresAt: daysBack(now, -320, '23:59'),
      price: 58,
    },
    'demo-lot-slow-hardener': {
      name: 'Bottle 1',
      of: 'hardener',
      item: slow,
      received: 1,
      receivedAt: came(480),
      openedAt: came(440),
      keepsOpen: 12 * month,
      price: 41,
      note: 'Going red at the neck. A new one is on its way.',
    },
    'demo-lot-fast-1': { name: 'Can 1, FAST', of: 'resin', item: fast, received: 1, receivedAt: came(90) },
    'demo-lot-warm-1': {
      name: 'Can 1, warm',
      of: 'resin',
      item: warm,
      received: 1.2,
      receivedAt: came(50),
      openedAt: came(22),
      expiresAt: daysBack(now, -200, '23:59'),
    },
    'demo-lot-tape-4': {
      name: 'Reel 4',
      of: 'tape',
      item: tape,
      received: 500,
      receivedAt: came(44),
      openedAt: came(36),
      price: 75,
    },
  };
}

/** The roll that a build's cloth is from, and what another roll gave because it was not enough. */
export interface Rolls {
  roll?: string;
  /** m2 */
  rest?: { lot: string; area: number };
}

/** Meters that went on, by the length of the tube: half over, there and back. */
const tapePerMeter = 22;

function takesFrom({ body }: PlanRevision): [of: LotKind, item: string][] {
  return [
    ['cloth', body.cloth],
    ['resin', body.resin],
    ['hardener', body.resin],
    ...(body.tape ? ([['tape', body.tape]] as const) : []),
  ] as [LotKind, string][];
}

/** Which lots a build was started with: the first of its kind, or the roll that its story names. */
export function drawFromLots(
  header: BuildHeader,
  plan: PlanRevision,
  { roll, rest }: Rolls,
  journal: Journal,
): void {
  const shelf = lots(header.startedAt);
  for (const [of, item] of takesFrom(plan)) {
    const found = Object.entries(shelf).find(([, lot]) => lot.of === of && lot.item === item);
    if (!found) continue;
    const lot = of === 'cloth' && roll !== undefined ? roll : found[0];
    const label = shelf[lot]?.name ?? lot;
    const amount = of === 'tape' ? { amount: Math.round(tapePerMeter * plan.body.tubeLength * 10) / 10 } : {};
    journal.write(header.startedAt, { kind: 'lotDrawn', of, lot, label, item, ...amount });
  }
  if (!rest) return;
  const { lot, area: amount } = rest;
  const label = shelf[lot]?.name ?? lot;
  const more = { lot, label, item: plan.body.cloth, amount, besides: true } as const;
  journal.write(header.startedAt, { kind: 'lotDrawn', of: 'cloth', ...more });
}

function first<T extends DocType>(type: T, doc: string, at: number, body: Body<T>): RevisionOf<T> {
  const stamps = { id: `${doc}-1`, parents: [], at, device };
  return { record: 'revision', v: revisionVersion, type, doc, ...stamps, body } as unknown as RevisionOf<T>;
}

function sparSet(builds: readonly Build[]): Structure {
  const good = (name: string) =>
    builds.filter((b) => b.header.name === name && b.entries.some((e) => e.kind === 'closed'));
  const ids = (name: string, count: number) =>
    good(name)
      .slice(-count)
      .map((b) => b.header.id);
  const part = { builds: [] };
  return {
    name: 'Canoe spar set',
    budget: 1.9,
    axis: 'up from the mast foot',
    parts: [
      {
        id: 'lower-mast',
        name: 'Lower mast',
        plan: 'demo-plan-lower-mast',
        quantity: 1,
        budget: 0.76,
        position: 1.05,
        builds: ids('Lower mast', 1),
      },
      {
        id: 'upper-mast',
        name: 'Upper mast',
        plan: 'demo-plan-upper-mast',
        quantity: 1,
        budget: 0.23,
        position: 2.9,
        builds: ids('Upper mast', 1),
      },
      {
        id: 'boom',
        name: 'Boom',
        plan: 'demo-plan-boom',
        quantity: 1,
        budget: 0.3,
        position: 0.75,
        builds: ids('Boom', 1),
      },
      {
        id: 'sprit',
        name: 'Sprit',
        plan: 'demo-plan-sprit',
        quantity: 1,
        budget: 0.18,
        position: 2.1,
        builds: [],
      },
      { id: 'brace', name: 'Leeboard brace', quantity: 1, budget: 0.14, planned: 0.13, ...part },
      {
        id: 'ferrule',
        name: 'Mast ferrule',
        quantity: 1,
        budget: 0.09,
        weighed: 0.086,
        position: 2.05,
        ...part,
      },
      { id: 'fittings', name: 'Jaws, plugs, lashings', quantity: 1, budget: 0.17, planned: 0.165, ...part },
    ],
    note: 'Everything above the deck. The crew lifts it in with one hand.',
  };
}

/** What the shop has in stock, and what its spars are for. */
export function stock(
  now: number,
  builds: readonly Build[],
): (RevisionOf<'lot'> | RevisionOf<'structure'>)[] {
  const at = daysBack(now, 39, '18:10');
  return [
    ...Object.entries(lots(now)).map(([doc, lot]) =>
      first('lot', doc, Math.max(at, lot.openedAt ?? lot.receivedAt), lot),
    ),
    first('structure', 'demo-structure-spars', daysBack(now, 9, '20:40'), sparSet(builds)),
  ];
}
