/** Phones that cannot, and pages nobody has touched yet, say nothing: it is never the only signal. */
export const canVibrate = 'vibrate' in navigator;

/** Alternately on and off, ms */
export function vibrate(pattern: number[]): void {
  if (!canVibrate || navigator.userActivation?.hasBeenActive === false) return;
  navigator.vibrate(pattern);
}
