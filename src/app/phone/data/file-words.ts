import { formatNumber } from '#shared/units/format.ts';

/** '2026-05-16-1524', as the clock stood there. */
export function fileStamp(at: number, zone: number): string {
  return new Date(at + zone * 60_000).toISOString().slice(0, 16).replace('T', '-').replace(':', '');
}

/** '2026-05-16T15:24:07-04:00', as the clock stood there and where that was. */
export function isoWithOffset(at: number, zone: number): string {
  const size = Math.abs(zone);
  const two = (n: number) => String(n).padStart(2, '0');
  const offset = `${zone < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
  return new Date(at + zone * 60_000).toISOString().slice(0, 19) + offset;
}

/** '412 KB', '1.2 MB' */
export function formatBytes(bytes: number): string {
  const names = ['B', 'KB', 'MB', 'GB'];
  let size = bytes;
  let i = 0;
  for (; size >= 1000 && i < names.length - 1; i++) size /= 1000;
  return `${formatNumber(size, size < 10 && i > 1 ? 1 : 0, true)}\u00a0${names[i]}`;
}

/** '1 build', '9 builds' */
export function countOf(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString('en-US')} ${count === 1 ? one : many}`;
}
