import { Secondary } from '#app/parts/action.tsx';
import { Caution } from '#app/parts/warning.tsx';
import { askToNotify, mayNotify } from '#app/platform/notify.ts';
import { soundState } from '#app/platform/sound.ts';
import { awake } from '#app/platform/wake-lock.ts';
import { settings } from '#app/state/settings.ts';

/** What cannot reach the builder, said where a clock is started. */
export function Reach() {
  const silent = !settings.value.sound || soundState.value === 'unsupported';
  const goesDark = awake.value === 'unsupported' || awake.value === 'refused';
  return (
    <>
      <Caution>
        This phone will not ring when the app is closed: keep it open and on charge.
        {silent && ' It makes no sound here: watch for the flash.'}
        {goesDark && ' It cannot keep its screen on: set the phone not to go to sleep.'}
      </Caution>
      {mayNotify.value === 'default' && (
        <Secondary onPress={askToNotify}>Let it notify behind other apps</Secondary>
      )}
    </>
  );
}
