import type { Scale } from '#app/planning/wall/pictures/scale.ts';
import type { LoadRecord } from '#shared/record/load-plan.ts';
import { reachOf } from './of-plan.ts';

export interface LoadMarkProps {
  load: LoadRecord;
  x: Scale;
  /** Middle of the tube and half its height, px */
  y: number;
  half: number;
  length: number;
  /** The greatest force at one place, and for each length, that are drawn: others are shorter by their share. */
  most: { force: number; running: number };
  chosen: boolean;
}

/** px of the longest arrow at one place and of a spread one, and the shortest that still has a head */
const long = 50;
const longSpread = 32;
const short = 15;
/** px between the arrows of a spread load */
const apart = 26;

const arrowLength = (share: number, longest: number) => short + (longest - short) * Math.min(1, share);

/** px from the tube to the far end of a load's arrow, above 0 over the tube. */
function heightAt(value: number, most: number, longest: number): number {
  if (value === 0 || most === 0) return 0;
  return Math.sign(value) * arrowLength(Math.abs(value) / most, longest);
}

/** A straight arrow with its head at the second place. */
function arrow(x1: number, y1: number, x2: number, y2: number): string {
  const by = Math.atan2(y2 - y1, x2 - x1);
  const side = (turn: number) => {
    const a = by + turn;
    return `M${(x2 - 8 * Math.cos(a)).toFixed(1)} ${(y2 - 8 * Math.sin(a)).toFixed(1)}L${x2} ${y2}`;
  };
  return `M${x1} ${y1}L${x2} ${y2}${side(0.45)}${side(-0.45)}`;
}

/** From where it begins to the side of the tube it is on. */
function across(px: number, height: number, { y, half }: LoadMarkProps): string {
  if (height === 0) return '';
  const skin = height > 0 ? y - half - 1 : y + half + 1;
  return arrow(px, skin - height, px, skin);
}

function Spread({ stations, ...props }: LoadMarkProps & { stations: { at: number; value: number }[] }) {
  const { x, y, half, most } = props;
  const ends = stations.map(({ at, value }) => ({
    px: x(at),
    high: heightAt(value, most.running, longSpread),
  }));
  const top = ({ px, high }: { px: number; high: number }) =>
    `${px.toFixed(1)} ${(high >= 0 ? y - half - high : y + half - high).toFixed(1)}`;
  const arrows = ends.slice(1).flatMap((end, i) => {
    const start = ends[i];
    if (!start) return [];
    const count = Math.max(1, Math.round((end.px - start.px) / apart));
    return Array.from({ length: count + 1 }, (_, k) => {
      const share = k / count;
      return across(
        start.px + share * (end.px - start.px),
        start.high + share * (end.high - start.high),
        props,
      );
    });
  });
  return (
    <>
      <path class="sketch-over" d={`M${ends.map(top).join('L')}`} />
      <path class="sketch-arrow sketch-fine" d={arrows.join('')} />
    </>
  );
}

/** Round the tube in front, its head where it goes. */
function Twist({ px, way, y, half }: { px: number; way: number; y: number; half: number }) {
  const reach = half + 11;
  const [from, to] = [y - way * reach, y + way * reach];
  const head = `M${px + 7} ${to - way * 8}L${px - 2} ${to}L${px + 9} ${to + way * 4}`;
  return (
    <path
      class="sketch-arrow"
      d={`M${px - 2} ${from}C${px + 16} ${from} ${px + 16} ${to} ${px - 2} ${to}${head}`}
    />
  );
}

function Axial({ at, force, x, y, length }: LoadMarkProps & { at: number; force: number }) {
  const out = at < length / 2 ? -1 : 1;
  const [near, far] = [x(at) + out * 4, x(at) + out * 32];
  const outward = Math.sign(force) === out;
  return <path class="sketch-arrow" d={outward ? arrow(near, y, far, y) : arrow(far, y, near, y)} />;
}

function Mark(props: LoadMarkProps) {
  const { load, x, most } = props;
  switch (load.kind) {
    case 'point':
      return (
        <path class="sketch-arrow" d={across(x(load.at), heightAt(load.force, most.force, long), props)} />
      );
    case 'axial':
      return <Axial {...props} at={load.at} force={load.force} />;
    case 'torque':
      return <Twist {...props} px={x(load.at)} way={Math.sign(load.torque) || 1} />;
    case 'spreadTorque':
      return [0.15, 0.5, 0.85].map((share) => (
        <Twist
          key={share}
          {...props}
          px={x(load.from + share * (load.to - load.from))}
          way={Math.sign(load.torque) || 1}
        />
      ));
    case 'spread':
      return (
        <Spread
          {...props}
          stations={[
            { at: load.from, value: load.atFrom },
            { at: load.to, value: load.atTo },
          ]}
        />
      );
    case 'table':
      return <Spread {...props} stations={load.stations} />;
  }
}

/** A load as a builder sketches it: an arrow, a row of arrows, an arrow round the tube. */
export function LoadMark(props: LoadMarkProps) {
  return (
    <g class={props.chosen ? 'sketch-chosen' : undefined}>
      <Mark {...props} />
    </g>
  );
}

/** Where the words of a load stand: over the middle of it, or over its one place. */
export function middleOf(load: LoadRecord): number {
  const { from, to } = reachOf(load);
  return (from + to) / 2;
}

const runningOf = (load: LoadRecord): number[] => {
  if (load.kind === 'spread') return [load.atFrom, load.atTo];
  return load.kind === 'table' ? load.stations.map(({ value }) => value) : [];
};

/** What the arrows of a picture are measured by. */
export function mostOf(loads: readonly LoadRecord[]): LoadMarkProps['most'] {
  const forces = loads.map((l) => (l.kind === 'point' ? Math.abs(l.force) : 0));
  return {
    force: Math.max(0, ...forces),
    running: Math.max(0, ...loads.flatMap(runningOf).map(Math.abs)),
  };
}
