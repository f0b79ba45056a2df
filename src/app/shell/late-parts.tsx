import { AlarmFlash } from '#app/clocks/alarm-flash.tsx';
import { ClocksAloud } from '#app/clocks/clocks-aloud.tsx';
import { WipeLock } from '#app/wipe/wipe-lock.tsx';

export { InstallLine } from '#app/bench/install-line.tsx';
export { startAlarms } from '#app/clocks/alarms.ts';
export { watchPhoneClock } from '#app/clocks/phone-clock.ts';
export { PhoneClockNotice } from '#app/clocks/phone-clock-notice.tsx';
export { SoundLine } from '#app/clocks/sound-line.tsx';
export { TooLate } from '#app/clocks/too-late.tsx';
export { UndoLast } from '#app/parts/undo-last.tsx';
export { dropExports } from '#app/platform/file-sink.ts';
export { nameManifest } from '#app/platform/manifest.ts';
export { WipeKey } from '#app/wipe/wipe-key.tsx';

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
