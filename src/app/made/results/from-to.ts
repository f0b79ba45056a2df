/** '2.1 to 4.3 g': the unit once, where both have the same one. */
export function fromTo(least: string, most: string): string {
  if (least === most) return least;
  const unit = /[\s\u00a0]\D*$/.exec(most)?.[0] ?? '';
  return `${unit !== '' && least.endsWith(unit) ? least.slice(0, -unit.length) : least} to ${most}`;
}
