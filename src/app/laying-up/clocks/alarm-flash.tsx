import { path } from '#app/router.ts';
import { flashTone } from './calling.ts';
import './alarm-flash.css';

/** The whole screen flashes, slowly, while a clock waits for an answer; where clocks are read across the shop, it inverts. */
export function AlarmFlash() {
  const tone = flashTone.value;
  const kind = path.value === '/clocks' ? 'alarm-flash alarm-flash-far' : 'alarm-flash';
  return tone ? <div class={`${kind} alarm-flash-${tone}`} aria-hidden="true" /> : null;
}
