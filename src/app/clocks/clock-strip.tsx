/** Running clocks stand at the top of every screen. */
export function ClockStrip() {
  return null;
}
