import { useSignal } from '@preact/signals';
import { tryAlarm } from '#app/clocks/alarms.ts';
import { Secondary } from '#app/parts/action.tsx';
import { Choice } from '#app/parts/field.tsx';
import { askToNotify, type MayNotify, mayNotify } from '#app/platform/notify.ts';
import { soundState } from '#app/platform/sound.ts';
import { changeSettings, settings } from '#app/state/settings.ts';

const notifyWords: Record<MayNotify, string> = {
  granted: 'Clocks that come due are shown while another app is open.',
  default: 'Not asked yet: clocks stay silent while another app is open.',
  denied: 'Refused: allow notifications of this app in the settings of the phone or browser.',
  unsupported: 'This browser shows none here. On an iPhone it can once the app is on the home screen.',
};

function TryAlarm() {
  const tried = useSignal(false);
  const test = () => {
    tryAlarm();
    tried.value = true;
  };
  return (
    <>
      <Secondary onPress={test}>Test the alarm</Secondary>
      {tried.value && (
        <p role="status">
          {soundState.value === 'unsupported'
            ? 'This browser makes no sound: clocks flash and vibrate only.'
            : 'Three beeps, and a buzz where the phone can. Not heard? Turn the volume up and the silent switch off.'}
        </p>
      )}
    </>
  );
}

/** How a clock that is over calls. */
export function AlarmSettings() {
  return (
    <>
      <Choice
        label="Sound of clocks"
        value={settings.value.sound ? 'on' : 'off'}
        options={[
          { value: 'on', label: 'On' },
          { value: 'off', label: 'Off: flash and buzz only' },
        ]}
        onChange={(value) => changeSettings({ sound: value === 'on' })}
      />
      <TryAlarm />
      <h2>Notifications</h2>
      <p>{notifyWords[mayNotify.value]}</p>
      {mayNotify.value === 'default' && <Secondary onPress={askToNotify}>Allow notifications</Secondary>}
      <p class="quiet small">
        With the app closed nothing can ring: no phone lets a page do that. Keep it open while a clock runs.
      </p>
    </>
  );
}
