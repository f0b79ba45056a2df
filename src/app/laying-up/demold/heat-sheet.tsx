import { Action, Secondary } from '#app/parts/action.tsx';
import { Keyed } from '#app/parts/keyed.tsx';
import { Sheet } from '#app/parts/sheet.tsx';
import { useTypedFigure } from '#app/parts/typed-figure.ts';
import { settings } from '#app/state/settings.ts';
import { celsius } from '#shared/reference/quantities.ts';
import { unitFor } from '#shared/units/quantity.ts';

/** What a thermometer on the mandrel reads, on our own keys. */
export function HeatSheet({ onRead, onClose }: { onRead: (kelvin: number) => void; onClose: () => void }) {
  const typed = useTypedFigure({ quantity: 'temperature', min: celsius(-40), max: celsius(300) });
  const unit = unitFor('temperature', settings.value.units);
  const si = typed.si.value;
  const use = () => {
    if (si === undefined) return;
    onRead(si);
    onClose();
  };
  return (
    <Sheet
      title="The mandrel reads"
      onClose={onClose}
      actions={
        <div class="keys-row">
          <Secondary onPress={onClose}>Not now</Secondary>
          <Action onPress={use} not={si === undefined ? 'Type what it reads' : undefined}>
            It reads {typed.text.value.replace('-', '−')} {unit}
          </Action>
        </div>
      }
    >
      <Keyed
        text={typed.text}
        unit={unit}
        label={`The mandrel reads, ${unit}`}
        says={typed.problem.value}
        sign
      />
    </Sheet>
  );
}
