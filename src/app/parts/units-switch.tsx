import { changeSettings, settings } from '#app/state/settings.ts';

/** Metric and inch-pound, switchable wherever a quantity is shown. */
export function UnitsSwitch() {
  const metric = settings.value.units === 'metric';
  return (
    <button
      type="button"
      class="units-switch"
      aria-label={metric ? 'Units: metric. Switch to inch-pound' : 'Units: inch-pound. Switch to metric'}
      onClick={() => changeSettings({ units: metric ? 'inchPound' : 'metric' })}
    >
      {metric ? 'mm · g · °C' : 'in · oz · °F'}
    </button>
  );
}
