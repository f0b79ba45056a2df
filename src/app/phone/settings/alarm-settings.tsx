import { Reach } from '#app/laying-up/clocks/reach.tsx';
import { TestAlarm } from '#app/laying-up/clocks/test-alarm.tsx';
import { Choice } from '#app/parts/field.tsx';
import { canSpeak } from '#app/platform/speak.ts';
import { changeSettings, settings } from '#app/state/settings.ts';

/** A voice that needs a network is none at the bench. */
function Speech() {
  if (!canSpeak.value && !settings.value.speech) {
    return (
      <p class="quiet small">
        Clocks can be said aloud once an English voice is on the phone: add one in its settings, under text to
        speech.
      </p>
    );
  }
  return (
    <Choice
      label="Say clocks aloud"
      value={settings.value.speech ? 'on' : 'off'}
      options={[
        { value: 'off', label: 'No' },
        { value: 'on', label: '“Cup two, five minutes left”' },
      ]}
      onChange={(value) => changeSettings({ speech: value === 'on' })}
    />
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
      <Speech />
      <TestAlarm />
      <h2>Where an alarm does not reach</h2>
      <Reach />
    </>
  );
}
