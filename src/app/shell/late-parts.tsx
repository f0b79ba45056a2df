import { AlarmFlash } from '#app/laying-up/clocks/alarm-flash.tsx';
import { ClocksAloud } from '#app/laying-up/clocks/clocks-aloud.tsx';
import { WipeLock } from '#app/laying-up/wipe/wipe-lock.tsx';

export { InstallLine } from '#app/laying-up/bench/install-line.tsx';
export { startAlarms } from '#app/laying-up/clocks/alarms.ts';
export { watchPhoneClock } from '#app/laying-up/clocks/phone-clock.ts';
export { PhoneClockNotice } from '#app/laying-up/clocks/phone-clock-notice.tsx';
export { SoundLine } from '#app/laying-up/clocks/sound-line.tsx';
export { TooLate } from '#app/laying-up/clocks/too-late.tsx';
export { WipeKey } from '#app/laying-up/wipe/wipe-key.tsx';
export { UndoLast } from '#app/parts/undo-last.tsx';
export { dropExports } from '#app/platform/file-sink.ts';
export { nameManifest } from '#app/platform/manifest.ts';

/** In front of every screen: the flash, and the lock while it is wiped. */
export function InFront() {
  return (
    <>
      <ClocksAloud />
      <AlarmFlash />
      <WipeLock />
    </>
  );
}
