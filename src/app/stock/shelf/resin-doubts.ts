import { settings } from '#app/state/settings.ts';
import { show } from '#app/state/show.ts';
import type { ResinSystem } from '#shared/record/resin-system.ts';
import { celsius, hours } from '#shared/reference/quantities.ts';
import { formatDuration } from '#shared/units/time.ts';

interface Heat {
  what: string;
  temperature: number;
  /** What such a temperature usually is, K */
  usual: readonly [number, number];
}

const shop = [celsius(10), celsius(45)] as const;
/** A resin that is worked for less than this is cured from room temperature up, s. */
const roomCure = hours(10);
/** A cure as cool as this takes longer than that, K and s. */
const coolCure = { under: celsius(22), quick: hours(12) };

/** The figure that was typed, read in the other unit. */
function otherReading(temperature: number): { value: number; asked: string } {
  const degrees = temperature - 273.15;
  return settings.value.units === 'metric'
    ? { value: ((degrees - 32) * 5) / 9 + 273.15, asked: `${Math.round(degrees)} °F` }
    : { value: (degrees * 9) / 5 + 32 + 273.15, asked: `${Math.round((degrees * 9) / 5 + 32)} °C` };
}

function heatsOf(resin: ResinSystem): Heat[] {
  const { potLife, morePotLives = [], thinFilm, gelTimes = [], curePoints, glassAfter = [] } = resin;
  const warm = potLife.time < roomCure && potLife.temperature < celsius(45);
  const cure = [celsius(15), celsius(warm ? 130 : 200)] as const;
  const known = (what: string, temperature: number | undefined, usual: Heat['usual']): Heat[] =>
    temperature === undefined ? [] : [{ what, temperature, usual }];
  return [
    { what: 'pot life', temperature: potLife.temperature, usual: shop },
    ...morePotLives.map((p): Heat => ({ what: 'pot life', temperature: p.temperature, usual: shop })),
    ...known('thin film', thinFilm?.temperature, shop),
    ...gelTimes.map((p): Heat => ({ what: 'gel time', temperature: p.temperature, usual: cure })),
    ...curePoints.map(({ temperature, time }): Heat => {
      const cool = time < coolCure.quick ? coolCure.under : cure[0];
      return { what: 'cure', temperature, usual: [cool, cure[1]] };
    }),
    ...glassAfter.flatMap((g) => [
      { what: 'cure before a Tg', temperature: g.temperature, usual: cure },
      {
        what: 'Tg',
        temperature: g.glassTransition,
        usual: [celsius(35), celsius(warm ? 150 : 250)] as const,
      },
    ]),
    ...known('limit', resin.highestTemperature, [celsius(42), celsius(warm ? 150 : 250)]),
    ...known('best Tg', resin.glassTransition, [celsius(42), celsius(warm ? 150 : 250)]),
  ];
}

function mixedUp(resin: ResinSystem): string[] {
  return heatsOf(resin).flatMap(({ what, temperature, usual: [from, to] }) => {
    if (temperature >= from && temperature <= to) return [];
    const { value, asked } = otherReading(temperature);
    if (value < from || value > to) return [];
    return [
      `The ${what} at ${show(temperature, 'temperature', 0)}: is ${asked} meant? Then type the unit with it.`,
    ];
  });
}

interface Point {
  temperature: number;
  time: number;
}

function ofOneKind(kind: string, points: readonly Point[]): string[] {
  const sorted = [...points].sort((a, b) => a.temperature - b.temperature || a.time - b.time);
  return sorted.slice(1).flatMap((hot, i) => {
    const cool = sorted[i];
    if (!cool) return [];
    const two = `${formatDuration(cool.time)} at ${show(cool.temperature, 'temperature', 0)} and ${formatDuration(hot.time)} at ${show(hot.temperature, 'temperature', 0)}`;
    if (hot.temperature === cool.temperature) {
      if (hot.time === cool.time) return [`${kind}: ${two} is one point twice. Take one out.`];
      return [`${kind}: ${two} cannot both hold. Which is right?`];
    }
    return hot.time >= cool.time ? [`${kind}: ${two}. Hotter should be quicker: which is right?`] : [];
  });
}

/** What reads like a slip in a data sheet written down, a sentence each. */
export function resinDoubts(resin: ResinSystem): string[] {
  const { potLife, morePotLives = [], gelTimes = [], curePoints } = resin;
  const lives = [potLife, ...morePotLives];
  const kinds = new Set(lives.map((p) => `${p.mass} ${p.ends}`));
  const byCup = [...kinds].map((kind) => lives.filter((p) => `${p.mass} ${p.ends}` === kind));
  const gels = [...new Set(gelTimes.map((g) => g.mass))].map((m) => gelTimes.filter((g) => g.mass === m));
  return [
    ...mixedUp(resin),
    ...byCup.flatMap((points) => ofOneKind('Pot life', points)),
    ...gels.flatMap((points) => ofOneKind('Gel', points)),
    ...ofOneKind('Cure', curePoints),
  ];
}
