import { turn } from './angles.ts';

/** A point on a circle about 0, 0: angle 0 at the top, growing clockwise. */
export function onCircle(radius: number, angle: number): { x: number; y: number } {
  return { x: round(radius * Math.sin(angle)), y: round(-radius * Math.cos(angle)) };
}

const round = (px: number) => Math.round(px * 100) / 100;

function arc(radius: number, from: number, to: number, clockwise: boolean): string {
  const end = onCircle(radius, to);
  const large = Math.abs(to - from) > turn / 2 ? 1 : 0;
  return `A${round(radius)} ${round(radius)} 0 ${large} ${clockwise ? 1 : 0} ${end.x} ${end.y}`;
}

/** An arc from one angle to a later one; a whole turn in two halves, since one arc cannot close on itself. */
export function arcPath(radius: number, from: number, to: number): string {
  const start = onCircle(radius, from);
  const middle = (from + to) / 2;
  return `M${start.x} ${start.y}${arc(radius, from, middle, true)}${arc(radius, middle, to, true)}`;
}

/** What lies between two radii from one angle to a later one. */
export function ringPath(inner: number, outer: number, from: number, to: number): string {
  const middle = (from + to) / 2;
  const back = onCircle(inner, to);
  return (
    arcPath(outer, from, to) +
    `L${back.x} ${back.y}` +
    arc(inner, to, middle, false) +
    `${arc(inner, middle, from, false)}Z`
  );
}
