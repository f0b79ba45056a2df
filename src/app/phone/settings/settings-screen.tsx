import { Choice } from '#app/parts/field.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { changeSettings, settings } from '#app/state/settings.ts';
import type { Settings } from '#shared/record/settings.ts';
import { AlarmSettings } from './alarm-settings.tsx';
import { InstallSettings } from './install-settings.tsx';
import { ScaleSettings } from './scale-settings.tsx';

const units: { value: Settings['units']; label: string }[] = [
  { value: 'metric', label: 'Metric: mm, g, °C' },
  { value: 'inchPound', label: 'Inch-pound: in, oz, °F' },
];
const themes: { value: Settings['theme']; label: string }[] = [
  { value: 'light', label: 'Paper' },
  { value: 'dark', label: 'Dark' },
  { value: 'system', label: 'As the phone' },
];

/** How is this phone set up? Every choice holds at once, and stays on this phone. */
export function SettingsScreen() {
  const { units: chosen, theme } = settings.value;
  return (
    <Screen title="This phone" back={{ to: '/shelf', label: 'Shelf' }}>
      <Choice
        label="Units"
        value={chosen}
        options={units}
        onChange={(value) => changeSettings({ units: value })}
      />
      <p class="quiet small">Any field takes the other ones too, written out: 1 3/8 in, 200 g/m², 140 °F.</p>
      <Choice
        label="Look"
        value={theme}
        options={themes}
        onChange={(value) => changeSettings({ theme: value })}
      />
      <ScaleSettings />
      <AlarmSettings />
      <InstallSettings />
      <p class="quiet small">This set-up stays on this phone. A backup does not carry it.</p>
    </Screen>
  );
}
